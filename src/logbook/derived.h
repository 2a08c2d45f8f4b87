// logbook/derived.h: what is worked out from the entries and kept only to answer quickly. It may be
// dropped and rebuilt at any time.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "quantity/amount.h"

namespace logbook {

// One amount of use by one standing entry: of an airframe (place empty) or of one of its places.
// key: "hours", "meter collective", or a counter's plural ("starts"). Hours and meters in
// thousandths of a second after the factor, counts in thousandths.
struct UseRow {
  std::string aircraft;
  std::string place;
  std::string key;
  quantity::Day day;
  std::int64_t order = 0;  // within the day
  EntryId entry;
  std::int64_t amount = 0;
  quantity::Sureness sureness = quantity::Sureness::exact;
  bool operator==(const UseRow&) const = default;
};

// The running total of one airframe's or place's key at the end of a day, flown since the book's
// first use row (what was brought forward is not in it).
struct RunningTotal {
  std::string aircraft;
  std::string place;
  std::string key;
  quantity::Day day;
  std::int64_t total = 0;
  quantity::Sureness sureness = quantity::Sureness::exact;
  bool operator==(const RunningTotal&) const = default;
};

// All derived use of one aircraft from a day on; it replaces what stands there.
struct DerivedUse {
  std::string aircraft;
  quantity::Day from;
  std::vector<UseRow> uses;
  std::vector<RunningTotal> totals;
};

}  // namespace logbook
