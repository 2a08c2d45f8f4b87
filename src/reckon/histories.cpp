#include "reckon/histories.h"

#include <algorithm>
#include <utility>

#include "reckon/derived_use.h"
#include "reckon/papers.h"
#include "reckon/question.h"
#include "reckon/readings.h"
#include "reckon/statements.h"

namespace reckon {

namespace {

// Entries that state an engine's total only can be put in their place once the totals are reckoned.
Timeline settled_timeline(const Standing& standing, const Past& past, Ambiguous policy) {
  Timeline timeline = make_timeline(standing, past, policy, {});
  OnAirframe on_airframe;
  {
    const Fittings fittings(timeline);
    const CountingRules rules(standing);
    const Bases bases(standing, timeline, fittings);
    const Totals totals(timeline, fittings, rules, bases);
    on_airframe = engine_totals_on_airframe(timeline, totals);
  }
  if (on_airframe.empty()) return timeline;
  return make_timeline(standing, past, policy, on_airframe);
}

}  // namespace

struct Histories::Inside {
  Inside(const Standing& standing, Day today, Ambiguous policy)
      : as_of(today),
        past(standing),
        timeline(settled_timeline(standing, past, policy)),
        fittings(timeline),
        rules(standing),
        bases(standing, timeline, fittings),
        totals(timeline, fittings, rules, bases),
        readings(standing, timeline),
        papers(papers_of(standing)) {
    for (const auto& [thing, its] : papers) add_thing(thing, its);
    for (const Question& one : timeline.questions) add_question(questions, one);
    for (const Question& one : fittings.questions()) add_question(questions, one);
    statements = statements_of({standing, timeline, past, totals});
  }

  void add_thing(const logbook::Thing& thing, const Papers& its) {
    things.push_back(thing);
    const auto* engine = std::get_if<logbook::Engine>(&thing);
    if (engine != nullptr) bearers[engine->model].engines = true;
    const bool is_aircraft = std::holds_alternative<logbook::Aircraft>(thing);
    if (is_aircraft && its.model) bearers[*its.model].aircraft = true;
  }
  const Ledger* ledger(const logbook::Aircraft& aircraft) const {
    const auto found = timeline.ledgers.find(aircraft);
    return found == timeline.ledgers.end() ? nullptr : &found->second;
  }
  const Ride* ride_now(const logbook::Thing& thing) const {
    const std::vector<Ride>& rides = fittings.rides(thing);
    const auto open =
        std::find_if(rides.begin(), rides.end(), [](const Ride& ride) { return !ride.to; });
    return open == rides.end() ? nullptr : &*open;
  }
  // The line on which it counts now: an aircraft's own, or that of the ride it is on.
  std::optional<Line> line_now(const logbook::Thing& thing, const Clock& clock) const {
    if (const auto* aircraft = std::get_if<logbook::Aircraft>(&thing)) {
      const Ledger* its = ledger(*aircraft);
      return its ? std::optional(totals.line_of(*its, clock)) : std::nullopt;
    }
    const Ride* ride = ride_now(thing);
    return ride ? std::optional(totals.line_of(thing, *ride, clock)) : std::nullopt;
  }
  const Papers* papers_for(const logbook::Thing& thing) const {
    const auto found = papers.find(thing);
    return found == papers.end() ? nullptr : &found->second;
  }
  std::optional<Day> overhaul_day(const logbook::Thing& thing) const {
    const WorkEvent* overhaul = totals.overhaul_at(thing, {as_of, end_of_day});
    return overhaul ? std::optional(overhaul->mark.day) : std::nullopt;
  }
  std::optional<Day> fitting_day(const logbook::Thing& thing) const {
    const Stay* stay = totals.stay_at(thing, {as_of, end_of_day});
    return stay ? std::optional(stay->from.day) : std::nullopt;
  }
  std::optional<Day> first_day_as_new(const logbook::Thing& thing) const;

