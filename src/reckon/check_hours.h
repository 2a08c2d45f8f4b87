// reckon/check_hours.h: when two ways to the same hours agree. MeterChecks show tenths or
// hundredths and clocks show minutes, so figures of different fineness may lie a little apart and
// both be right.
#pragma once

#include <optional>

#include "logbook/amounts.h"
#include "quantity/hours.h"
#include "reckon/figure.h"

namespace reckon {

// Typed hours against what a meter ran. Figures of one fineness must be equal.
bool agree_with_meter(quantity::Hours hours, const logbook::MeterRun& run);
// Typed hours against minutes by the clock; tenths by either published minute table agree.
bool agree_with_clock(quantity::Hours hours, quantity::Hours by_clock);
// A stated total against a worked-out one: hours as past.h says, counts exactly.
bool agree_as_totals(const Figure& stated, const Figure& reckoned);

// 1.3, which may have been meant as 1:30. Empty where the decimals are no minutes, or none.
std::optional<quantity::Hours> read_as_minutes(quantity::Hours hours);

}  // namespace reckon
