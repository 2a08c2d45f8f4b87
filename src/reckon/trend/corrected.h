// reckon/trend/corrected.h: readings brought to standard sea-level air, so that readings on warm
// and cold days, high and low, can be laid side by side. Temperatures go through kelvin. The air is
// the measured one at the inlet, not the standard's for that height. Source: ASME J. Eng. Gas
// Turbines Power 121(4) 613, 1999 (theta and delta forms; exponents are the engine model's own).
//
// And degrees Celsius against Fahrenheit, where a temperature and a difference of temperatures are
// two things. Other units are not converted here.
#pragma once

#include "reckon/trend/air.h"

namespace reckon::trend {

// Powers of theta, a setting of each engine model. The textbook's value for fuel is 0.5; practice
// is 0.6 to 0.7 (from memory).
struct Exponents {
  double temperature = 1.0;
  double speed = 0.5;
  double fuel = 0.65;
};

// Turbine temperature, C in and C out.
double corrected_temperature(double celsius, const Air& air, const Exponents& exponents = {});
// Gas-generator speed, in percent or any unit, in and out.
double corrected_speed(double speed, const Air& air, const Exponents& exponents = {});
// Fuel flow, in any unit, in and out.
double corrected_fuel(double flow, const Air& air, const Exponents& exponents = {});
// Shaft power, in any unit, in and out. With the power turbine's speed governed, torque times that
// speed is power, so torque at a governed speed is corrected by this too.
double corrected_power(double power, const Air& air);
// Torque of a power turbine that runs free, in any unit, in and out.
double corrected_torque(double torque, const Air& air);

constexpr double fahrenheit_of(double celsius) { return celsius * 9.0 / 5.0 + 32.0; }
constexpr double celsius_of(double fahrenheit) { return (fahrenheit - 32.0) * 5.0 / 9.0; }
// A difference has no 32 in it: 20 C more is 36 F more.
constexpr double fahrenheit_degrees(double celsius_degrees) { return celsius_degrees * 9.0 / 5.0; }
constexpr double celsius_degrees(double fahrenheit_degrees) {
  return fahrenheit_degrees * 5.0 / 9.0;
}

}  // namespace reckon::trend
