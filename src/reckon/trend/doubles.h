// reckon/trend/doubles.h: the one place where exact figures become double, and where those that are
// shown become exact again, rounded half away from zero.
#pragma once

#include <cmath>

#include "quantity/counts.h"
#include "quantity/temperature.h"
#include "reckon/figure.h"

namespace reckon::trend {

inline double in_hours(const Figure& figure) {  // from thousandths of a second
  return static_cast<double>(figure.hours().count()) / 3'600'000.0;
}
inline double in_degrees(quantity::Margin margin) {
  return static_cast<double>(margin.count()) / 10.0;
}
inline double in_degrees(quantity::Temperature temperature) {
  return in_degrees(temperature - quantity::Temperature{});
}
inline double in_units(quantity::Decimal decimal) {
  return static_cast<double>(decimal.count()) / 1000.0;
}

// Below one, so that a band has an end; a negative one narrows nothing and is none.
inline bool is_correlation(quantity::Decimal stated) {
  return !stated.is_negative() && stated <= quantity::Decimal::of(950);
}

inline quantity::Margin to_margin(double degrees) {
  return quantity::Margin::of(std::llround(10.0 * degrees));
}
inline quantity::Decimal to_tenths(double value) {
  return quantity::Decimal::of(100 * std::llround(10.0 * value));
}
inline quantity::Decimal to_thousandths(double value) {
  return quantity::Decimal::of(std::llround(1000.0 * value));
}
inline quantity::Decimal to_hundredths(double value) {
  return quantity::Decimal::of(10 * std::llround(100.0 * value));
}

}  // namespace reckon::trend
