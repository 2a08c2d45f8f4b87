// logbook/fact.h: one fact of any kind, and the fact as it was said: with its day and the clauses
// that every kind may take. The sentence floor reads and writes them; reckon answers from them.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "logbook/fact_checks.h"
#include "logbook/fact_fleet.h"
#include "logbook/fact_readings.h"
#include "logbook/fact_record.h"
#include "logbook/fact_rules.h"
#include "logbook/fact_signed.h"
#include "logbook/fact_use.h"
#include "logbook/fact_work.h"

namespace logbook {

struct Said;

// A Said inside a fact: copied by sharing, compared by value, never changed.
class InnerSaid {
 public:
  InnerSaid() = default;
  explicit InnerSaid(Said said);
  bool is_empty() const { return said_ == nullptr; }
  const Said& operator*() const;
  friend bool operator==(const InnerSaid& a, const InnerSaid& b);

 private:
  std::shared_ptr<const Said> said_;
};

// entry K7QXM-123 corrected because "typed 1.3, was 1.8": 2026-03-04 aircraft ZZ-KIT flew …. It
// names the newest entry of its chain; day, subject and clauses may differ, the kind may not.
struct Corrected {
  EntryName entry;
  std::string because;
  InnerSaid instead;
  bool operator==(const Corrected&) const = default;
};
// entry K7QXM-124 struck because "entered twice".
struct Struck {
  EntryName entry;
  std::string because;
  bool operator==(const Struck&) const = default;
};

using AnyFact = std::variant<RecordBegins, CountsWork, BaseJoins,                    //
                             PersonHolds, PersonEnds, KeyEnds,                       //
                             AircraftIs, EngineIs, PartIs, HasPlace, BringsForward,  //
                             CountsHours, MeterChanged, MeterLost,                   //
                             CountingRule, Limit, MixedLimit, OnCondition,           //
                             SharesByFractions, ShorterLimitStays,                   //
                             Task, TaskEnds, NextDue,                                //
                             TemperatureLimit, ChartRow, StartLimit, StartCheck,     //
                             ExceedanceLimit, TrendSettings, Plan, Reviewed,         //
                             Flew, Ran, Tried, Unaccounted,                          //
                             Started, Reading, Exceeded, LookedInto, EngineEvent,    //
                             Done, Fitted, Removed, Overhauled, Signed, Corrected, Struck>;

// One fact. What copies, compares and destroys it stands in the source and is compiled once: it is
// a table of all kinds for each, and nearly every source file holds facts.
class Fact : public AnyFact {
 public:
  using AnyFact::AnyFact;
  using AnyFact::operator=;
  Fact();
  Fact(const Fact& other);
  Fact(Fact&& other) noexcept;
  Fact& operator=(const Fact& other);
  Fact& operator=(Fact&& other) noexcept;
  ~Fact();
  friend bool operator==(const Fact& a, const Fact& b);
};

// although "2.3 h are missing before this flight" because "ferry by the seller".
struct AcceptedDoubt {
  std::string doubt;
  std::string because;
  auto operator<=>(const AcceptedDoubt&) const = default;
  bool operator==(const AcceptedDoubt&) const = default;
};
// from "flights.csv" row 12.
struct FromRow {
  std::string file;
  std::int64_t row = 0;
  auto operator<=>(const FromRow&) const = default;
  bool operator==(const FromRow&) const = default;
};

struct Said {
  quantity::Day day;
  std::optional<quantity::ClockTime> time;
  Fact fact;
  std::optional<EntryName> instead_of;  // a definition that replaces one; without it, it adds
  std::optional<std::string> paper;
  std::optional<PersonName> by;     // Done holds its own
  std::optional<std::string> scan;  // 64 hex digits
  std::optional<FromRow> from;
  std::optional<std::string> remark;
  std::vector<AcceptedDoubt> although;
  bool operator==(const Said&) const = default;
};

}  // namespace logbook
