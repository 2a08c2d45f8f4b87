#include "reckon/task_events.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/use.h"

namespace reckon {
namespace {

template <class Work>
bool is_about(const Work& work, const logbook::Task& task, const logbook::Thing& thing) {
  return is_same_task(work, task) && work.thing == thing;
}

bool is_before_record(const View& view, const logbook::Thing& thing, const Mark& mark) {
  const std::optional<Mark> first = first_on_record(view.histories, thing);
  return first && mark < *first;
}

// A stated place is one on the thing's own clock, and as sure as what the clock shows now.
Figure as_sure_as_now(const Figure& stated, const Figure& now) {
  return plain(stated).as_sure_as(now.sureness());
}

// What a statement of this entry says about the thing's own clock; `place` is what the flights say.
std::optional<Figure> heed_own(const View& view, const Statement& statement, const Mark& mark,
                               const std::optional<Figure>& place) {
  const Total now = view.histories.total(statement.thing, statement.clock, view.now());
  if (now.figure.is_unknown()) return place;
  const Figure stated = as_sure_as_now(statement.stated, now.figure);
  if (!place || is_before_record(view, statement.thing, mark)) return stated;
  const bool is_earlier = statement.stated.raw() < place->raw();
  return !statement.agreed_when_written && is_earlier ? stated : place;
}

// By how much a total of the airframe or engine beside the thing is stated too low: the thing was
// as much earlier on its own clock.
Figure too_low(const Statement& statement) {
  const bool is_low = !statement.agreed_when_written && !statement.reckoned.is_unknown() &&
                      statement.stated.raw() < statement.reckoned.raw();
  if (!is_low) return zero(statement.clock);
  return plain(statement.reckoned) - plain(statement.stated);
}

// The thing by whose hours a due point is stated, and a mark at which the other thing is on it.
// Empty: it cannot be told which it is.
struct Reference {
  std::optional<logbook::Thing> thing;
  Mark mark;
};

// A due point by the hours of another thing.
struct Point {
  Reference reference;
  Figure hours;
};

// A reference thing's place on its clock and the thing's own place there: their difference stays
// while the thing is on the reference.
std::optional<Figure> moved_to_own_clock(const View& view, const logbook::Thing& thing,
                                         const Point& point) {
  Mark mark = point.reference.mark;
  for (const logbook::Thing& either : {thing, *point.reference.thing}) {
    if (const auto first = first_on_record(view.histories, either)) mark = std::max(mark, *first);
  }
  const Total there = view.histories.total(*point.reference.thing, service_clock, mark);
  const auto own = place_on_clock(view.histories, thing, service_clock, mark);
  if (there.figure.is_unknown() || !own) return std::nullopt;
  return *own + (point.hours - there.figure);
}

std::optional<Figure> own_point(const View& view, const logbook::Thing& thing, const Clock& clock,
                                const Figure& point) {
  const Figure now = view.histories.total(thing, clock, view.now()).figure;
  return now.is_unknown() ? std::nullopt : std::optional(as_sure_as_now(point, now));
}

// The engine that a sentence means: the thing, the engine it is in, or the only one aboard.
std::optional<logbook::Engine> engine_meant(const View& view, const logbook::Thing& thing,
                                            const Mark& mark) {
  if (const auto engine = engine_at(view.histories, thing, mark)) return engine;
  const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
  if (aircraft == nullptr) return std::nullopt;
  std::optional<logbook::Engine> only;
  for (const logbook::Thing& other : view.histories.things()) {
    const auto* engine = std::get_if<logbook::Engine>(&other);
    if (engine == nullptr || aircraft_at(view.histories, other, mark) != *aircraft) continue;
    if (only) return std::nullopt;
    only = *engine;
  }
  return only;
}

// What was around the thing when the day of the sentence ended, else when it began; before the
// thing came anywhere, what it came to first, or is on now.
template <class Around>
Reference reference_at(const View& view, const logbook::Thing& thing, const Mark& mark,
                       const Around& around) {
  const Mark first = first_on_record(view.histories, thing).value_or(mark);
  for (const Mark& at : {Mark{mark.day, end_of_day}, mark, first, view.now()}) {
    if (at < mark) continue;
    if (const auto found = around(at)) return {logbook::Thing(*found), at};
  }
  return {std::nullopt, mark};
}

Reference aircraft_reference(const View& view, const logbook::Thing& thing, const Mark& mark) {
  return reference_at(view, thing, mark,
                      [&](const Mark& at) { return aircraft_at(view.histories, thing, at); });
}

Reference engine_reference(const View& view, const logbook::Thing& thing, const Mark& mark) {
  return reference_at(view, thing, mark,
                      [&](const Mark& at) { return engine_meant(view, thing, at); });
}

StatedPoint point_of(const View& view, const logbook::Thing& thing, const Point& point) {
  StatedPoint stated{true, std::nullopt};
  if (!point.reference.thing) return stated;
  stated.place = *point.reference.thing == thing
                     ? own_point(view, thing, service_clock, point.hours)
                     : moved_to_own_clock(view, thing, point);
  return stated;
}

}  // namespace

std::vector<TaskEvent> task_events(const View& view, const logbook::Task& task,
                                   const logbook::Thing& thing) {
  std::vector<TaskEvent> events;
  for (const StandingFact& fact : view.standing.facts) {
    const auto* done = std::get_if<logbook::Done>(&fact.said->fact);
    const auto* next_due = std::get_if<logbook::NextDue>(&fact.said->fact);
    const bool is_meant = (done != nullptr && is_about(*done, task, thing)) ||
                          (next_due != nullptr && is_about(*next_due, task, thing));
    if (is_meant && fact.is_counted)
      events.push_back({&fact, view.histories.mark_of(fact.root), done, next_due});
  }
  std::stable_sort(events.begin(), events.end(),
                   [](const TaskEvent& a, const TaskEvent& b) { return a.mark < b.mark; });
  return events;
}

std::optional<Figure> place_of_done(const View& view, const logbook::Thing& thing,
                                    const Clock& clock, const TaskEvent& event) {
  const std::optional<Figure> flown = place_on_clock(view.histories, thing, clock, event.mark);
  std::optional<Figure> place = flown;
  for (const Statement& statement : view.histories.statements()) {
    if (statement.entry != event.fact->root || statement.clock != clock) continue;
    if (statement.thing == thing) {
      place = heed_own(view, statement, event.mark, place);
    } else if (flown) {
      const Figure moved = *flown - too_low(statement);
      if (moved.raw() < place->raw()) place = moved;
    }
  }
  return place;
}

StatedPoint stated_point(const View& view, const logbook::Thing& thing, const Clock& clock,
                         const TaskEvent& event) {
  if (event.next_due == nullptr) return {};
  for (const logbook::DuePoint& point : event.next_due->points) {
    const auto* count = std::get_if<logbook::Count>(&point);
    if (count != nullptr && Clock{count->counter} == clock) {
      return {true, own_point(view, thing, clock, count->amount)};
    }
    if (clock != service_clock) continue;
    if (const auto* airframe = std::get_if<logbook::AtAirframe>(&point)) {
      return point_of(
          view, thing,
          {aircraft_reference(view, thing, event.mark), quantity::service_hours(airframe->hours)});
    }
    if (const auto* engine = std::get_if<logbook::AtEngine>(&point)) {
      return point_of(
          view, thing,
          {engine_reference(view, thing, event.mark), quantity::service_hours(engine->hours)});
    }
  }
  return {};
}

std::optional<Day> stated_day(const TaskEvent& event) {
  if (event.next_due == nullptr) return std::nullopt;
  for (const logbook::DuePoint& point : event.next_due->points) {
    if (const auto* day = std::get_if<Day>(&point)) return *day;
  }
  return std::nullopt;
}

}  // namespace reckon
