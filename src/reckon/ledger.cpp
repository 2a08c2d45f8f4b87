#include "reckon/ledger.h"

#include <algorithm>
#include <set>
#include <string_view>
#include <utility>

#include "reckon/things.h"

namespace reckon {

namespace {

using EnginePlaces = std::map<logbook::Aircraft, std::set<logbook::PlaceName>>;

void note_use_places(const logbook::Fact& fact, EnginePlaces& places) {
  if (const auto* ran = std::get_if<logbook::Ran>(&fact)) places[ran->aircraft].insert(ran->place);
  if (const auto* tried = std::get_if<logbook::Tried>(&fact)) {
    places[tried->aircraft].insert(tried->place);
  }
  const auto* flew = std::get_if<logbook::Flew>(&fact);
  if (flew == nullptr) return;
  for (const logbook::CountAt& at : flew->counts) {
    if (at.place) places[flew->aircraft].insert(*at.place);
  }
  for (const logbook::HoursAt& at : flew->hours_at) places[flew->aircraft].insert(at.place);
}

void note_fitted_place(const logbook::Fact& fact, EnginePlaces& places) {
  const auto* fitted = std::get_if<logbook::Fitted>(&fact);
  if (fitted == nullptr) return;
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&fitted->host)) {
    places[*aircraft].insert(fitted->place);
  }
}

using Models = std::map<logbook::ModelName, std::vector<logbook::Aircraft>>;

Models models_of(const Standing& standing) {
  Models models;
  for (const StandingFact& fact : standing.facts) {
    const auto* is = std::get_if<logbook::AircraftIs>(&fact.said->fact);
    if (is != nullptr) models[is->model].push_back(is->aircraft);
  }
  return models;
}

void note_required_place(const logbook::Fact& fact, const Models& models, EnginePlaces& places) {
  const auto* has = std::get_if<logbook::HasPlace>(&fact);
  if (has == nullptr) return;
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&has->scope)) {
    places[*aircraft].insert(has->place);
  }
  const auto* model = std::get_if<logbook::Model>(&has->scope);
  const auto found = model ? models.find(model->name) : models.end();
  if (found == models.end()) return;
  for (const logbook::Aircraft& aircraft : found->second) places[aircraft].insert(has->place);
}

EnginePlaces places_named(const Standing& standing) {
  EnginePlaces places;
  const Models models = models_of(standing);
  for (const StandingFact& fact : standing.facts) {
    note_use_places(fact.said->fact, places);
    note_fitted_place(fact.said->fact, places);
    note_required_place(fact.said->fact, models, places);
  }
  return places;
}

void note_rule(const StandingFact& fact, Ledgers& ledgers) {
  if (const auto* counts = std::get_if<logbook::CountsHours>(&fact.said->fact)) {
    ledgers.at(counts->aircraft).sources.add(fact.said->day, *counts);
  }
  const auto* forward = std::get_if<logbook::BringsForward>(&fact.said->fact);
  const auto* aircraft = forward ? std::get_if<logbook::Aircraft>(&forward->thing) : nullptr;
  if (aircraft == nullptr) return;
  std::optional<Day>& begins = ledgers.at(*aircraft).begins;
  begins = begins ? std::min(*begins, fact.said->day) : fact.said->day;
}

}  // namespace

void Ledger::add(Use use, const Mark& mark) {
  if (use.flew != nullptr && use.flew->since && *use.flew->since < mark.day) {
    spread.push_back({uses.size(), {*use.flew->since, 0}});
  }
  const Mark start = begins ? Mark{*begins, 0} : mark;
  if (use.unaccounted != nullptr)
    spread.push_back({uses.size(), uses.empty() ? start : marks.back()});
  uses.push_back(std::move(use));
  marks.push_back(mark);
}

std::vector<SpreadUse> Ledger::around(const Mark& mark) const {
  std::vector<SpreadUse> around;
  std::copy_if(spread.begin(), spread.end(), std::back_inserter(around),
               [&](const SpreadUse& one) { return one.began < mark && mark < marks[one.use]; });
  return around;
}

std::size_t Ledger::first_after(const Mark& mark) const {
  const auto found = std::upper_bound(marks.begin(), marks.end(), mark);
  return static_cast<std::size_t>(found - marks.begin());
}

Ledgers empty_ledgers(const Standing& standing) {
  Ledgers ledgers;
  for (const StandingFact& fact : standing.facts) {
    for (const logbook::Thing& thing : things_in(fact.said->fact)) {
      const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
      if (aircraft != nullptr) ledgers[*aircraft].aircraft = *aircraft;
    }
  }
  for (const StandingFact& fact : standing.facts) note_rule(fact, ledgers);
  for (const auto& [aircraft, places] : places_named(standing)) {
    std::vector<logbook::PlaceName>& engines = ledgers.at(aircraft).engine_places;
    std::copy_if(places.begin(), places.end(), std::back_inserter(engines), is_engine_place);
  }
  return ledgers;
}

bool is_engine_place(const logbook::PlaceName& place) {
  constexpr std::string_view word = "engine ";
  const std::string_view text = place.text;
  return text.size() == word.size() + 1 && text.starts_with(word) && text.back() >= '1' &&
         text.back() <= '9';
}

}  // namespace reckon
