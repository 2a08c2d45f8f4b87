// reckon/trend/margins.h: an engine's margins as points over its own hours, cut into segments where
// something was done to it, and graded. Here exact figures become double, once; what comes back to
// be shown is exact again, rounded to tenths.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/histories.h"
#include "reckon/trend/grade.h"
#include "reckon/trend/series.h"

namespace reckon::trend {

// Every series that has a reading, by engine and check.
std::vector<Series> margin_series(const Histories& histories, const Standing& standing);

}  // namespace reckon::trend
