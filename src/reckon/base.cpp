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

// Whether the fitting is the thing's first, or one that no stay came of.
bool begins(const std::vector<Stay>& stays, const logbook::EntryId& fitting) {
  if (stays.empty() || stays.front().fitted == fitting) return true;
  return std::none_of(stays.begin(), stays.end(),
                      [&](const Stay& stay) { return stay.fitted == fitting; });
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

// A fitting where the thing already is makes no stay, and states what it had all the same.
Bases::Bases(const Standing& standing, const Timeline& timeline, const Fittings& fittings) {
  for (const StandingFact& fact : standing.facts) {
    const auto* forward = std::get_if<logbook::BringsForward>(&fact.said->fact);
    if (forward == nullptr) continue;
    sources_[forward->thing].push_back({{fact.said->day, 0}, &fact, forward, nullptr});
  }
  for (const WorkEvent& event : timeline.works) {
    const auto* fitted = std::get_if<logbook::Fitted>(&event.fact->said->fact);
    if (fitted == nullptr || !begins(fittings.stays(fitted->thing), event.fact->root)) continue;
    sources_[fitted->thing].push_back({event.mark, event.fact, nullptr, fitted});
  }
  for (auto& [thing, sources] : sources_) {
    std::stable_sort(sources.begin(), sources.end(),
                     [](const Source& a, const Source& b) { return a.mark < b.mark; });
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
  base.written = source.fact->written;
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

std::vector<Base> Bases::stated(const logbook::Thing& thing, const Clock& clock, const Mark& at,
                                logbook::Basis since) const {
  std::vector<Base> stated;
  const auto found = sources_.find(thing);
  if (found == sources_.end()) return stated;
  for (const Source& source : found->second) {
    if (at < source.mark) break;
    if (auto base = base_in(source, clock, since)) stated.push_back(*std::move(base));
  }
  return stated;
}

std::vector<Mark> Bases::beginnings(const logbook::Thing& thing) const {
  std::vector<Mark> marks;
  const auto found = sources_.find(thing);
  if (found == sources_.end()) return marks;
  for (const Source& source : found->second) marks.push_back(source.mark);
  return marks;
}

std::optional<Day> Bases::brought_forward_day(const logbook::Thing& thing) const {
  const auto found = sources_.find(thing);
  if (found == sources_.end()) return std::nullopt;
  const auto first = std::find_if(found->second.begin(), found->second.end(),
                                  [](const Source& source) { return source.forward != nullptr; });
  return first == found->second.end() ? std::nullopt : std::optional(first->mark.day);
}

}  // namespace reckon
