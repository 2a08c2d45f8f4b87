#include "reckon/trend/corrected.h"

#include <cmath>

namespace reckon::trend {

double corrected_temperature(double celsius, const Air& air, const Exponents& exponents) {
  const double kelvin = celsius + zero_celsius_kelvin;
  return kelvin / std::pow(air.theta, exponents.temperature) - zero_celsius_kelvin;
}

double corrected_speed(double speed, const Air& air, const Exponents& exponents) {
  return speed / std::pow(air.theta, exponents.speed);
}

double corrected_fuel(double flow, const Air& air, const Exponents& exponents) {
  return flow / (air.delta * std::pow(air.theta, exponents.fuel));
}

double corrected_power(double power, const Air& air) {
  return power / (air.delta * std::sqrt(air.theta));
}

double corrected_torque(double torque, const Air& air) { return torque / air.delta; }

}  // namespace reckon::trend
