#include "reckon/trend/worst_first.h"

#include <algorithm>
#include <tuple>

#include "reckon/trend/margins.h"

namespace reckon::trend {

namespace {

bool is_falling(const Segment& segment) {
  const auto& evidence = segment.finding.evidence;
  return evidence && evidence->direction == Direction::falling;
}

// Smaller is worse: the class, then what counts within it.
std::tuple<int, std::int64_t> rank(const Series& series) {
  const Segment& newest = series.segments.back();
  const std::int64_t margin = newest.now ? newest.now->count() : 0;
  const Worry worry = worry_of(series);
  if (worry == Worry::past_what_is_allowed) return {-1, newest.last->margin.count()};
  if (worry == Worry::at_the_floor) return {0, margin};
  if (newest.reach) return {1, newest.reach->early_hours};
  if (is_falling(newest)) return {newest.finding.grade == Grade::clear ? 2 : 3, margin};
  return newest.now ? std::tuple(4, margin) : std::tuple(5, std::int64_t{0});
}

}  // namespace

Worry worry_of(const Series& series) {
  const Segment& newest = series.segments.back();
  if (newest.last && newest.last->margin.is_negative()) return Worry::past_what_is_allowed;
  const bool is_low = series.floor && newest.now && *newest.now <= *series.floor;
  if (is_low || (newest.reach && newest.reach->early_hours == 0)) return Worry::at_the_floor;
  const bool is_clear = newest.finding.grade == Grade::clear && is_falling(newest);
  return is_clear ? Worry::falling : Worry::none;
}

void worst_first(std::vector<Series>& all) {
  std::stable_sort(all.begin(), all.end(),
                   [](const Series& a, const Series& b) { return rank(a) < rank(b); });
}

}  // namespace reckon::trend
