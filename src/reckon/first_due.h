// reckon/first_due.h: the due point that a task's first terms set, for the one time that it was
// done then: what was flown past it is taken from the next interval, and "from due" counts from it.
#pragma once

#include "reckon/side.h"

namespace reckon {

// On the thing's own clock, as it was told where the task was done: of several terms on the clock
// the smallest, or of "the latest of" the largest. Empty: no term is on this clock. Unknown: one of
// them cannot be placed on it.
std::optional<Figure> first_due(const Subject& subject, const logbook::Task& task,
                                const Clock& clock, const Mark& done);

// The same by the calendar.
struct FirstDay {
  bool is_set = false;     // a term is by the calendar
  std::optional<Day> day;  // empty: its beginning is not on record
};
FirstDay first_due_day(const Subject& subject, const logbook::Task& task, Day done);

}  // namespace reckon
