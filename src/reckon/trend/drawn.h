// reckon/trend/drawn.h: the lines of a segment as they are drawn: each level over its own readings,
// with the band in which the line may run. They are not lengthened past the readings.
#pragma once

#include <vector>

#include "reckon/trend/series.h"

namespace reckon::trend {

struct DrawnAt {
  double hours;  // of the engine
  double line;   // C
  double low;    // C, 95 %, widened
  double high;
};

// One row of samples for each level that has counted readings; empty where no line was drawn.
std::vector<std::vector<DrawnAt>> drawn_levels(const Series& series, const Segment& segment);

}  // namespace reckon::trend
