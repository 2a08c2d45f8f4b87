// logbook/amounts.h: amounts as sentences state them: hours on a clock, counts of a counter,
// calendar periods, each with the basis it counts from.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "logbook/names.h"
#include "quantity/calendar.h"
#include "quantity/counts.h"
#include "quantity/hours.h"

namespace logbook {

// Counters are open-ended: the trade's own, and any that an operator names.
enum class CounterKind {
  starts,
  flights,
  landings,
  lifts,
  transitions,
  torque_events,
  hoist_lifts,
  run_on_landings,
  gas_generator_cycles,
  power_turbine_cycles,
  full_cycles,
  abbreviated_cycles,
  cycles,
  own,  // the operator's: own_name holds it
};
struct Counter {
  CounterKind kind = CounterKind::starts;
  std::string own_name;
  auto operator<=>(const Counter&) const = default;
  bool operator==(const Counter&) const = default;
};
// Cycles take thousandths, every other counter is whole.
bool takes_fractions(const Counter& counter);

// Hours on the airframe's clock (meter empty) or on a named meter.
struct ClockHours {
  quantity::Hours hours;
  std::optional<MeterName> meter;
  auto operator<=>(const ClockHours&) const = default;
  bool operator==(const ClockHours&) const = default;
};
struct Count {
  quantity::Cycles amount;
  Counter counter;
  auto operator<=>(const Count&) const = default;
  bool operator==(const Count&) const = default;
};
enum class PeriodUnit { days, months, calendar_months, years };
struct Period {
  std::int64_t number = 0;
  PeriodUnit unit = PeriodUnit::days;
  auto operator<=>(const Period&) const = default;
  bool operator==(const Period&) const = default;
};
using Amount = std::variant<ClockHours, Count, Period>;

// What an amount counts from.
enum class Basis {
  new_,
  overhaul,
  fitting,
  release,
  manufacture,
  first_certificate,
  done,
};

// One amount of a limit: 2200.0 h since new; 10 years since manufacture; 50.0 h after 2025-03-01.
// Exactly one of since and after is set for limits; intervals of tasks may leave both empty (then
// they count from done).
struct Term {
  Amount amount;
  std::optional<Basis> since;
  std::optional<quantity::Day> after;
  auto operator<=>(const Term&) const = default;
  bool operator==(const Term&) const = default;
};
enum class Combine { first, latest };
struct Terms {
  Combine combine = Combine::first;
  std::vector<Term> terms;
  auto operator<=>(const Terms&) const = default;
  bool operator==(const Terms&) const = default;
};

// An amount that a thing already has when it is brought forward or fitted: 1820.4 h, at least 2310
// starts, 320.4 h since overhaul (no basis: since new, its total).
enum class Grade { exact, at_least, by_default };
struct Had {
  Grade grade = Grade::exact;
  std::variant<ClockHours, Count> amount;
  std::optional<Basis> since;  // new_ or overhaul
  auto operator<=>(const Had&) const = default;
  bool operator==(const Had&) const = default;
};

// A reading of one meter, and a run of it from one reading to another.
struct MeterReading {
  MeterName meter;
  quantity::HourMeter reading;
  auto operator<=>(const MeterReading&) const = default;
  bool operator==(const MeterReading&) const = default;
};
struct MeterRun {
  MeterName meter;
  quantity::HourMeter from;
  quantity::HourMeter to;
  auto operator<=>(const MeterRun&) const = default;
  bool operator==(const MeterRun&) const = default;
};

// A count in a flight, for the airframe or for one place.
struct CountAt {
  Count count;
  std::optional<PlaceName> place;
  auto operator<=>(const CountAt&) const = default;
  bool operator==(const CountAt&) const = default;
};
struct HoursAt {
  quantity::Hours hours;
  PlaceName place;
  auto operator<=>(const HoursAt&) const = default;
  bool operator==(const HoursAt&) const = default;
};

// Where a work entry stands in the history: figures stated on named clocks. They are statements,
// checked against the flights (design 4).
struct Stated {
  std::optional<quantity::Hours> airframe;
  std::optional<quantity::Hours> engine;
  std::optional<MeterReading> meter;
  std::vector<Count> counts;
  auto operator<=>(const Stated&) const = default;
  bool operator==(const Stated&) const = default;
};

}  // namespace logbook
