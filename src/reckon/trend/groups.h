// reckon/trend/groups.h: readings in groups. Between two groups something was done that shifts the
// level and leaves the slope, such as a wash, so only readings of one group are laid side by side.
#pragma once

#include <span>
#include <vector>

#include "reckon/trend/line.h"

namespace reckon::trend {

// In the order of time; within a group the points may stand in any order.
using Group = std::vector<Point>;
using Groups = std::span<const Group>;

inline std::size_t points_in(Groups groups) {
  std::size_t points = 0;
  for (const Group& group : groups) points += group.size();
  return points;
}

}  // namespace reckon::trend
