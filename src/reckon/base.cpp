#include "reckon/base.h"

#include <algorithm>

namespace reckon {

namespace {

Sureness sureness_of(logbook::Grade grade) {
  switch (grade) {
    case logbook::Grade::exact:
      return Sureness::exact;
    case logbook::Grade::at_least:
      return Sureness::at_least;
    case logbook::Grade::by_default:
      break;
  }
  return Sureness::by_default;
}

Clock clock_in(const logbook::Had& had) {
  if (const auto* hours = std::get_if<logbook::ClockHours>(&had.amount)) {
    return HoursClock{hours->meter};
  }
  return std::get<logbook::Count>(had.amount).counter;
}

Figure figure_in(const logbook::Had& had) {
  const Sureness sureness = sureness_of(had.grade);
  if (const auto* hours = std::get_if<logbook::ClockHours>(&had.amount)) {
    return {quantity::service_hours(hours->hours), sureness};
  }
  return {std::get<logbook::Count>(had.amount).amount, sureness};
}

bool is_said_unknown(const logbook::BringsForward& forward, const Clock& clock,
                     logbook::Basis since) {
  return std::any_of(forward.unknown.begin(), forward.unknown.end(), [&](const auto& unknown) {
    const auto* counter = std::get_if<logbook::Counter>(&unknown.what);
    const bool is_it = counter ? clock == Clock(*counter) : clock == service_clock;
    return is_it && unknown.since.value_or(logbook::Basis::new_) == since;
  });
}

// Nothing flown since new: every other count since new is nothing too.
bool has_no_hours(const std::optional<Figure>& hours) {
  return hours && hours->raw() == 0 && hours->sureness() == Sureness::exact;
}

std::optional<Figure> stated_in(const logbook::BringsForward& forward, const Clock& clock,
                                logbook::Basis since) {
  if (is_said_unknown(forward, clock, since)) return zero(clock).as_sure_as(Sureness::unknown);
  const bool is_airframe = since == logbook::Basis::new_ && clock == service_clock;
  if (is_airframe && forward.airframe) return Figure(quantity::service_hours(*forward.airframe));
  return stated_on(forward.had, clock, since);
}

}  // namespace

std::optional<Figure> stated_on(const std::vector<logbook::Had>& had, const Clock& clock,
                                logbook::Basis since) {
  for (const logbook::Had& one : had) {
    if (clock_in(one) == clock && one.since.value_or(logbook::Basis::new_) == since) {
      return figure_in(one);
    }
  }
  return std::nullopt;
}

Bases::Bases(const Standing& standing, const Timeline& timeline, const Fittings& fittings) {
  for (const StandingFact& fact : standing.facts) {
    const auto* forward = std::get_if<logbook::BringsForward>(&fact.said->fact);
    if (forward == nullptr) continue;
    forward_[forward->thing].push_back({{fact.said->day, 0}, &fact, forward, nullptr});
  }
  for (const WorkEvent& event : timeline.works) {
    const auto* fitted = std::get_if<logbook::Fitted>(&event.fact->said->fact);
    if (fitted == nullptr || first_fitted_.contains(fitted->thing)) continue;
    const auto forward = brought_forward_day(fitted->thing);
    const bool is_first = !forward || event.mark < Mark{*forward, 0};
    const auto& stays = fittings.stays(fitted->thing);
    if (!is_first || stays.empty() || stays.front().fitted != event.fact->root) continue;
    first_fitted_[fitted->thing] = {event.mark, event.fact, nullptr, fitted};
  }
}

std::optional<Base> Bases::base_in(const Source& source, const Clock& clock, logbook::Basis since) {
  const auto on = [&](const Clock& asked) {
    return source.forward ? stated_in(*source.forward, asked, since)
                          : stated_on(source.fitted->with, asked, since);
  };
  Base base;
  base.mark = source.mark;
  base.entry = source.fact->root;
  base.kind = source.forward ? TermKind::brought_forward : TermKind::had_when_fitted;
  if (source.forward) base.source = source.forward->basis.value_or("");
  if (!source.forward) base.source = source.fact->said->paper.value_or("");
  if (const auto stated = on(clock)) {
    base.figure = *stated;
    return base;
  }
  if (since != logbook::Basis::new_ || !has_no_hours(on(service_clock))) return std::nullopt;
  base.figure = zero(clock);
  base.is_stated = false;
  return base;
}

// Of what is brought forward the first known figure; before it, what the first fitting stated.
std::optional<Base> Bases::pick(const logbook::Thing& thing, const Clock& clock, const Mark& at,
                                logbook::Basis since) const {
  std::optional<Base> unknown;
  if (const auto found = forward_.find(thing); found != forward_.end()) {
    for (const Source& source : found->second) {
      if (at < source.mark) break;
      const std::optional<Base> base = base_in(source, clock, since);
      if (base && !base->figure.is_unknown()) return base;
      if (base && !unknown) unknown = base;
    }
  }
  const auto first = first_fitted_.find(thing);
  if (!unknown && first != first_fitted_.end() && first->second.mark <= at) {
    return base_in(first->second, clock, since);
  }
  return unknown;
}

std::optional<Base> Bases::find(const logbook::Thing& thing, const Clock& clock,
                                const Mark& at) const {
  return pick(thing, clock, at, logbook::Basis::new_);
}

std::optional<Base> Bases::since_overhaul(const logbook::Thing& thing, const Clock& clock,
                                          const Mark& at) const {
  return pick(thing, clock, at, logbook::Basis::overhaul);
}

std::optional<Day> Bases::brought_forward_day(const logbook::Thing& thing) const {
  const auto found = forward_.find(thing);
  if (found == forward_.end()) return std::nullopt;
  return found->second.front().mark.day;
}

}  // namespace reckon
