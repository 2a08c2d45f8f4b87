#include "reckon/trend/floor_reach.h"

#include <cmath>
#include <limits>

#include "quantity/expect.h"

namespace reckon::trend {

std::variant<Reached, NoFiniteInterval> inverse_prediction(const Line& line, double y0,
                                                           Reaching what, Certainty certainty) {
  EXPECT(std::isfinite(y0));
  if (line.slope == 0.0) return NoFiniteInterval{std::numeric_limits<double>::infinity()};
  const double errors = errors_wide(line, certainty);
  const double g = squared(errors * line.slope_error / line.slope);
  if (!(g < 1.0)) return NoFiniteInterval{g};
  const double n = static_cast<double>(line.n);
  const double distance = (y0 - line.y_mean) / line.slope;
  const double middle = line.x_mean + distance / (1.0 - g);
  const double own = what == Reaching::single_reading ? 1.0 : 0.0;
  const double root = std::sqrt((own + 1.0 / n) * (1.0 - g) + squared(distance) / line.sxx);
  const double half = errors * line.scatter / std::abs(line.slope) / (1.0 - g) * root;
  return Reached{line.x_mean + distance, {middle - half, middle + half}, g};
}

std::variant<FloorReach, NoReach> time_to_floor(const Line& line, double floor, Interval readings,
                                                double serial_correlation) {
  EXPECT(readings.low <= readings.high);
  if (value_at(line, readings.high) <= floor) return NoReach::already_there;
  if (line.slope >= 0.0) return NoReach::not_falling;
  const Certainty certainty{floor_confidence, serial_correlation};
  const auto of_line = inverse_prediction(line, floor, Reaching::line, certainty);
  const auto of_reading = inverse_prediction(line, floor, Reaching::single_reading, certainty);
  const auto* by_line = std::get_if<Reached>(&of_line);
  const auto* by_reading = std::get_if<Reached>(&of_reading);
  if (by_line == nullptr || by_reading == nullptr) return NoReach::no_finite_interval;
  const double early = by_line->between.low;
  const double furthest = readings.high + furthest_spans * (readings.high - readings.low);
  if (early > furthest) return NoReach::too_far;
  return FloorReach{*by_line, *by_reading, early, early - by_reading->between.low};
}

}  // namespace reckon::trend
