// logbook/fact_fleet.h: what there is, what it had when the book began, and which clock counts.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "logbook/amounts.h"
#include "logbook/names.h"
#include "quantity/calendar.h"

namespace logbook {

// aircraft ZZ-KIT is model "Larkwing 5", serial 5012, made 2019-03-14,
// first certificate 2019-04-02.
struct AircraftIs {
  Aircraft aircraft;
  ModelName model;
  std::optional<Serial> serial;
  std::optional<quantity::Day> made;
  std::optional<quantity::Day> first_certificate;
  bool operator==(const AircraftIs&) const = default;
};
// engine TS-40 E-1001 is made 2018-11-02, released 2018-11-20.
struct EngineIs {
  Engine engine;
  std::optional<quantity::Day> made;
  std::optional<quantity::Day> released;
  bool operator==(const EngineIs&) const = default;
};
// part PN-4411 B-88 is "main rotor blade", made 2018-05-01, released 2018-06-10.
struct PartIs {
  Part part;
  std::string description;
  std::optional<quantity::Day> made;
  std::optional<quantity::Day> released;
  std::optional<quantity::Quarter> cured;
  bool operator==(const PartIs&) const = default;
};
// aircraft ZZ-KIT has required place engine 1. / has optional place "cargo hook".
enum class Need { required, optional };
struct HasPlace {
  Scope scope;
  Need need = Need::required;
  PlaceName place;
  bool operator==(const HasPlace&) const = default;
};

// What is not known of a thing that is brought forward: hours unknown; starts unknown; hours since
// overhaul unknown.
struct Unknown {
  std::variant<std::monostate, Counter> what;  // monostate: hours
  std::optional<Basis> since;                  // overhaul; absent: since new
  auto operator<=>(const Unknown&) const = default;
  bool operator==(const Unknown&) const = default;
};
// aircraft ZZ-KIT brings forward airframe 4321.6 h, 5608 landings, collective meter 1234.5,
// basis "signed log 3 page 41". Holds at the start of its day.
struct BringsForward {
  Thing thing;
  std::optional<quantity::Hours> airframe;  // aircraft only
  std::vector<Had> had;
  std::vector<MeterReading> meters;
  std::vector<Unknown> unknown;
  std::optional<std::string> basis;
  std::optional<std::string> put_together_from;
  bool operator==(const BringsForward&) const = default;
};

// aircraft ZZ-MOB counts airframe hours from collective meter, factor 1.12. / from clock.
struct ByClock {
  auto operator<=>(const ByClock&) const = default;
  bool operator==(const ByClock&) const = default;
};
struct CountsHours {
  Aircraft aircraft;
  std::variant<ByClock, MeterName> source;
  std::optional<quantity::Factor> factor;
  bool operator==(const CountsHours&) const = default;
};
// aircraft ZZ-MOB changed collective meter, out 6120.8, in 12.0.
struct MeterChanged {
  Aircraft aircraft;
  MeterName meter;
  quantity::HourMeter out;
  quantity::HourMeter in;
  std::optional<quantity::Hours> airframe;
  bool operator==(const MeterChanged&) const = default;
};
// aircraft ZZ-MOB lost collective meter at 1500.2.
struct MeterLost {
  Aircraft aircraft;
  MeterName meter;
  quantity::HourMeter at;
  bool operator==(const MeterLost&) const = default;
};

}  // namespace logbook
