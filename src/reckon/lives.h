// reckon/lives.h: what is left of every limit of every thing, and which limit runs out first.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/fact.h"
#include "reckon/histories.h"

namespace reckon {

enum class State { ok, soon, due, over, not_known };

// One side of a limit or task: one amount against one clock or the calendar.
struct Side {
  Clock clock;                       // for a calendar side unused
  bool is_calendar = false;
  std::optional<logbook::Basis> since;
  Total used;                        // since the basis; for a calendar side: the basis day below
  std::optional<Figure> limit;       // the amount
  std::optional<Figure> left;        // absent: not known. Negative: over by so much
  bool left_is_at_most = false;      // some use is missing: "at most"
  std::optional<Figure> due_at;      // on the subject's own clock
  std::optional<Figure> due_at_airframe;  // in airframe hours, when it is aboard and counts hours
  std::optional<Day> basis_day;
  std::optional<Day> last_legal;     // calendar: the last day that may be flown
  State state = State::ok;
  std::string missing;               // not known: what is missing ("starts since new")
};

// A limit, or a task's next due point: its sides, combined first or latest.
struct Item {
  std::string id;                    // stable: class, name and subject ("task:annual inspection:ZZ-KIT")
  enum class Kind { limit, on_condition, task } kind = Kind::limit;
  logbook::EntryId entry;            // the definition
  std::vector<logbook::EntryId> because;  // the entries it rests on
  logbook::Thing thing;              // subject
  std::optional<logbook::Aircraft> aircraft;  // where it is now
  std::optional<logbook::PlaceName> place;    // of the thing in its host
  const logbook::Limit* limit = nullptr;
  const logbook::Task* task = nullptr;
  std::string source;
  std::vector<Side> sides;
  int governs = -1;                  // index of the side that runs out first (or last, for latest)
  State state = State::ok;
  bool when_exceeding = false;
  std::optional<logbook::EntryId> last_done;
  std::optional<Day> last_done_day;
  std::optional<Day> expected;       // by forecast: the day on which it is reached
  std::string missing;
};

// Limits that apply to a thing: its own, its part number's (on its host's model), its model's.
// Several: each is an item; the first to run out governs.
std::vector<Item> lives(const Histories& histories, const Standing& standing);

// The limit or on-condition statement that a thing lacks (condition 4 of ready).
std::vector<logbook::Thing> things_without_limit(const Histories& histories,
                                                 const Standing& standing,
                                                 const logbook::Aircraft& aircraft);

}  // namespace reckon
