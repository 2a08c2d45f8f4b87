#include "reckon/check_names.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "reckon/look_alike.h"
#include "reckon/subject_text.h"
#include "reckon/things.h"

namespace reckon {

namespace {

using logbook::Aircraft;
using logbook::PlaceName;
using logbook::Thing;

// The thing that a fact brings on record by itself.
std::optional<Thing> introduced_by(const logbook::Fact& fact) {
  if (const auto* is = std::get_if<logbook::AircraftIs>(&fact)) return is->aircraft;
  if (const auto* is = std::get_if<logbook::EngineIs>(&fact)) return is->engine;
  if (const auto* is = std::get_if<logbook::PartIs>(&fact)) return is->part;
  if (const auto* brings = std::get_if<logbook::BringsForward>(&fact)) return brings->thing;
  const auto* fitted = std::get_if<logbook::Fitted>(&fact);
  if (fitted != nullptr && !std::holds_alternative<Aircraft>(fitted->thing)) return fitted->thing;
  return std::nullopt;
}

struct Making {
  Thing thing;
  std::optional<Day> made;
  std::optional<Day> released;
};
std::optional<Making> making_in(const logbook::Fact& fact) {
  if (const auto* is = std::get_if<logbook::AircraftIs>(&fact)) {
    return Making{is->aircraft, is->made, std::nullopt};
  }
  if (const auto* is = std::get_if<logbook::EngineIs>(&fact)) {
    return Making{is->engine, is->made, is->released};
  }
  if (const auto* is = std::get_if<logbook::PartIs>(&fact)) {
    return Making{is->part, is->made, is->released};
  }
  return std::nullopt;
}

// What happens to a thing, and so cannot happen before there is one.
struct HappensTo {
  std::optional<Thing> operator()(const logbook::Fitted& fact) const { return fact.thing; }
  std::optional<Thing> operator()(const logbook::Removed& fact) const { return fact.thing; }
  std::optional<Thing> operator()(const logbook::Overhauled& fact) const { return fact.thing; }
  std::optional<Thing> operator()(const logbook::Done& fact) const { return fact.thing; }
  std::optional<Thing> operator()(const logbook::Flew& fact) const { return fact.aircraft; }
  std::optional<Thing> operator()(const logbook::Ran& fact) const { return fact.aircraft; }
  template <class Other>
  std::optional<Thing> operator()(const Other&) const {
    return std::nullopt;
  }
};

// The places of its aircraft that a fact about use or a reading names.
struct PlacesIn {
  std::vector<PlaceName> operator()(const logbook::Flew& flew) const {
    std::vector<PlaceName> places;
    for (const auto& at : flew.hours_at) places.push_back(at.place);
    for (const auto& at : flew.counts) {
      if (at.place) places.push_back(*at.place);
    }
    return places;
  }
  std::vector<PlaceName> operator()(const logbook::Ran& fact) const { return {fact.place}; }
  std::vector<PlaceName> operator()(const logbook::Tried& fact) const { return {fact.place}; }
  std::vector<PlaceName> operator()(const logbook::Started& fact) const { return {fact.place}; }
  std::vector<PlaceName> operator()(const logbook::Reading& fact) const { return {fact.place}; }
  std::vector<PlaceName> operator()(const logbook::Exceeded& fact) const { return {fact.place}; }
  template <class Other>
  std::vector<PlaceName> operator()(const Other&) const {
    return {};
  }
};

// The name as it was typed, then those that may have been meant.
Objection unknown_name(std::string slot, std::string name,
                       const std::vector<std::string>& candidates) {
  Objection objection = refusal(CheckKind::no_such_thing, std::move(slot));
  objection.names = nearest_three(name, candidates);
  objection.names.insert(objection.names.begin(), std::move(name));
  return objection;
}

std::string class_of(const Thing& thing) {
  static constexpr std::array<std::string_view, 3> classes = {"aircraft ", "engine ", "part "};
  return std::string(classes.at(thing.index()));
}

bool is_host(const logbook::Fact& fact, const Thing& thing) {
  const auto* fitted = std::get_if<logbook::Fitted>(&fact);
  const auto* removed = std::get_if<logbook::Removed>(&fact);
  return (fitted != nullptr && fitted->host == thing) ||
         (removed != nullptr && removed->host == thing);
}

std::string slot_of(const logbook::Fact& fact, const Thing& thing) {
  if (is_host(fact, thing)) return "host";
  return std::holds_alternative<Aircraft>(thing) ? "aircraft" : "thing";
}

}  // namespace

std::string thing_text(const Thing& thing) { return class_of(thing) + subject_text(thing); }

void NameChecks::add(const Placed& placed) {
  const logbook::Fact& fact = placed.said->fact;
  if (const auto thing = introduced_by(fact)) {
    const auto [at, is_new_thing] = things_.try_emplace(*thing);
    Known& known = at->second;
    if (is_new_thing) folded_[folded(*thing)].push_back(*thing);
    if (is_new_thing || placed.written < known.first.written) known.first = placed;
  }
  take_making(placed);
  take_first_fitted(placed);
  if (const auto* is = std::get_if<logbook::AircraftIs>(&fact)) models_[is->aircraft] = is->model;
  if (const auto* has = std::get_if<logbook::HasPlace>(&fact)) {
    places_[has->scope].insert(has->place);
  }
}

void NameChecks::take_making(const Placed& placed) {
  const auto making = making_in(placed.said->fact);
  if (!making) return;
  Known& known = things_[making->thing];
  known.made_in = placed;
  if (making->made) known.made = making->made;
  if (making->released) known.released = making->released;
}

void NameChecks::take_first_fitted(const Placed& placed) {
  const auto* fitted = std::get_if<logbook::Fitted>(&placed.said->fact);
  if (fitted == nullptr) return;
  if (const auto* aircraft = std::get_if<Aircraft>(&fitted->host)) {
    places_[*aircraft].insert(fitted->place);
  }
  const auto found = things_.find(fitted->thing);
  if (found == things_.end()) return;
  std::optional<Placed>& first = found->second.first_fitted;
  if (!first || placed < *first) first = placed;
}

void NameChecks::check(const Placed& placed, Against against, Objections& objections) const {
  check_known(placed, objections);
  check_places(placed, objections);
  check_look_alike(placed, against, objections);
  check_making(placed, against, objections);
}

void NameChecks::check_known(const Placed& placed, Objections& objections) const {
  const logbook::Fact& fact = placed.said->fact;
  const std::optional<Thing> introduced = introduced_by(fact);
  for (const Thing& thing : things_in(fact)) {
    if (knows(thing) || thing == introduced) continue;
    objections.push_back(
        unknown_name(slot_of(fact, thing), subject_text(thing), same_class(thing)));
    for (std::string& name : objections.back().names) name.insert(0, class_of(thing));
  }
}

std::vector<std::string> NameChecks::same_class(const Thing& thing) const {
  std::vector<std::string> names;
  for (const auto& [known, how] : things_) {
    if (known.index() == thing.index()) names.push_back(subject_text(known));
  }
  return names;
}

std::set<PlaceName> NameChecks::places_of(const Aircraft& aircraft) const {
  std::set<PlaceName> places;
  for (const auto& [scope, names] : places_) {
    if (reaches(scope, aircraft)) places.insert(names.begin(), names.end());
  }
  return places;
}

bool NameChecks::is_twin(const Aircraft& aircraft) const {
  const std::set<PlaceName> places = places_of(aircraft);
  return std::count_if(places.begin(), places.end(), [](const PlaceName& place) {
           return place.text.starts_with("engine ");
         }) > 1;
}

// As long as no place of the aircraft is on record, there is nothing to tell a wrong one by.
void NameChecks::check_places(const Placed& placed, Objections& objections) const {
  const logbook::Fact& fact = placed.said->fact;
  const std::vector<PlaceName> named = std::visit(PlacesIn{}, fact);
  if (named.empty()) return;
  const std::vector<Thing> things = things_in(fact);
  const auto found = std::find_if(things.begin(), things.end(), [](const Thing& thing) {
    return std::holds_alternative<Aircraft>(thing);
  });
  if (found == things.end()) return;
  const std::set<PlaceName> places = places_of(std::get<Aircraft>(*found));
  if (places.empty()) return;
  std::vector<std::string> candidates;
  for (const PlaceName& place : places) candidates.push_back(place.text);
  for (const PlaceName& place : std::set<PlaceName>(named.begin(), named.end())) {
    if (places.count(place) != 0) continue;
    objections.push_back(unknown_name("place", place.text, candidates));
  }
}

// Only where the fact is the first word about the thing.
void NameChecks::check_look_alike(const Placed& placed, Against against,
                                  Objections& objections) const {
  const std::optional<Thing> thing = introduced_by(placed.said->fact);
  if (!thing) return;
  const auto known = things_.find(*thing);
  if (known != things_.end() && !is_same(known->second.first, placed)) return;
  const auto alike = folded_.find(folded(*thing));
  if (alike == folded_.end()) return;
  for (const Thing& other : alike->second) {
    const Placed& first = things_.at(other).first;
    if (other == *thing) continue;
    if (against == Against::earlier && first.written > placed.written) continue;
    objections.push_back(doubt(CheckKind::serial_look_alike, "thing"));
    objections.back().names = {thing_text(*thing), thing_text(other)};
    objections.back().entries = {first.id};
  }
}

// A day of making that was entered after a fitting is told at the fitting, once both are on record.
void NameChecks::check_making(const Placed& placed, Against against, Objections& objections) const {
  const logbook::Fact& fact = placed.said->fact;
  if (const auto thing = std::visit(HappensTo{}, fact)) {
    check_made_before(placed, *thing, objections);
  }
  const auto making = making_in(fact);
  if (!making || !making->made || against == Against::earlier) return;
  const auto found = things_.find(making->thing);
  if (found == things_.end() || !found->second.first_fitted) return;
  const Placed& fitted = *found->second.first_fitted;
  if (*making->made <= fitted.said->day) return;
  objections.push_back(refusal(CheckKind::fitted_before_made, "made"));
  objections.back().day = fitted.said->day;
  objections.back().entries = {fitted.id};
  objections.back().names = {thing_text(making->thing)};
}

void NameChecks::check_made_before(const Placed& placed, const Thing& thing,
                                   Objections& objections) const {
  const auto found = things_.find(thing);
  if (found == things_.end()) return;
  const Known& known = found->second;
  std::optional<Day> from = known.made;
  const bool is_fitted = std::holds_alternative<logbook::Fitted>(placed.said->fact);
  if (is_fitted && known.released && (!from || *from < *known.released)) from = known.released;
  if (!from || placed.said->day >= *from) return;
  objections.push_back(refusal(CheckKind::fitted_before_made, "day"));
  objections.back().day = from;
  objections.back().entries = {known.made_in->id};
  objections.back().names = {thing_text(thing)};
}

std::optional<logbook::ModelName> NameChecks::model_of(const Thing& thing) const {
  if (const auto* engine = std::get_if<logbook::Engine>(&thing)) return engine->model;
  const auto* aircraft = std::get_if<Aircraft>(&thing);
  if (aircraft == nullptr) return std::nullopt;
  const auto found = models_.find(*aircraft);
  return found == models_.end() ? std::nullopt : std::optional(found->second);
}

bool NameChecks::reaches(const logbook::Scope& scope, const Thing& thing) const {
  if (const auto* model = std::get_if<logbook::Model>(&scope)) {
    return model_of(thing) == model->name;
  }
  if (const auto* kind = std::get_if<logbook::PartKind>(&scope)) {
    const auto* part = std::get_if<logbook::Part>(&thing);
    return part != nullptr && part->number == kind->number;
  }
  if (const auto* aircraft = std::get_if<Aircraft>(&scope)) return Thing(*aircraft) == thing;
  if (const auto* engine = std::get_if<logbook::Engine>(&scope)) return Thing(*engine) == thing;
  return Thing(std::get<logbook::Part>(scope)) == thing;
}

}  // namespace reckon
