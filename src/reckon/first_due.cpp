#include "reckon/first_due.h"

#include <algorithm>

#include "reckon/limit_side.h"
#include "reckon/period.h"
#include "reckon/use.h"

namespace reckon {
namespace {

using logbook::Basis;

struct FirstAsked {
  const Histories& histories;
  const logbook::Thing& thing;
  const Clock& clock;
  const Mark& done;
};

Figure unknown_on(const Clock& clock) { return zero(clock).as_sure_as(Sureness::unknown); }

// So much after a place on the thing's own clock.
Figure after_place(const FirstAsked& asked, const Mark& start, const Figure& amount) {
  const auto place = place_on_clock(asked.histories, asked.thing, asked.clock, start);
  return place ? *place + amount : unknown_on(asked.clock);
}

// What was used of the amount where it was done tells how far on or back the point lay.
Figure since_work(const FirstAsked& asked, const Total& used, const Figure& amount) {
  const Figure left = amount - plain(used.figure);
  return after_place(asked, asked.done, left).as_sure_as(used.figure.sureness());
}

// As a point on the thing's own clock it is as sure as what the clock shows now.
Figure point_since_new(const FirstAsked& asked, const Figure& amount) {
  const Total now = asked.histories.total(asked.thing, asked.clock, asked.histories.now());
  return amount.as_sure_as(now.figure.sureness());
}

std::optional<Figure> first_point_of(const FirstAsked& asked, const logbook::Term& term) {
  if (clock_of(term.amount) != asked.clock) return std::nullopt;
  const Figure amount = figure_of(term.amount);
  if (term.after) return after_place(asked, {*term.after, end_of_day}, amount);
  const Histories& histories = asked.histories;
  const Basis basis = term.since.value_or(Basis::new_);
  if (basis == Basis::overhaul) {
    return since_work(asked, histories.since_overhaul(asked.thing, asked.clock, asked.done),
                      amount);
  }
  if (basis == Basis::fitting) {
    return since_work(asked, histories.since_fitting(asked.thing, asked.clock, asked.done), amount);
  }
  return basis == Basis::done ? unknown_on(asked.clock) : point_since_new(asked, amount);
}

}  // namespace

std::optional<Figure> first_due(const Subject& subject, const logbook::Task& task,
                                const Clock& clock, const Mark& done) {
  if (!task.first) return std::nullopt;
  const bool is_latest = task.first->combine == logbook::Combine::latest;
  std::optional<Figure> due;
  for (const logbook::Term& term : task.first->terms) {
    const auto point = first_point_of({subject.view.histories, subject.thing, clock, done}, term);
    if (!point) continue;
    if (point->is_unknown()) return point;
    if (!due || (due->raw() < point->raw()) == is_latest) due = point;
  }
  return due;
}

FirstDay first_due_day(const Subject& subject, const logbook::Task& task, Day done) {
  FirstDay first;
  if (!task.first) return first;
  const bool is_latest = task.first->combine == logbook::Combine::latest;
  for (const logbook::Term& term : task.first->terms) {
    const auto* period = std::get_if<logbook::Period>(&term.amount);
    if (period == nullptr) continue;
    const std::optional<Day> begins = basis_day(subject.view.histories, subject.thing, term);
    // A newer fitting or overhaul hides the one before which it was done.
    if (!begins || (!term.after && done < *begins)) return {true, std::nullopt};
    const Day last = last_legal_day(*begins, *period);
    if (!first.day || (*first.day < last) == is_latest) first = {true, last};
  }
  return first;
}

}  // namespace reckon
