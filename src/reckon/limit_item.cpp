#include "reckon/limit_item.h"

#include <algorithm>

#include "reckon/limit_side.h"
#include "reckon/models_on.h"
#include "reckon/settle.h"
#include "reckon/subject_text.h"
#include "reckon/waiting.h"

namespace reckon {
namespace {

std::vector<LimitInForce> limits_reaching(const View& view, const logbook::Thing& thing) {
  std::vector<LimitInForce> found;
  for (const LimitInForce& rule : view.rules.limits) {
    if (reaches(view.histories, rule.limit->scope, thing)) found.push_back(rule);
  }
  return found;
}

// Whether more than one of the models for which limits are stated apart is among these.
bool are_several(const std::set<logbook::ModelName>& stated,
                 const std::set<logbook::ModelName>& been_on) {
  return std::count_if(stated.begin(), stated.end(), [&](const logbook::ModelName& model) {
           return been_on.contains(model);
         }) > 1;
}

// Whether the thing was on several of the models for which its limits are stated apart. One
// engine's and its airframe's hold at once, and both count.
bool has_been_under_several(const View& view, const logbook::Thing& thing,
                            const std::vector<LimitInForce>& limits) {
  std::set<logbook::ModelName> stated;
  for (const LimitInForce& rule : limits) {
    if (rule.limit->on_model) stated.insert(*rule.limit->on_model);
  }
  if (stated.size() < 2) return false;
  const ModelsBeenOn been_on = models_been_on(view.histories, thing);
  return are_several(stated, been_on.engines) || are_several(stated, been_on.aircraft);
}

void add_basis_entry(const View& view, const logbook::Thing& thing, Item& item) {
  const auto counts_from_fitting = [](const Side& side) {
    return side.since == logbook::Basis::fitting;
  };
  if (std::none_of(item.sides.begin(), item.sides.end(), counts_from_fitting)) return;
  if (const auto stay = view.histories.stay_now(thing)) item.because.push_back(stay->fitted);
}

void leave_open(Item& item, Lack lack) {
  for (Side& side : item.sides) set_lack(side, lack);
  item.state = State::not_known;
  item.lack = lack;
  item.expected.reset();
}

Item limit_item(const View& view, const logbook::Thing& thing, const LimitInForce& rule) {
  Item item = item_about(view, thing, *rule.fact);
  item.kind = Item::Kind::limit;
  item.id = "limit:" + subject_text(thing) + ":" + entry_text(rule.fact->root);
  item.limit = rule.limit;
  item.source = rule.limit->source.value_or("");
  item.combine = rule.limit->terms.combine;
  item.when_exceeding = rule.limit->when_exceeding;
  const Subject subject{view, thing, item.when_exceeding};
  for (const logbook::Term& term : rule.limit->terms.terms) {
    item.sides.push_back(limit_side(subject, term));
  }
  if (item.sides.empty()) {
    leave_open(item, Lack::terms);
  } else {
    settle(item);
  }
  add_basis_entry(view, thing, item);
  item.not_counted = waiting_for(view, item);
  return item;
}

}  // namespace

Item item_about(const View& view, const logbook::Thing& thing, const StandingFact& definition) {
  Item item;
  item.entry = definition.root;
  item.because.push_back(definition.root);
  item.thing = thing;
  item.aircraft = view.histories.aircraft_now(thing);
  if (const auto stay = view.histories.stay_now(thing)) item.place = stay->place;
  return item;
}

std::vector<Item> limit_items(const View& view, const logbook::Thing& thing) {
  const std::vector<LimitInForce> limits = limits_reaching(view, thing);
  const bool is_open = has_been_under_several(view, thing, limits);
  std::vector<Item> items;
  for (const LimitInForce& rule : limits) {
    const auto& model = rule.limit->on_model;
    const OnModel on = model ? on_model(view.histories, thing, *model) : OnModel::holds;
    if (on == OnModel::holds_not) continue;
    items.push_back(limit_item(view, thing, rule));
    if (on == OnModel::no_such_model) {
      leave_open(items.back(), Lack::model);
    } else if (is_open && model) {
      leave_open(items.back(), Lack::shared_lives);
    }
  }
  return items;
}

std::vector<Item> condition_items(const View& view, const logbook::Thing& thing) {
  std::vector<Item> items;
  for (const ConditionInForce& rule : view.rules.conditions) {
    if (!reaches(view.histories, rule.on_condition->scope, thing)) continue;
    Item item = item_about(view, thing, *rule.fact);
    item.kind = Item::Kind::on_condition;
    item.id = "on condition:" + subject_text(thing) + ":" + entry_text(rule.fact->root);
    item.source = rule.on_condition->source.value_or("");
    items.push_back(std::move(item));
  }
  return items;
}

}  // namespace reckon
