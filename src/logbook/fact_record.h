// logbook/fact_record.h: facts about the record itself, its bases and its people.
#pragma once

#include <optional>
#include <string>

#include "logbook/names.h"
#include "quantity/calendar.h"
#include "quantity/hours.h"

namespace logbook {

enum class DayKind { local_day, utc_day };

// record "Marrow Point" begins, language 1, deferrals by local day, tenths half up,
// reviews within 30 days, for tests, clock 2026-03-05T08:00:00Z, seed 7.
struct RecordBegins {
  RecordName name;
  std::int64_t language = 1;
  std::optional<DayKind> deferrals;            // absent: local day
  std::optional<quantity::TenthsRule> tenths;  // absent: half up
  std::optional<std::int64_t> review_days;     // absent: 30
  bool for_tests = false;                      // the clock and the seed need it
  std::optional<quantity::Instant> clock;
  std::optional<std::int64_t> seed;
  bool operator==(const RecordBegins&) const = default;
};

// base "North" joins, days in "America/Denver".
struct BaseJoins {
  BaseName name;
  std::optional<std::string> zone;
  bool operator==(const BaseJoins&) const = default;
};

// person "B. Quill" holds certificate "A-1234", kind "mechanic".
struct PersonHolds {
  PersonName name;
  std::string certificate;
  std::optional<std::string> kind;
  bool operator==(const PersonHolds&) const = default;
};
// person "B. Quill" ends.
struct PersonEnds {
  PersonName name;
  std::optional<std::string> because;
  bool operator==(const PersonEnds&) const = default;
};

}  // namespace logbook
