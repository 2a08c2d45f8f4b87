// reckon/trend/segments.h: a series of readings cut where work on the engine began a new one. One
// line drawn across a wash or a probe change tells a wrong story.
#pragma once

#include <span>
#include <vector>

#include "reckon/trend/line.h"

namespace reckon::trend {

struct Sample {
  double x;         // hours
  double y;         // C
  bool is_flagged;  // kept and shown, but left out of the line
};

// Which segment owns a reading taken at exactly the hours of the cut: the one before it (read in
// flight, washed afterwards at the same hours) or the one after it.
enum class Owner { earlier_segment, later_segment };

struct Cut {
  double x;  // hours
  Owner reading_at_the_cut;
};

using Segment = std::vector<Sample>;

// One segment more than there are cuts, by rising x; some may be empty, so that the segment after
// each cut can be found by its place. Samples with the same x keep the order given.
std::vector<Segment> cut_into_segments(std::span<const Sample> samples, std::span<const Cut> cuts);

// The readings that a line may use.
std::vector<Point> unflagged(std::span<const Sample> samples);

}  // namespace reckon::trend