  Day as_of;
  Past past;
  Timeline timeline;
  Fittings fittings;
  CountingRules rules;
  Bases bases;
  Totals totals;
  Readings readings;
  AllPapers papers;
  std::vector<logbook::Thing> things;
  std::map<logbook::ModelName, Bearers> bearers;
  std::vector<Statement> statements;
  std::vector<Question> questions;
};

// A thing is new from the day it was made; without that day, from its first fitting with nothing on
// its clock.
std::optional<Day> Histories::Inside::first_day_as_new(const logbook::Thing& thing) const {
  const Papers* its = papers_for(thing);
  if (its != nullptr && its->made) return its->made;
  const std::vector<Stay>& stays = fittings.stays(thing);
  if (stays.empty()) return std::nullopt;
  const auto base = totals.base({thing, service_clock, stays.front().from});
  const bool came_new = base && base->figure == zero(service_clock);
  return came_new ? std::optional(stays.front().from.day) : std::nullopt;
}

Histories::Histories(const Standing& standing, Day as_of, Ambiguous policy)
    : inside_(std::make_unique<Inside>(standing, as_of, policy)) {}
Histories::Histories(Histories&&) noexcept = default;
Histories::~Histories() = default;

Day Histories::as_of() const { return inside_->as_of; }
const std::vector<logbook::Thing>& Histories::things() const { return inside_->things; }

std::optional<logbook::ModelName> Histories::model_of(const logbook::Thing& thing) const {
  if (const auto* engine = std::get_if<logbook::Engine>(&thing)) return engine->model;
  const Papers* its = inside_->papers_for(thing);
  return its ? its->model : std::nullopt;
}

Bearers Histories::bearers_of(const logbook::ModelName& model) const {
  const auto found = inside_->bearers.find(model);
  return found == inside_->bearers.end() ? Bearers{} : found->second;
}

const std::vector<Stay>& Histories::stays(const logbook::Thing& thing) const {
  return inside_->fittings.stays(thing);
}

std::optional<Stay> Histories::stay_at(const logbook::Thing& thing, const Mark& mark) const {
  const Stay* stay = inside_->totals.stay_at(thing, mark);
  const bool holds = stay != nullptr && (!stay->to || mark < *stay->to);
  return holds ? std::optional(*stay) : std::nullopt;
}

std::optional<Stay> Histories::stay_now(const logbook::Thing& thing) const {
  return stay_at(thing, now());
}

std::optional<Stay> Histories::newest_stay(const logbook::Thing& thing) const {
  const Stay* stay = inside_->totals.stay_at(thing, now());
  return stay ? std::optional(*stay) : std::nullopt;
}

std::vector<Stay> Histories::fitted_now(const logbook::Thing& host) const {
  std::vector<Stay> fitted;
  for (const logbook::Thing& thing : inside_->fittings.ever_in(host)) {
    for (const Stay& stay : stays(thing)) {
      if (!stay.to && stay.host == host) fitted.push_back(stay);
    }
  }
  std::sort(fitted.begin(), fitted.end(), [](const Stay& a, const Stay& b) {
    return std::tie(a.place, a.thing) < std::tie(b.place, b.thing);
  });
  return fitted;
}

std::optional<logbook::Aircraft> Histories::aircraft_now(const logbook::Thing& thing) const {
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&thing)) return *aircraft;
  const Ride* ride = inside_->ride_now(thing);
  if (ride == nullptr) return std::nullopt;
  return ride->ledger->aircraft;
}

Mark Histories::mark_of(const logbook::EntryId& root) const {
  const auto found = inside_->timeline.marks.find(root);
  EXPECT(found != inside_->timeline.marks.end());
  return found->second;
}

Total Histories::total(const logbook::Thing& thing, const Clock& clock, const Mark& at) const {
  return inside_->totals.since_new(thing, clock, at);
}
Total Histories::since_overhaul(const logbook::Thing& thing, const Clock& clock,
                                const Mark& at) const {
  return inside_->totals.since_overhaul(thing, clock, at);
}
Total Histories::since_fitting(const logbook::Thing& thing, const Clock& clock,
                               const Mark& at) const {
  return inside_->totals.since_fitting(thing, clock, at);
}

std::optional<Day> Histories::basis_day(const logbook::Thing& thing, logbook::Basis basis) const {
  const Papers* its = inside_->papers_for(thing);
  if (its == nullptr) return std::nullopt;
  switch (basis) {
    case logbook::Basis::new_:
      return inside_->first_day_as_new(thing);
    case logbook::Basis::overhaul:
      return inside_->overhaul_day(thing);
    case logbook::Basis::fitting:
      return inside_->fitting_day(thing);
    case logbook::Basis::release:
      return its->released;
    case logbook::Basis::manufacture:
      return its->made;
    case logbook::Basis::first_certificate:
      return its->first_certificate;
    case logbook::Basis::done:
      break;
  }
  return std::nullopt;
}

