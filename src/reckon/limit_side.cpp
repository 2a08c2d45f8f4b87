#include "reckon/limit_side.h"

#include "reckon/period.h"
#include "reckon/use.h"

namespace reckon {
namespace {

using logbook::Basis;

// What a thing used before it was released or certified counts too: that is the careful side.
Total used_since(const Subject& subject, const Clock& clock, Basis basis) {
  const Histories& histories = subject.view.histories;
  const Mark now = subject.view.now();
  switch (basis) {
    case Basis::overhaul:
      return histories.since_overhaul(subject.thing, clock, now);
    case Basis::fitting:
      // Off the aircraft it stands still until the next fitting.
      if (histories.stays(subject.thing).empty()) return {zero(clock), {}};
      return histories.since_fitting(subject.thing, clock, now);
    case Basis::new_:
    case Basis::release:
    case Basis::manufacture:
    case Basis::first_certificate:
    case Basis::done:
      break;
  }
  return histories.total(subject.thing, clock, now);
}

Side started_side(const logbook::Term& term) {
  Side side;
  side.after = term.after;
  if (!term.after) side.since = term.since.value_or(Basis::new_);
  return side;
}

void count_amount(const Subject& subject, const logbook::Term& term, Side& side) {
  side.clock = *clock_of(term.amount);
  side.limit = figure_of(term.amount);
  if (term.after) {
    const Mark start{*term.after, end_of_day};
    side.used = used_after(subject.view.histories, subject.thing, side.clock, start);
    if (side.used.figure.is_unknown()) return set_lack(side, Lack::total_at_start);
  } else {
    side.used = used_since(subject, side.clock, *side.since);
  }
  const Sureness sureness = side.used.figure.sureness();
  set_left(subject, side, *side.limit - plain(side.used.figure), sureness);
}

void count_days(const Subject& subject, const logbook::Term& term, Side& side) {
  side.is_calendar = true;
  side.period = std::get<logbook::Period>(term.amount);
  side.used.figure = Figure(quantity::Days{});
  side.basis_day = basis_day(subject.view.histories, subject.thing, term);
  if (!side.basis_day) return set_lack(side, Lack::basis_day);
  set_last_legal(subject, side, last_legal_day(*side.basis_day, *side.period));
}

}  // namespace

std::optional<Day> basis_day(const Histories& histories, const logbook::Thing& thing,
                             const logbook::Term& term) {
  if (term.after) return term.after;
  const Basis basis = term.since.value_or(Basis::new_);
  if (basis == Basis::done) return std::nullopt;
  return histories.basis_day(thing, basis == Basis::new_ ? Basis::manufacture : basis);
}

Side limit_side(const Subject& subject, const logbook::Term& term) {
  Side side = started_side(term);
  const bool is_calendar = std::holds_alternative<logbook::Period>(term.amount);
  if (is_calendar) {
    count_days(subject, term, side);
  } else if (side.since == Basis::done) {
    side.clock = *clock_of(term.amount);
    side.limit = figure_of(term.amount);
    set_lack(side, Lack::last_done);
  } else {
    count_amount(subject, term, side);
  }
  return side;
}

}  // namespace reckon
