// reckon/trend/margin_point.h: one reading's margin, or why it has none, and why it is left out of
// the line. Nothing is dropped: what does not count keeps its reason.
#pragma once

#include "reckon/trend/model_rules.h"
#include "reckon/trend/series.h"

namespace reckon::trend {

struct Taken {  // a reading with what it is held against
  const logbook::Reading& reading;
  const std::optional<AllowedInForce>& allowed;
  const ModelSettings& settings;
};

// Sets the margin, the flag with its reason, and the corrected figures of a point.
void work_out(const Taken& taken, MarginPoint& point);

}  // namespace reckon::trend
