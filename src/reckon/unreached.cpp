#include "reckon/unreached.h"

#include <optional>
#include <set>
#include <utility>

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

std::optional<logbook::ModelName> on_model_in(const logbook::Fact& fact) {
  if (const auto* corrected = std::get_if<logbook::Corrected>(&fact)) {
    return on_model_in((*corrected->instead).fact);
  }
  if (const auto* mixed = std::get_if<logbook::MixedLimit>(&fact)) return mixed->on_model;
  const auto* limit = std::get_if<logbook::Limit>(&fact);
  return limit ? limit->on_model : std::nullopt;
}

using Names = std::set<std::string>;

void add_unless_there(Unreached one, const Names& there, std::vector<Unreached>& unreached) {
  if (there.contains(one.name)) return;
  one.near = nearest_three(one.name, std::vector<std::string>(there.begin(), there.end()));
  unreached.push_back(std::move(one));
}

}  // namespace

std::vector<Unreached> unreached(const logbook::Fact& fact, const Histories& histories,
                                 const Standing& standing) {
  using Named = Unreached::Named;
  std::vector<Unreached> unreached;
  const std::optional<logbook::Scope> scope = scope_in(fact);
  const auto* model = scope ? std::get_if<logbook::Model>(&*scope) : nullptr;
  const auto* part = scope ? std::get_if<logbook::PartKind>(&*scope) : nullptr;
  const auto on_model = on_model_in(fact);
  if (part != nullptr) {
    add_unless_there({Named::part_number, part->number.text, {}}, part_numbers_on_record(histories),
                     unreached);
  }
  if (model == nullptr && !on_model) return unreached;
  const Names models = models_on_record(histories, standing);
  if (model != nullptr) add_unless_there({Named::model, model->name.text, {}}, models, unreached);
  if (on_model) add_unless_there({Named::on_model, on_model->text, {}}, models, unreached);
  return unreached;
}

}  // namespace reckon
