// reckon/forecast.h: from recent use or the plan on record to the day on which a limit is reached.
#pragma once

#include <optional>

#include "logbook/fact.h"
#include "reckon/histories.h"

namespace reckon {

// Hours in a number of days: never divided before it is used.
struct UseRate {
  enum class From { last_90_days, last_365_days, plan, stated, none } from = From::none;
  quantity::ServiceHours hours;
  quantity::Days days = quantity::Days::of(1);
};

// The plan on record that holds on the day; else the last 90 days with at least five flights; else
// the last 365; else none.
UseRate use_rate(const Histories& histories, const Standing& standing,
                 const logbook::Aircraft& aircraft);

// The day on which `left` hours are used up: use starts the day after as_of. Empty: no use.
// 120.0 h at 1.25 h a day after 2025-01-15 is 2025-04-21.
// Nothing left, or less: as_of itself. A day more than a hundred years away is no forecast.
std::optional<Day> day_reached(quantity::ServiceHours left, const UseRate& rate, Day as_of);
// The same for any amounts of one smallest unit: whole days until `amount` is used up when `used`
// went in so many days, rounded up.
std::optional<std::int64_t> days_to_use(std::int64_t amount, std::int64_t used,
                                        quantity::Days days);
// What the rate uses in so many days, rounded down.
quantity::ServiceHours used_in(const UseRate& rate, quantity::Days days);

}  // namespace reckon
