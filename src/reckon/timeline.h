// reckon/timeline.h: every standing fact in its place: the order in which things happened.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "reckon/ledger.h"
#include "reckon/past.h"
#include "reckon/stay.h"

namespace reckon {

// A work entry, and whose history it stands in.
struct WorkEvent {
  const StandingFact* fact = nullptr;
  Mark mark;
  std::optional<logbook::Aircraft> aircraft;
  std::optional<logbook::Engine> engine;  // that its stated engine hours are about
  bool agreed = true;  // a stated airframe total was met by the book when it was written
  std::optional<quantity::ServiceHours> total_then;  // the airframe's total there, in that book
};

struct Timeline {
  std::vector<WorkEvent> works;  // by mark
  std::map<logbook::EntryId, Mark> marks;
  Ledgers ledgers;
  std::vector<Question> questions;
  bool is_ambiguous = false;

  const WorkEvent* work(const logbook::EntryId& root) const;
  const WorkEvent* work_at(const Mark& mark) const;
  std::map<logbook::EntryId, std::size_t> places_of_works;
};

// Airframe totals that entries state in other words: a stated engine total, put on the airframe's
// clock by what lies between the two.
using OnAirframe = std::map<logbook::EntryId, quantity::Hours>;

Timeline make_timeline(const Standing& standing, const Past& past, Ambiguous policy,
                       const OnAirframe& on_airframe);

}  // namespace reckon
