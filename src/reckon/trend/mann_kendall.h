// reckon/trend/mann_kendall.h: do later readings tend to be lower, whatever the law of the scatter:
// the Mann-Kendall count S, its variance and its chance. In groups the counts and the variances
// add up, as seasons do. Source: EPA Unified Guidance 2009, chapter 17; Kendall 1970 for the
// variance where x are tied too (from memory).
#pragma once

#include <cstdint>

#include "reckon/trend/groups.h"

namespace reckon::trend {

struct MannKendall {
  std::int64_t s;   // pairs that rise less pairs that fall; those with equal x or y count nothing
  double variance;  // of s if there is no trend, ties among the y and among the x allowed for
  double z;         // 0 when s or the variance is 0; with continuity, narrowed by the widening
  double p;         // two-sided, by the normal law
};

// The points are finite. Like every band, z is divided by the widening for serial correlation.
MannKendall mann_kendall(Groups groups, double serial_correlation);

}  // namespace reckon::trend
