// reckon/stay.h: places in a history, stays, and statements against what was reckoned, as values.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "logbook/derived.h"
#include "logbook/entry.h"
#include "reckon/figure.h"
#include "reckon/standing.h"

namespace reckon {

// A place in one aircraft's history: after everything of that day up to order. order 0 is the start
// of the day, end_of_day its end. Marks of different aircraft do not compare within a day.
struct Mark {
  Day day;
  std::int64_t order = 0;
  auto operator<=>(const Mark&) const = default;
  bool operator==(const Mark&) const = default;
};
inline constexpr std::int64_t end_of_day = INT64_MAX;

// A thing in a place of a host, from one mark to another, on the clock of the aircraft at the root
// (marks are in the history of the aircraft on which the host then is; off any aircraft: by day).
struct Stay {
  logbook::Thing thing;
  logbook::Thing host;
  logbook::PlaceName place;
  Mark from;
  std::optional<Mark> to;
  logbook::EntryId fitted;
  std::optional<logbook::EntryId> removed;
};

// A total that is asked for, or that an entry states.
struct TotalAsked {
  logbook::Thing thing;
  Clock clock;
  Mark at;
  logbook::Basis since = logbook::Basis::new_;  // or overhaul
};

// Two writers and nothing to tell the order by: work before or after the day's flights.
enum class Ambiguous { early, late };

// What a work entry stated against what the flights sum to at its place.
struct Statement {
  logbook::EntryId entry;
  logbook::Thing thing;
  Clock clock;
  Figure stated;
  Figure reckoned;  // empty history before the brought-forward day: equals stated
  bool agreed_when_written = true;
  std::optional<logbook::EntryId> moved_by;  // the entry that moved it since
  bool is_settled = false;                   // all that moved it was accepted when it was entered
};

}  // namespace reckon
