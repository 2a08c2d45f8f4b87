#include "reckon/unreached.h"

#include <set>

#include "reckon/look_alike.h"

namespace reckon {
namespace {

template <class Kind>
std::optional<logbook::Scope> rules_over(const Kind& fact) {
  if constexpr (requires { fact.scope; }) {
    return fact.scope;
  } else if constexpr (requires { fact.model.name; }) {
    return logbook::Scope(fact.model);
  } else {
    return std::nullopt;
  }
}

std::optional<logbook::Scope> scope_in(const logbook::Fact& fact) {
  if (const auto* corrected = std::get_if<logbook::Corrected>(&fact)) {
    return scope_in((*corrected->instead).fact);
  }
  return std::visit([](const auto& one) { return rules_over(one); }, fact);
}

std::set<std::string> models_on_record(const Histories& histories, const Standing& standing) {
  std::set<std::string> names;
  for (const logbook::Thing& thing : histories.things()) {
    const auto* engine = std::get_if<logbook::Engine>(&thing);
    if (engine != nullptr) names.insert(engine->model.text);
  }
  for (const StandingFact& fact : standing.facts) {
    const auto* is = std::get_if<logbook::AircraftIs>(&fact.said->fact);
    if (is != nullptr) names.insert(is->model.text);
  }
  return names;
}

std::set<std::string> part_numbers_on_record(const Histories& histories) {
  std::set<std::string> names;
  for (const logbook::Thing& thing : histories.things()) {
    const auto* part = std::get_if<logbook::Part>(&thing);
    if (part != nullptr) names.insert(part->number.text);
  }
  return names;
}

}  // namespace

std::optional<Unreached> unreached(const logbook::Fact& fact, const Histories& histories,
                                   const Standing& standing) {
  const std::optional<logbook::Scope> scope = scope_in(fact);
  if (!scope) return std::nullopt;
  const auto* model = std::get_if<logbook::Model>(&*scope);
  const auto* part = std::get_if<logbook::PartKind>(&*scope);
  if (model == nullptr && part == nullptr) return std::nullopt;
  const std::string& name = model != nullptr ? model->name.text : part->number.text;
  const std::set<std::string> there =
      model != nullptr ? models_on_record(histories, standing) : part_numbers_on_record(histories);
  if (there.contains(name)) return std::nullopt;
  return Unreached{model != nullptr, name,
                   nearest_three(name, std::vector<std::string>(there.begin(), there.end()))};
}

}  // namespace reckon
