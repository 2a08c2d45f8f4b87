#include "reckon/trend/air.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "quantity/expect.h"

namespace reckon::trend {

namespace {

// ISO 2533:1975.
constexpr double sea_level_kelvin = 288.15;
constexpr double sea_level_hectopascals = 1013.25;
constexpr double sea_level_inches = 29.92126;
constexpr double sea_level_density = 1.225;  // kg per cubic metre
constexpr double gravity = 9.80665;          // m/s2
constexpr double gas_constant = 287.05287;   // J/(kg K)
constexpr double lapse = 0.0065;             // K/m
constexpr double tropopause_metres = 11000.0;
constexpr double lowest_metres = -5000.0;
constexpr double highest_metres = 20000.0;

constexpr double pressure_power = gravity / (gas_constant * lapse);
constexpr double tropopause_theta = 1.0 - lapse * tropopause_metres / sea_level_kelvin;

double tropopause_delta() { return std::pow(tropopause_theta, pressure_power); }
// The height over which the pressure of the isothermal layer falls to 1/e of itself.
double isothermal_metres() { return gas_constant * tropopause_theta * sea_level_kelvin / gravity; }

// The nearest allowed figure, if this one is not allowed. What is no number is not allowed either.
std::optional<double> nearest_if_outside(double figure, double low, double high) {
  if (figure >= low && figure <= high) return std::nullopt;
  return figure > high ? high : low;
}

std::optional<AirRefusal> refused_altitude(double feet) {
  const auto nearest = nearest_if_outside(feet, lowest_altitude_feet, highest_altitude_feet);
  if (!nearest) return std::nullopt;
  return AirRefusal{AirFigure::pressure_altitude, feet, *nearest};
}

}  // namespace

StandardAir standard_air(double metres) {
  EXPECT(metres >= lowest_metres && metres <= highest_metres);
  StandardAir air{};
  if (metres <= tropopause_metres) {
    air.theta = 1.0 - lapse * metres / sea_level_kelvin;
    air.delta = std::pow(air.theta, pressure_power);
  } else {
    air.theta = tropopause_theta;
    air.delta = tropopause_delta() * std::exp(-(metres - tropopause_metres) / isothermal_metres());
  }
  air.sigma = air.delta / air.theta;
  air.kelvin = air.theta * sea_level_kelvin;
  air.hectopascals = air.delta * sea_level_hectopascals;
  air.density = air.sigma * sea_level_density;
  return air;
}

double standard_celsius(double pressure_altitude) {
  return standard_air(pressure_altitude * metres_a_foot).kelvin - zero_celsius_kelvin;
}

double density_altitude(double sigma) {
  EXPECT(sigma > 0.0);
  const double tropopause_sigma = tropopause_delta() / tropopause_theta;
  if (sigma < tropopause_sigma) {
    const double above = isothermal_metres() * std::log(tropopause_sigma / sigma);
    return (tropopause_metres + above) / metres_a_foot;
  }
  const double theta = std::pow(sigma, 1.0 / (pressure_power - 1.0));
  return (1.0 - theta) * sea_level_kelvin / lapse / metres_a_foot;
}

std::variant<Air, AirRefusal> air_at(double pressure_altitude, double outside) {
  if (const auto refused = refused_altitude(pressure_altitude)) return *refused;
  const auto nearest = nearest_if_outside(outside, coldest_air_celsius, warmest_air_celsius);
  if (nearest) return AirRefusal{AirFigure::outside_air, outside, *nearest};
  Air air{};
  air.pressure_altitude = pressure_altitude;
  air.outside = outside;
  air.theta = (outside + zero_celsius_kelvin) / sea_level_kelvin;
  air.delta = standard_air(pressure_altitude * metres_a_foot).delta;
  air.sigma = air.delta / air.theta;
  air.isa_deviation = outside - standard_celsius(pressure_altitude);
  air.density_altitude = density_altitude(air.sigma);
  return air;
}

std::variant<double, AirRefusal> pressure_altitude_inches(double elevation, double setting) {
  const auto nearest = nearest_if_outside(setting, lowest_setting_inches, highest_setting_inches);
  if (nearest) return AirRefusal{AirFigure::altimeter_setting, setting, *nearest};
  const double theta = std::pow(setting / sea_level_inches, 1.0 / pressure_power);
  const double feet = elevation + (1.0 - theta) * sea_level_kelvin / lapse / metres_a_foot;
  if (const auto refused = refused_altitude(feet)) return *refused;
  return feet;
}

std::variant<double, AirRefusal> pressure_altitude_hectopascals(double elevation, double setting) {
  return pressure_altitude_inches(elevation, setting / sea_level_hectopascals * sea_level_inches);
}

}  // namespace reckon::trend
