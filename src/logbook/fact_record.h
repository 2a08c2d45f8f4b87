// logbook/fact_record.h: facts about the record itself, its bases and its people.
#pragma once

#include <optional>
#include <string>
#include <vector>

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

// From its day on, work resets a life or a due point only once it is signed.
enum class WorkCounts { when_recorded, when_signed_here, when_signed };
// record "Marrow Point" counts work when signed.
struct CountsWork {
  RecordName record;
  WorkCounts when = WorkCounts::when_recorded;
  bool operator==(const CountsWork&) const = default;
};

// person "B. Quill" holds certificate "A-1234", kind "mechanic", key …. A further sentence adds
// keys: one for each machine on which the person signs.
struct PersonHolds {
  PersonName name;
  std::string certificate;
  std::optional<std::string> kind;
  std::vector<PublicKey> keys;
  bool operator==(const PersonHolds&) const = default;
};
// person "B. Quill" ends.
struct PersonEnds {
  PersonName name;
  std::optional<std::string> because;
  bool operator==(const PersonEnds&) const = default;
};
// person "B. Quill" key … ends, because "laptop lost".
struct KeyEnds {
  PersonName name;
  PublicKey key;
  std::optional<std::string> because;
  bool operator==(const KeyEnds&) const = default;
};

}  // namespace logbook
