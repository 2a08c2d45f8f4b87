// reckon/trend/air.h: the standard atmosphere, and the air an engine really breathed: ratios of
// temperature, pressure and density from pressure altitude and outside air. Altitudes are
// geopotential, which by definition is what an altimeter at standard setting shows; geometric
// tables differ. Source of all figures: ISO 2533:1975.
#pragma once

#include <variant>

namespace reckon::trend {

inline constexpr double metres_a_foot = 0.3048;        // exact
inline constexpr double zero_celsius_kelvin = 273.15;  // exact

// Outside these nothing is worked out for a reading.
inline constexpr double lowest_altitude_feet = -2000.0;
inline constexpr double highest_altitude_feet = 45000.0;
inline constexpr double coldest_air_celsius = -60.0;
inline constexpr double warmest_air_celsius = 60.0;
// No station has ever reported a pressure outside these (25.69 and 32.03 in, from memory), so a
// figure beyond is a slip of the pen or another unit.
inline constexpr double lowest_setting_inches = 25.0;
inline constexpr double highest_setting_inches = 32.5;

// Standard air at one altitude, as the tables print it.
struct StandardAir {
  double kelvin;
  double hectopascals;
  double density;  // kg per cubic metre
  double theta;    // temperature, pressure and density over those at sea level
  double delta;
  double sigma;
};

// The air about an engine. theta is the measured air's, delta the pressure altitude's alone.
struct Air {
  double pressure_altitude;  // ft
  double outside;            // C, static
  double theta;
  double delta;
  double sigma;
  double isa_deviation;     // C warmer than standard
  double density_altitude;  // ft
};

enum class AirFigure { pressure_altitude, outside_air, altimeter_setting };

// A figure that is refused, in its own unit: ft, C, or inches of mercury.
struct AirRefusal {
  AirFigure what;
  double given;
  double nearest_allowed;
};

// Standard air at a geopotential altitude between -5000 and 20000 m.
StandardAir standard_air(double metres);

// What the standard holds for the air's temperature, C, at a pressure altitude in feet between
// those of standard_air.
double standard_celsius(double pressure_altitude);

// The altitude at which standard air is as dense, in feet; sigma is more than 0.
double density_altitude(double sigma);

// The air at a pressure altitude in feet with so many degrees Celsius outside. Refuses what lies
// outside the allowed range, the altitude first; nothing is clamped.
std::variant<Air, AirRefusal> air_at(double pressure_altitude, double outside);

// The pressure altitude, ft, of a field so many feet up with this altimeter setting. By the
// handbook's way: elevation plus what the setting is worth at sea level (FAA Pilot's Handbook of
// Aeronautical Knowledge, page 10-19). Refuses a setting, or a result, outside the allowed range.
std::variant<double, AirRefusal> pressure_altitude_inches(double elevation, double setting);
// The same from a setting in hectopascals. A refused setting is given in inches.
std::variant<double, AirRefusal> pressure_altitude_hectopascals(double elevation, double setting);

}  // namespace reckon::trend
