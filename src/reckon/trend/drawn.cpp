#include "reckon/trend/drawn.h"

#include <algorithm>
#include <map>

#include "reckon/trend/doubles.h"

namespace reckon::trend {

namespace {

constexpr int samples = 17;

// First and last hours of the counted readings of each level that has some, in order.
std::vector<Interval> spans_of(const Segment& segment) {
  std::map<std::size_t, Interval> spans;
  for (const MarginPoint& point : segment.points) {
    if (point.flag != Flag::counted) continue;
    const auto [at, is_new] = spans.try_emplace(point.level, Interval{point.hours, point.hours});
    at->second.low = std::min(at->second.low, point.hours);
    at->second.high = std::max(at->second.high, point.hours);
  }
  std::vector<Interval> all;
  for (const auto& [level, span] : spans) all.push_back(span);
  return all;
}

}  // namespace

std::vector<std::vector<DrawnAt>> drawn_levels(const Series& series, const Segment& segment) {
  std::vector<std::vector<DrawnAt>> drawn;
  if (!segment.finding.evidence) return drawn;
  const Certainty certainty{floor_confidence, in_units(series.serial_correlation)};
  const std::vector<Interval> spans = spans_of(segment);
  const std::vector<Line>& levels = segment.finding.evidence->levels;
  for (std::size_t i = 0; i < levels.size(); ++i) {
    std::vector<DrawnAt> row;
    for (int k = 0; k < samples; ++k) {
      const double share = static_cast<double>(k) / (samples - 1);
      const double x = spans[i].low + share * (spans[i].high - spans[i].low);
      const Interval band = mean_band(levels[i], x, certainty);
      row.push_back({x, value_at(levels[i], x), band.low, band.high});
    }
    drawn.push_back(std::move(row));
  }
  return drawn;
}

}  // namespace reckon::trend
