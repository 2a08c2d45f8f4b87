// reckon/task_side.h: one interval of a task as a side: its due point is walked through each time
// the task was done. Excess flown past a due point is taken from the next interval (14 CFR
// 91.409(b)); "from due" counts from the due point; else from where it was done.
#pragma once

#include "reckon/side.h"
#include "reckon/task_events.h"

namespace reckon {

struct TaskCourse {
  Subject subject;
  const TaskInForce& rule;
  const std::vector<TaskEvent>& events;
};

bool counts_from_done(const logbook::Term& term);

Side task_side(const TaskCourse& course, const logbook::Term& term);
// Sides of the newest stated due point that no interval of the task has.
std::vector<Side> further_sides(const TaskCourse& course);

}  // namespace reckon
