#include "reckon/trend/segments.h"

#include <algorithm>

namespace reckon::trend {

namespace {

bool is_before(const Sample& sample, const Cut& cut) {
  if (sample.x == cut.x) return cut.reading_at_the_cut == Owner::earlier_segment;
  return sample.x < cut.x;
}

// Of two cuts at the same hours the one that sends the reading onward comes first.
bool comes_first(const Cut& one, const Cut& other) {
  if (one.x != other.x) return one.x < other.x;
  return one.reading_at_the_cut == Owner::later_segment &&
         other.reading_at_the_cut == Owner::earlier_segment;
}

}  // namespace

std::vector<Segment> cut_into_segments(std::span<const Sample> samples, std::span<const Cut> cuts) {
  std::vector<Sample> in_order(samples.begin(), samples.end());
  std::stable_sort(in_order.begin(), in_order.end(),
                   [](const Sample& one, const Sample& other) { return one.x < other.x; });
  std::vector<Cut> cuts_in_order(cuts.begin(), cuts.end());
  std::stable_sort(cuts_in_order.begin(), cuts_in_order.end(), comes_first);

  std::vector<Segment> segments;
  auto from = in_order.cbegin();
  for (const Cut& cut : cuts_in_order) {
    const auto to = std::partition_point(
        from, in_order.cend(), [&cut](const Sample& sample) { return is_before(sample, cut); });
    segments.emplace_back(from, to);
    from = to;
  }
  segments.emplace_back(from, in_order.cend());
  return segments;
}

std::vector<Point> unflagged(std::span<const Sample> samples) {
  std::vector<Point> points;
  for (const Sample& sample : samples) {
    if (!sample.is_flagged) points.push_back({sample.x, sample.y});
  }
  return points;
}

}  // namespace reckon::trend
