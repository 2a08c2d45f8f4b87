#include "reckon/task_side.h"

#include <algorithm>

#include "reckon/first_due.h"
#include "reckon/period.h"
#include "reckon/use.h"

namespace reckon {
namespace {

using logbook::Basis;

// The interval of the clock in the definition of a day; absent: the definition had none.
std::optional<Figure> interval_in(const logbook::Task& task, const Clock& clock) {
  for (const logbook::Term& term : task.every) {
    if (counts_from_done(term) && clock_of(term.amount) == clock) return figure_of(term.amount);
  }
  return std::nullopt;
}

std::optional<logbook::Period> period_in(const logbook::Task& task) {
  for (const logbook::Term& term : task.every) {
    const auto* period = std::get_if<logbook::Period>(&term.amount);
    if (period != nullptr && counts_from_done(term)) return *period;
  }
  return std::nullopt;
}

// The way of one due point by hours or a count through the task's history.
struct Walk {
  std::optional<Figure> base;     // the interval counts from here
  std::optional<Figure> done_at;  // where it was last done
  std::optional<Figure> point;    // stated; it holds until the task is done
  Lack lack = Lack::last_done;    // why there is neither base nor point
  bool was_done = false;
};

void walk_done(const TaskCourse& course, const Clock& clock, const TaskEvent& event, Walk& walk) {
  const logbook::Task& task = course.rule.on(event.day());
  auto interval = interval_in(task, clock);
  if (!interval) interval = interval_in(*course.rule.task, clock);
  std::optional<Figure> due = walk.point;
  if (!due && walk.base && interval) due = *walk.base + *interval;
  const Subject& subject = course.subject;
  if (!due && !walk.was_done) {
    due = first_due(subject, task, clock, event.mark);
  }
  const auto place = place_of_done(subject.view, subject.thing, clock, event);
  walk = {place, place, std::nullopt, Lack::total_at_done, true};
  if (!place || !due) return;
  const bool is_past_due = due->is_unknown() || place->raw() > due->raw();
  const bool is_from_due = task.next_from == logbook::NextFrom::due;
  if (!is_from_due && !(task.excess_counts && is_past_due)) return;
  walk.base = due;
  if (!due->is_unknown()) return;
  walk.base.reset();
  walk.lack = Lack::due_point;
}

void walk_stated(const TaskCourse& course, const Clock& clock, const TaskEvent& event, Walk& walk) {
  const StatedPoint stated = stated_point(course.subject.view, course.subject.thing, clock, event);
  if (stated.is_stated) {
    walk.point = stated.place;
    walk.lack = Lack::total_at_start;
    if (!stated.place) walk.base.reset();
  } else if (!walk.base) {
    walk.lack = Lack::due_point;
  }
}

Walk walked(const TaskCourse& course, const Clock& clock) {
  Walk walk;
  for (const TaskEvent& event : course.events) {
    if (event.done != nullptr) {
      walk_done(course, clock, event, walk);
    } else {
      walk_stated(course, clock, event, walk);
    }
  }
  return walk;
}

void note_done(const Walk& walk, const Total& now, Side& side) {
  side.used.figure = zero(side.clock).as_sure_as(Sureness::unknown);
  if (!walk.done_at) return;
  side.used = now;
  side.used.figure = plain(now.figure) - plain(*walk.done_at);
  side.used.figure =
      side.used.figure.as_sure_as(quantity::worse(sureness_of_use(now), walk.done_at->sureness()));
  Term at_done;
  at_done.kind = TermKind::at_done;
  at_done.figure = *walk.done_at;
  at_done.subtract = true;
  side.used.because.push_back(std::move(at_done));
  if (!walk.base || walk.point || walk.base->raw() >= walk.done_at->raw()) return;
  side.excess = *walk.done_at - *walk.base;
}

Side walked_side(const TaskCourse& course, const Clock& clock, std::optional<Figure> interval) {
  const Walk walk = walked(course, clock);
  const Subject& subject = course.subject;
  Side side;
  side.clock = clock;
  side.limit = interval;
  side.since = Basis::done;
  const Total now = subject.view.histories.total(subject.thing, clock, subject.view.now());
  note_done(walk, now, side);
  std::optional<Figure> due = walk.point;
  if (!due && walk.base && interval) due = *walk.base + *interval;
  if (due) {
    set_left(subject, side, *due - plain(now.figure),
             quantity::worse(sureness_of_use(now), due->sureness()));
  } else {
    set_lack(side, walk.lack);
  }
  return side;
}

struct CalendarWalk {
  std::optional<Day> base;
  std::optional<Day> point;
  Lack lack = Lack::last_done;
  bool was_done = false;
};

void walk_done(const TaskCourse& course, const TaskEvent& event, CalendarWalk& walk) {
  const logbook::Task& task = course.rule.on(event.day());
  auto period = period_in(task);
  if (!period) period = period_in(*course.rule.task);
  std::optional<Day> due = walk.point;
  if (!due && walk.base && period) due = last_legal_day(*walk.base, *period);
  FirstDay first;
  if (!due && !walk.was_done) {
    first = first_due_day(course.subject, task, event.day());
  }
  if (first.is_set) due = first.day;
  walk = {event.day(), std::nullopt, Lack::due_point, true};
  if (task.next_from == logbook::NextFrom::due && (due || first.is_set)) walk.base = due;
}

CalendarWalk walked_days(const TaskCourse& course) {
  CalendarWalk walk;
  for (const TaskEvent& event : course.events) {
    if (event.done != nullptr) {
      walk_done(course, event, walk);
    } else if (const auto day = stated_day(event)) {
      walk.point = day;
    } else if (!walk.base) {
      walk.lack = Lack::due_point;
    }
  }
  return walk;
}

Side calendar_side(const TaskCourse& course, const std::optional<logbook::Period>& period) {
  const CalendarWalk walk = walked_days(course);
  Side side;
  side.is_calendar = true;
  side.since = Basis::done;
  side.period = period;
  side.used.figure = Figure(quantity::Days{});
  side.basis_day = walk.point ? std::nullopt : walk.base;
  if (walk.point) {
    set_last_legal(course.subject, side, *walk.point);
  } else if (walk.base && period) {
    set_last_legal(course.subject, side, last_legal_day(*walk.base, *period));
  } else {
    set_lack(side, walk.lack);
  }
  return side;
}

std::optional<Clock> clock_of_point(const logbook::DuePoint& point) {
  if (const auto* count = std::get_if<logbook::Count>(&point)) return count->counter;
  if (std::holds_alternative<Day>(point)) return std::nullopt;
  return service_clock;
}

}  // namespace

bool counts_from_done(const logbook::Term& term) {
  return !term.after && term.since.value_or(Basis::done) == Basis::done;
}

Side task_side(const TaskCourse& course, const logbook::Term& term) {
  const std::optional<Clock> clock = clock_of(term.amount);
  if (!clock) return calendar_side(course, std::get<logbook::Period>(term.amount));
  return walked_side(course, *clock, figure_of(term.amount));
}

std::vector<Side> further_sides(const TaskCourse& course) {
  std::vector<Side> sides;
  if (course.events.empty() || course.events.back().next_due == nullptr) return sides;
  for (const logbook::DuePoint& point : course.events.back().next_due->points) {
    const std::optional<Clock> clock = clock_of_point(point);
    if (clock && !interval_in(*course.rule.task, *clock)) {
      sides.push_back(walked_side(course, *clock, std::nullopt));
    }
    if (!clock && !period_in(*course.rule.task)) {
      sides.push_back(calendar_side(course, std::nullopt));
    }
  }
  return sides;
}

}  // namespace reckon
