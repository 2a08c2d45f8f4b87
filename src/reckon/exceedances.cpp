#include "reckon/exceedances.h"

#include <algorithm>
#include <type_traits>

#include "reckon/aboard.h"
#include "reckon/checks_in_force.h"
#include "reckon/entry_named.h"

namespace reckon {
namespace {

using logbook::GaugeFor;
using quantity::Decimal;

// How far one gauge stood above another of the same sort and unit; absent: not comparable.
struct Above {
  std::optional<Decimal> operator()(const logbook::GaugeTemperature& a,
                                    const logbook::GaugeTemperature& b) const {
    return Decimal::of(100 * (a.value - b.value).count());
  }
  std::optional<Decimal> operator()(const logbook::GaugeTorque& a,
                                    const logbook::GaugeTorque& b) const {
    if (a.value.unit != b.value.unit) return std::nullopt;
    return a.value.value - b.value.value;
  }
  std::optional<Decimal> operator()(const logbook::GaugeSpeed& a,
                                    const logbook::GaugeSpeed& b) const {
    if (a.of != b.of) return std::nullopt;
    return a.percent - b.percent;
  }
  template <class A, class B>
  std::optional<Decimal> operator()(const A&, const B&) const {
    return std::nullopt;
  }
};

void hold_against(const GaugeFor& limit, const logbook::EntryId& rule, Exceedance& exceedance) {
  const GaugeFor& what = *exceedance.what;
  const std::optional<Decimal> by = std::visit(Above{}, what.gauge, limit.gauge);
  if (!by || by->count() <= 0 || what.seconds <= limit.seconds) return;
  exceedance.past.push_back({limit, *by, what.seconds - limit.seconds, rule});
}

using LimitsOnRecord = ChecksOnRecord<logbook::ExceedanceLimit>;

Exceedance stated(const Histories& histories, const LimitsOnRecord& limits,
                  const StandingFact& fact, const logbook::Exceeded& exceeded) {
  Exceedance exceedance;
  exceedance.entry = fact.root;
  exceedance.newest = fact.chain.back();
  exceedance.day = fact.said->day;
  exceedance.aircraft = exceeded.aircraft;
  exceedance.place = exceeded.place;
  exceedance.what = exceeded.what;
  exceedance.engine = engine_in(histories, {exceeded.aircraft, exceeded.place, exceeded.serial},
                                histories.mark_of(fact.root));
  if (!exceedance.engine) return exceedance;
  for (const auto& one : limits.in_force(exceedance.engine->model, exceedance.day)) {
    hold_against(one.rule->limit, one.fact->root, exceedance);
    for (const GaugeFor& more : one.rule->also) hold_against(more, one.fact->root, exceedance);
  }
  return exceedance;
}

Exceedance of_start(const StartJudged& judged) {
  Exceedance exceedance;
  exceedance.entry = judged.entry;
  exceedance.newest = judged.newest;
  exceedance.day = judged.day;
  exceedance.aircraft = judged.started->aircraft;
  exceedance.place = judged.started->place;
  exceedance.engine = judged.engine;
  exceedance.untold = judged.untold;
  std::copy_if(judged.findings.begin(), judged.findings.end(), std::back_inserter(exceedance.start),
               [](const StartFinding& finding) { return finding.is_limit; });
  return exceedance;
}

// Who looked saw one wording; a later correction has not been looked into.
bool is_looked_into(const Standing& standing, const logbook::EntryId& newest) {
  return std::any_of(standing.facts.begin(), standing.facts.end(), [&](const StandingFact& fact) {
    const auto* looked = std::get_if<logbook::LookedInto>(&fact.said->fact);
    return looked != nullptr && is_named(looked->entry, newest);
  });
}

// Turbine temperature and gas-generator speed are the engine's own; all else turns the drive train,
// the rotor and the propeller too, which stay with the aircraft.
bool is_the_engines_own(const Exceedance& one) {
  if (!one.what) return true;
  if (std::holds_alternative<logbook::GaugeTemperature>(one.what->gauge)) return true;
  const auto* speed = std::get_if<logbook::GaugeSpeed>(&one.what->gauge);
  return speed != nullptr && speed->of == logbook::Rotating::gas_generator;
}

bool touches(const Histories& histories, const Exceedance& one, const logbook::Aircraft& aircraft) {
  const bool is_there = one.aircraft == aircraft;
  if (!one.engine) return is_there;
  if (is_there && !is_the_engines_own(one)) return true;
  return histories.aircraft_now(logbook::Thing(*one.engine)) == aircraft;
}

}  // namespace

std::vector<Exceedance> open_exceedances(const Histories& histories, const Standing& standing) {
  const LimitsOnRecord limits(standing);
  std::vector<Exceedance> all;
  for (const StandingFact& fact : standing.facts) {
    const auto* exceeded = std::get_if<logbook::Exceeded>(&fact.said->fact);
    if (exceeded != nullptr) all.push_back(stated(histories, limits, fact, *exceeded));
  }
  for (const StartJudged& judged : judged_starts(histories, standing)) {
    if (judged.is_past_a_limit() || !judged.untold.empty()) all.push_back(of_start(judged));
  }
  std::erase_if(all, [&](const Exceedance& one) { return is_looked_into(standing, one.newest); });
  std::stable_sort(all.begin(), all.end(),
                   [](const Exceedance& a, const Exceedance& b) { return a.day < b.day; });
  return all;
}

std::vector<Exceedance> open_exceedances(const Histories& histories, const Standing& standing,
                                         const logbook::Aircraft& aircraft) {
  std::vector<Exceedance> all = open_exceedances(histories, standing);
  std::erase_if(all, [&](const Exceedance& one) { return !touches(histories, one, aircraft); });
  return all;
}

}  // namespace reckon
