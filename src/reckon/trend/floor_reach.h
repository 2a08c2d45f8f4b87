// reckon/trend/floor_reach.h: when a falling line reaches a floor, and how sure that is, by inverse
// prediction (Fieller). The interval is skew, its later side longer, and need not be finite: then
// nothing can be told yet. Source: Graybill & Iyer 1994, chapter 6. A straight line is late when
// wear speeds up.
#pragma once

#include <variant>

#include "reckon/trend/line.h"

namespace reckon::trend {

// What is to reach a height: the line itself, or one new reading about it.
enum class Reaching { line, single_reading };

struct Reached {
  double at;         // x at which the line itself has that height
  Interval between;  // finite; `at` lies within
  double g;          // the interval's own measure, below 1: 0 is a slope without error
};

// With g at 1 or more the slope's own interval at that certainty holds zero, and the interval has
// no finite end on one side or on both. A flat line has g endless.
struct NoFiniteInterval {
  double g;
};

// Where a line, falling or rising, has the height y0; all standard errors are widened for serial
// correlation. The arithmetic alone: how far ahead that may be is for time_to_floor.
std::variant<Reached, NoFiniteInterval> inverse_prediction(const Line& line, double y0,
                                                           Reaching what, Certainty certainty);

// From the last reading on, this many times the hours that the readings span may be foretold.
inline constexpr double furthest_spans = 3.0;
inline constexpr double floor_confidence = 0.95;  // two-sided

struct FloorReach {
  Reached line;
  Reached reading;
  // x, the lower end of the line's interval: what to plan by. It may lie at or before the last
  // reading: then the line may be there already.
  double early;
  double reading_earlier;  // by so much x single readings may touch the floor before `early`
};

// Why there is no figure.
enum class NoReach {
  already_there,       // the line stands at or below the floor at the last reading
  not_falling,         // flat or rising
  no_finite_interval,  // the slope may as well be flat
  too_far,             // the early limit lies more than three spans after the last reading
};

// When a line or the newest level of several (levels.h) reaches the floor. `readings` are the x of
// the first and the last reading that it rests on.
std::variant<FloorReach, NoReach> time_to_floor(const Line& line, double floor, Interval readings,
                                                double serial_correlation);

}  // namespace reckon::trend
