#include "reckon/counting.h"

#include <algorithm>

#include "reckon/entry_named.h"

namespace reckon {

namespace {

logbook::Counter counter_of(logbook::CountedEvent event) {
  switch (event) {
    case logbook::CountedEvent::start:
      return {logbook::CounterKind::starts, ""};
    case logbook::CountedEvent::flight:
      return {logbook::CounterKind::flights, ""};
    case logbook::CountedEvent::landing:
      break;
  }
  return {logbook::CounterKind::landings, ""};
}

struct Declared {
  const StandingFact* fact = nullptr;
  const logbook::CountingRule* rule = nullptr;
  Day from() const { return std::min(fact->said->day, rule->also_since.value_or(fact->said->day)); }
};

// The first day on which another rule that was said instead of this one holds.
std::optional<Day> replaced_from(const Declared& old, const std::vector<Declared>& all) {
  std::optional<Day> until;
  for (const Declared& other : all) {
    const auto& name = other.fact->said->instead_of;
    const bool replaces = name && std::any_of(old.fact->chain.begin(), old.fact->chain.end(),
                                              [&](const auto& id) { return is_named(*name, id); });
    if (replaces) until = until ? std::min(*until, other.from()) : other.from();
  }
  return until;
}

bool is_active(const RuleSet::Rule& rule, Day day) {
  return rule.from <= day && (!rule.until || day < *rule.until);
}

Amount weighted(const logbook::Each& each, const Use& use, const Spot& spot) {
  const Amount events = count_used(use, counter_of(each.event), spot);
  return {(each.weight * quantity::Cycles::of(events.value)).count(), events.sureness};
}

}  // namespace

std::vector<const logbook::CountingRule*> RulesOnTheWay::on(Day day) const {
  std::vector<const logbook::CountingRule*> found;
  for (const RuleSet* set : nearest_first_) {
    for (const RuleSet::Rule& rule : set->rules) {
      if (is_active(rule, day)) found.push_back(rule.rule);
    }
    if (!found.empty()) break;
  }
  return found;
}

// As if all of the use had been on the day.
Amount RulesOnTheWay::counted_on(Day day, const Use& use, const logbook::Counter& counter,
                                 const Spot& spot) const {
  const std::vector<const logbook::CountingRule*> rules = on(day);
  if (rules.empty()) return count_used(use, counter, spot);
  Amount sum;
  for (const logbook::CountingRule* rule : rules) {
    for (const logbook::Each& each : rule->each) sum += weighted(each, use, spot);
  }
  return sum;
}

// The days of the use on which other rules begin to hold than on the day before, and its first.
std::vector<Day> RulesOnTheWay::turns_within(const Use& use) const {
  std::vector<Day> days{use.first_day()};
  const auto add = [&](Day day) {
    if (use.first_day() < day && day <= use.day()) days.push_back(day);
  };
  for (const RuleSet* set : nearest_first_) {
    for (const RuleSet::Rule& rule : set->rules) {
      add(rule.from);
      if (rule.until) add(*rule.until);
    }
  }
  return days;
}

Amount RulesOnTheWay::counted(const Use& use, const logbook::Counter& counter,
                              const Spot& spot) const {
  if (states_at(use, counter, spot)) return count_used(use, counter, spot);
  Amount most;
  for (const Day day : turns_within(use)) {
    const Amount here = counted_on(day, use, counter, spot);
    most.value = std::max(most.value, here.value);
    most.sureness = quantity::worse(most.sureness, here.sureness);
  }
  return most;
}

CountingRules::CountingRules(const Standing& standing) {
  std::vector<Declared> all;
  for (const StandingFact& fact : standing.facts) {
    const auto* rule = std::get_if<logbook::CountingRule>(&fact.said->fact);
    if (rule != nullptr) all.push_back({&fact, rule});
    const auto* is = std::get_if<logbook::AircraftIs>(&fact.said->fact);
    if (is != nullptr) models_[is->aircraft] = is->model;
  }
  for (const Declared& one : all) {
    sets_[{one.rule->scope, one.rule->counter}].rules.push_back(
        {one.rule, one.from(), replaced_from(one, all)});
  }
}

std::vector<logbook::Scope> CountingRules::scopes_of(const logbook::Thing& thing) const {
  if (const auto* engine = std::get_if<logbook::Engine>(&thing)) {
    return {*engine, logbook::Model{engine->model}};
  }
  if (const auto* part = std::get_if<logbook::Part>(&thing)) {
    return {*part, logbook::PartKind{part->number}};
  }
  const auto& aircraft = std::get<logbook::Aircraft>(thing);
  const auto model = models_.find(aircraft);
  if (model == models_.end()) return {aircraft};
  return {aircraft, logbook::Model{model->second}};
}

RulesOnTheWay CountingRules::find(const std::vector<logbook::Thing>& way,
                                  const logbook::Counter& counter) const {
  RulesOnTheWay found;
  for (const logbook::Thing& thing : way) {
    for (const logbook::Scope& scope : scopes_of(thing)) {
      const auto set = sets_.find({scope, counter});
      if (set != sets_.end()) found.add(set->second);
    }
  }
  return found;
}

}  // namespace reckon
