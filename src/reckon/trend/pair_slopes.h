// reckon/trend/pair_slopes.h: the slopes of all pairs of readings, and which of them has a given
// rank. The answer is the very slope a sorted list of all pairs would hold, to the last bit, found
// in an expected time of n log n without making that list (after Dillencourt, Mount and Netanyahu,
// 1992, from memory).
#pragma once

#include <cstddef>
#include <vector>

#include "reckon/trend/groups.h"

namespace reckon::trend {

// The slope from one point to another with a greater x. Every slope is worked out by this.
inline double slope_between(Point from, Point to) { return (to.y - from.y) / (to.x - from.x); }

class PairSlopes {
 public:
  // Pairs within one group, with different x. The points are finite.
  explicit PairSlopes(Groups groups);

  // How many pairs there are.
  std::size_t count() const { return count_; }

  // The slope with that many before it in rising order; rank is less than count.
  double at_rank(std::size_t rank) const;

  // Between the slopes of two ranks, in proportion; rank is 0 to count - 1.
  double between_ranks(double rank) const;

  // The middle slope, or the mean of the two in the middle.
  double median() const;

 private:
  std::vector<Group> groups_;  // each by x, then y
  std::size_t count_ = 0;
};

}  // namespace reckon::trend
