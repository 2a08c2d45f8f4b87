// reckon/trend/theil_sen.h: the robust line beside the one of least squares: its slope is the
// middle one of the slopes of all pairs of readings, so a few wild readings cannot turn it.
// Sources: Sen 1968; Gilbert 1987 and EPA Unified Guidance 2009, chapter 17, for the limits.
#pragma once

#include <cstddef>
#include <optional>

#include "reckon/trend/groups.h"

namespace reckon::trend {

struct TheilSen {
  std::size_t pairs;  // within a group and with different x; no other pair has a slope
  double slope;       // C per hour
  double intercept;   // C at x = 0: median(y) - slope * median(x) of the newest group
  // What the slope may be. None when there are too few pairs for so sure an interval.
  std::optional<Interval> interval;
};

// The limits are the slopes of ranks (N - C) / 2 and (N + C) / 2 + 1, counted from 1, with C = z
// times the standard deviation of Kendall's S (mann_kendall.h) times the widening. Between two
// ranks they are interpolated, as Gilbert does; other programs round the ranks and differ a little.
// None when no pair has different x. The points are finite, and the newest group has some.
std::optional<TheilSen> theil_sen(Groups groups, Certainty certainty);

}  // namespace reckon::trend
