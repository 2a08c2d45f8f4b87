#include "reckon/task_side.h"

#include <algorithm>

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

// The due point that the task's first terms set, before it was ever done. As a point on the thing's
// own clock it is as sure as what the clock shows now.
std::optional<Figure> first_point(const TaskCourse& course, const logbook::Task& task,
                                  const Clock& clock) {
  if (!task.first) return std::nullopt;
  for (const logbook::Term& term : task.first->terms) {
    if (clock_of(term.amount) != clock) continue;
    const Figure amount = figure_of(term.amount);
    const Subject& subject = course.subject;
    if (!term.after && term.since.value_or(Basis::new_) == Basis::new_) {
      const Total now = subject.view.histories.total(subject.thing, clock, subject.view.now());
      return amount.as_sure_as(now.figure.sureness());
    }
    if (!term.after) continue;
    const Mark start{*term.after, end_of_day};
    const auto place = place_on_clock(subject.view.histories, subject.thing, clock, start);
    if (place) return *place + amount;
  }
  return std::nullopt;
}

std::optional<Day> first_day(const logbook::Task& task) {
  if (!task.first) return std::nullopt;
  for (const logbook::Term& term : task.first->terms) {
    const auto* period = std::get_if<logbook::Period>(&term.amount);
    if (period != nullptr && term.after) return last_legal_day(*term.after, *period);
  }
  return std::nullopt;
}

// The way of one due point by hours or a count through the task's history.
struct Walk {
  std::optional<Figure> base;     // the interval counts from here
  std::optional<Figure> done_at;  // where it was last done
  std::optional<Figure> point;    // stated; it holds until the task is done
  Lack lack = Lack::last_done;    // why there is neither base nor point
};

void walk_done(const TaskCourse& course, const Clock& clock, const TaskEvent& event, Walk& walk) {
  const logbook::Task& task = course.rule.on(event.day());
  auto interval = interval_in(task, clock);
  if (!interval) interval = interval_in(*course.rule.task, clock);
  std::optional<Figure> due = walk.point;
  if (!due && walk.base && interval) due = *walk.base + *interval;
  if (!due && !walk.done_at) due = first_point(course, task, clock);
  const Subject& subject = course.subject;
  const auto place = place_of_done(subject.view, subject.thing, clock, event);
  walk = {place, place, std::nullopt, Lack::total_at_done};
  if (!place || !due) return;
  const bool is_past_due = due->is_unknown() || place->raw() > due->raw();
  const bool is_from_due = task.next_from == logbook::NextFrom::due;
  if (!is_from_due && !(task.excess_counts && is_past_due)) return;
  walk.base = due->is_unknown() ? std::nullopt : due;
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
};

void walk_done(const TaskCourse& course, const TaskEvent& event, CalendarWalk& walk) {
  const logbook::Task& task = course.rule.on(event.day());
  auto period = period_in(task);
  if (!period) period = period_in(*course.rule.task);
  std::optional<Day> due = walk.point;
  if (!due && walk.base && period) due = last_legal_day(*walk.base, *period);
  if (!due && !walk.base) due = first_day(task);
  walk = {event.day(), std::nullopt, Lack::last_done};
  if (task.next_from == logbook::NextFrom::due && due) walk.base = due;
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
