// reckon/task_events.h: what moved the due point of one task on one thing: each time it was done,
// and each time its next due point was stated; with its place on the thing's own clocks.
#pragma once

#include <optional>
#include <vector>

#include "reckon/rules_in_force.h"
#include "reckon/view.h"

namespace reckon {

// What has a class and a name: a task, work done on it, its stated due point.
template <class One, class Other>
bool is_same_task(const One& one, const Other& other) {
  return one.name == other.name && is_same_class(one.class_, other.class_);
}

struct TaskEvent {
  const StandingFact* fact = nullptr;
  Mark mark;
  const logbook::Done* done = nullptr;  // exactly one of the two
  const logbook::NextDue* next_due = nullptr;
  Day day() const { return fact->said->day; }
};

// In the order of the history; a done may precede the task's declaration.
std::vector<TaskEvent> task_events(const View& view, const logbook::Task& task,
                                   const logbook::Thing& thing);

// Where the thing stood on its own clock when the task was done. A stated total that never agreed
// with the flights counts if it makes the task fall due earlier; before the thing came on record
// the stated figure is the source. Empty: not known.
std::optional<Figure> place_of_done(const View& view, const logbook::Thing& thing,
                                    const Clock& clock, const TaskEvent& event);

// The stated due point on a clock of the thing's own; a point on another clock is moved there.
struct StatedPoint {
  bool is_stated = false;       // the sentence has a point of this kind
  std::optional<Figure> place;  // empty: stated, and it cannot be told where it is
};
StatedPoint stated_point(const View& view, const logbook::Thing& thing, const Clock& clock,
                         const TaskEvent& event);
std::optional<Day> stated_day(const TaskEvent& event);

}  // namespace reckon