std::optional<logbook::MeterReading> Histories::meter(const logbook::Aircraft& aircraft,
                                                      const logbook::MeterName& meter,
                                                      const Mark& at) const {
  return inside_->readings.newest(aircraft, meter, at);
}

std::optional<logbook::MeterName> Histories::source_meter(const logbook::Aircraft& aircraft) const {
  const Ledger* ledger = inside_->ledger(aircraft);
  return ledger ? ledger->sources.on(as_of()).meter : std::nullopt;
}

std::optional<Day> Histories::last_flight(const logbook::Aircraft& aircraft) const {
  const Ledger* ledger = inside_->ledger(aircraft);
  if (ledger == nullptr) return std::nullopt;
  const auto last = std::find_if(ledger->uses.rbegin(), ledger->uses.rend(),
                                 [](const Use& use) { return use.flew != nullptr; });
  return last == ledger->uses.rend() ? std::nullopt : std::optional(last->day());
}

std::optional<Day> Histories::brought_forward_day(const logbook::Thing& thing) const {
  return inside_->bases.brought_forward_day(thing);
}

std::vector<Mark> Histories::beginnings(const logbook::Thing& thing) const {
  return inside_->bases.beginnings(thing);
}
Figure Histories::total_as_said_before(std::int64_t written, const TotalAsked& asked) const {
  return inside_->totals.as_said_before(written, asked).figure;
}
Figure Histories::used_between(const logbook::Thing& thing, const Clock& clock, const Mark& from,
                               const Mark& to) const {
  return inside_->totals.used_between(thing, clock, {from, to});
}

quantity::ServiceHours Histories::spread_around(const logbook::Aircraft& aircraft,
                                                const Mark& mark) const {
  return inside_->totals.spread_around(aircraft, mark);
}

const std::vector<Statement>& Histories::statements() const { return inside_->statements; }
const std::vector<Question>& Histories::questions() const { return inside_->questions; }
bool Histories::has_ambiguous_order() const { return inside_->timeline.is_ambiguous; }

std::vector<Histories::DayUse> Histories::daily_use(const logbook::Aircraft& aircraft,
                                                    Day from) const {
  std::vector<DayUse> days;
  const Ledger* ledger = inside_->ledger(aircraft);
  if (ledger == nullptr) return days;
  for (std::size_t at = ledger->first_after({from, -1}); at < ledger->uses.size(); ++at) {
    const Use& use = ledger->uses[at];
    if (days.empty() || days.back().day != use.day()) days.push_back({use.day(), {}, 0});
    days.back().hours += service(use, use.raw);
    days.back().flights += use.flights();
  }
  return days;
}

std::optional<Figure> Histories::dearest_flight(const logbook::Thing& thing, const Clock& clock,
                                                std::int64_t n) const {
  const auto line = inside_->line_now(thing, clock);
  if (!line) return std::nullopt;
  const Ledger* ledger = line->ledger;
  std::optional<std::int64_t> dearest;
  for (std::size_t at = ledger->uses.size(); at-- > 0 && n > 0;) {
    const Use& use = ledger->uses[at];
    if (use.flights() == 0) continue;
    n -= use.flights();
    const std::int64_t each =
        quantity::ceiling_divide(Tally::amount(*line, use).value, use.flights());
    dearest = std::max(dearest.value_or(each), each);
  }
  if (!dearest) return std::nullopt;
  return figure_on(clock, {*dearest, Sureness::exact});
}

std::vector<const logbook::CountingRule*> Histories::rules_now(
    const logbook::Thing& thing, const logbook::Counter& counter) const {
  const auto line = inside_->line_now(thing, counter);
  if (!line) return {};
  return line->rules.on(as_of());
}

logbook::DerivedUse Histories::derived(const logbook::Aircraft& aircraft, Day from) const {
  const Ledger* ledger = inside_->ledger(aircraft);
  if (ledger != nullptr) return derived_use(*ledger, from);
  logbook::DerivedUse none;
  none.aircraft = aircraft.registration.text;
  none.from = from;
  return none;
}

}  // namespace reckon
