// reckon/check_gauges.h: figures that a gauge or a chart hardly ever shows: a digit too many or too
// few, or two gauges in each other's place. They are asked about.
#pragma once

#include "reckon/check_fact.h"

namespace reckon {

// Outside air -60 to 60 C and pressure altitude -2000 to 45000 ft, beyond which no chart and no
// correction is worked out; gas temperatures of a running engine, limits included, 200 to 1200 C; a
// floor of at most 200 C; the lowest volts of a start not above the volts before it. Common
// practice, no source.
void check_gauges(const logbook::Fact& fact, Objections& objections);

}  // namespace reckon
