// logbook/fact_readings.h: what the gauges showed. Readings count nothing; raw values are kept with
// the unit they were typed in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/fact_checks.h"
#include "quantity/hours.h"

namespace logbook {

enum class Switch { off, on };
enum class PowerSource { battery, ground_power, other_engine };

// aircraft ZZ-KIT engine 1 E-1001 started, battery 25.9 V, lowest 19.8 V, outside air 12 C,
// residual 60 C, light-off in 4 s, peak 742 C, above 810 C for 0 s, idle in 24 s, generator 28.1 V,
// starter out at 51 %, power from battery. A reading about a start; it counts nothing.
struct Started {
  Aircraft aircraft;
  PlaceName place;
  std::optional<Serial> serial;
  std::optional<quantity::Decimal> battery_volts;
  std::optional<quantity::Decimal> lowest_volts;
  std::optional<quantity::Temperature> outside_air;
  std::optional<quantity::Temperature> residual;
  std::optional<std::int64_t> light_off_seconds;
  std::optional<quantity::Temperature> peak;
  std::vector<Band> bands;
  std::optional<std::int64_t> idle_seconds;
  std::optional<quantity::Decimal> generator_volts;
  std::optional<quantity::Decimal> starter_out_percent;
  std::optional<PowerSource> power;
  bool operator==(const Started&) const = default;
};

// aircraft ZZ-KIT engine 1 E-1001 cruise 3500 ft, outside air 12 C, torque 78 %, gas generator
// 96.1 %, temperature 702 C, fuel 210 lb/h, bleed off, steady 5 min. / … idle …. / … power check ….
struct Reading {
  Aircraft aircraft;
  PlaceName place;
  std::optional<Serial> serial;
  CheckKind check = CheckKind::cruise;
  std::optional<std::int64_t> pressure_altitude_feet;
  std::optional<quantity::Temperature> outside_air;
  std::optional<Torque> torque;
  std::optional<quantity::Decimal> gas_generator_percent;
  std::optional<quantity::Decimal> power_turbine_percent;
  std::optional<quantity::Decimal> rotor_percent;  // or propeller
  std::optional<quantity::Temperature> temperature;
  std::optional<FuelFlow> fuel;
  std::optional<Switch> bleed;
  std::optional<Switch> anti_ice;
  std::optional<quantity::Decimal> generator_load_amperes;
  std::optional<std::int64_t> steady_minutes;
  std::optional<quantity::Hours> engine;  // stated engine hours at the reading
  bool operator==(const Reading&) const = default;
};

// aircraft ZZ-KIT engine 1 E-1001 exceeded temperature 915 C for 3 s.
struct Exceeded {
  Aircraft aircraft;
  PlaceName place;
  std::optional<Serial> serial;
  GaugeFor what;
  bool operator==(const Exceeded&) const = default;
};

// entry K7QXM-140 looked into, "gauge checked", by "B. Quill". What stood because of that entry, a
// start or an exceedance past a limit, has been dealt with.
struct LookedInto {
  EntryName entry;
  std::string found;
  bool operator==(const LookedInto&) const = default;
};

// engine TS-40 E-1001 washed. / hot section done. / …, engine 1265.0 h.
enum class EventKind {
  washed,
  hot_section_done,
  temperature_probe_changed,
  fuel_control_adjusted,
  torque_gauge_changed,
  temperature_gauge_changed,
};
struct EngineEvent {
  Engine engine_thing;
  EventKind event = EventKind::washed;
  std::optional<quantity::Hours> engine;
  bool operator==(const EngineEvent&) const = default;
};

}  // namespace logbook
