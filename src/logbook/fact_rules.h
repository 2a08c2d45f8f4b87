// logbook/fact_rules.h: what the operator's approved data ask for: counting rules, limits, tasks,
// plans and reviews. A rule holds from its sentence's day.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "logbook/amounts.h"
#include "logbook/names.h"
#include "quantity/calendar.h"
#include "quantity/counts.h"
#include "quantity/temperature.h"

namespace logbook {

// model TS-40 counts gas-generator cycles, 1 each start, 0.5 each flight, source "manual 5-20",
// also for flights since 2025-01-01.
enum class CountedEvent { start, flight, landing };
struct Each {
  quantity::Weight weight;
  CountedEvent event = CountedEvent::start;
  auto operator<=>(const Each&) const = default;
  bool operator==(const Each&) const = default;
};
struct CountingRule {
  Scope scope;
  Counter counter;
  std::vector<Each> each;
  std::optional<std::string> source;
  std::optional<quantity::Day> also_since;
  bool operator==(const CountingRule&) const = default;
};

// part number PN-4411 retires at 2200.0 h since new or 10 years since manufacture, on model
// "Larkwing 5", class life, source "limitations rev 4", revision "4".
enum class LimitVerb { retires, overhaul };
enum class LimitClass { airworthiness_limitation, life, overhaul, shelf, service };
struct Limit {
  Scope scope;
  LimitVerb verb = LimitVerb::retires;
  bool when_exceeding = false;  // "retires when exceeding": passed only when exceeded
  Terms terms;
  std::optional<ModelName> on_model;
  std::optional<LimitClass> class_;
  std::optional<std::string> source;
  std::optional<std::string> revision;
  bool operator==(const Limit&) const = default;
};
// part number PN-4411 on condition, source "manual 5-10".
struct OnCondition {
  Scope scope;
  std::optional<std::string> source;
  bool operator==(const OnCondition&) const = default;
};

// part number DX-1 retires when full cycles / 5000 + abbreviated cycles / 20000 reach 1, class
// life, source "directive 7". The parts of a life that each counter has used, since new, are added
// up.
struct PartOfLife {
  Counter counter;
  quantity::Cycles limit;  // so much of the counter alone is the whole life; never zero
  auto operator<=>(const PartOfLife&) const = default;
  bool operator==(const PartOfLife&) const = default;
};
struct MixedLimit {
  Scope scope;
  std::vector<PartOfLife> parts;
  bool when_exceeding = false;  // "exceed 1": passed only when exceeded
  std::optional<ModelName> on_model;
  std::optional<LimitClass> class_;
  std::optional<std::string> source;
  std::optional<std::string> revision;
  bool operator==(const MixedLimit&) const = default;
};
// How a part whose limits differ from model to model uses up its life (design 5).
// part number PN-4411 shares lives by fractions, source "limitations rev 4". The parts of a life
// that it used on each model are added up.
struct SharesByFractions {
  Scope scope;
  std::optional<std::string> source;
  bool operator==(const SharesByFractions&) const = default;
};
// part number PN-4411 shares lives, shorter limit stays. All use counts against the shortest limit
// that it ever came under.
enum class LimitThatStays { shorter };
struct ShorterLimitStays {
  Scope scope;
  LimitThatStays limit = LimitThatStays::shorter;
  std::optional<std::string> source;
  bool operator==(const ShorterLimitStays&) const = default;
};

// task "100-hour inspection" on aircraft ZZ-KIT every 100.0 h since done, excess counts, over
// 10.0 h to reach the shop, source "…". directive D-26-04 on model TS-40 first at …, every ….
enum class TaskClass { task, inspection, service, storage_step, directive };
enum class NextFrom { done, due };
struct Task {
  TaskClass class_ = TaskClass::task;
  TaskName name;
  Scope scope;
  std::optional<Terms> first;
  std::vector<Term> every;  // whichever first; empty: once
  bool excess_counts = false;
  std::optional<quantity::Hours> over_to_shop;
  std::optional<NextFrom> next_from;  // absent: from done
  std::optional<std::string> source;
  std::optional<std::string> revision;
  bool operator==(const Task&) const = default;
};
// task "progressive inspection" on aircraft ZZ-KIT ends, because "annual instead".
struct TaskEnds {
  TaskClass class_ = TaskClass::task;
  TaskName name;
  Scope scope;
  std::optional<std::string> because;
  bool operator==(const TaskEnds&) const = default;
};
// task "300-hour" on aircraft ZZ-KIT is next due at airframe 4339.6 h or 2025-09-01,
// basis "status sheet". A book that begins from a sheet: no done is on record yet.
struct AtAirframe {
  quantity::Hours hours;
  auto operator<=>(const AtAirframe&) const = default;
  bool operator==(const AtAirframe&) const = default;
};
struct AtEngine {
  quantity::Hours hours;
  auto operator<=>(const AtEngine&) const = default;
  bool operator==(const AtEngine&) const = default;
};
using DuePoint = std::variant<AtAirframe, AtEngine, Count, quantity::Day>;
struct NextDue {
  TaskClass class_ = TaskClass::task;
  TaskName name;
  Thing thing;
  std::vector<DuePoint> points;
  std::optional<std::string> basis;
  bool operator==(const NextDue&) const = default;
};

// aircraft ZZ-KIT plans 25.0 h a month, from 2026-05-01, to 2026-09-30. / plans 110.0 h in 299
// days.
enum class Per { day, week, month, year };
struct Rate {
  quantity::Hours hours;
  Per per = Per::day;
  auto operator<=>(const Rate&) const = default;
  bool operator==(const Rate&) const = default;
};
struct HoursIn {
  quantity::Hours hours;
  std::int64_t days = 0;
  auto operator<=>(const HoursIn&) const = default;
  bool operator==(const HoursIn&) const = default;
};
struct Plan {
  Aircraft aircraft;
  std::variant<Rate, HoursIn> use;
  std::optional<quantity::Day> from;
  std::optional<quantity::Day> to;
  bool operator==(const Plan&) const = default;
};

// aircraft ZZ-KIT reviewed "directives and limitations", revision "2026-02", by "M. Tansley".
struct Reviewed {
  Aircraft aircraft;
  std::string what;
  std::optional<std::string> revision;
  bool operator==(const Reviewed&) const = default;
};

}  // namespace logbook
