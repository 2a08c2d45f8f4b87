#include "reckon/limit_item.h"

#include <algorithm>

#include "reckon/item_about.h"
#include "reckon/limit_side.h"
#include "reckon/mixed_limit.h"
#include "reckon/settle.h"
#include "reckon/shared_lives.h"
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

void add_basis_entry(const View& view, const logbook::Thing& thing, Item& item) {
  const auto counts_from_fitting = [](const Side& side) {
    return side.since == logbook::Basis::fitting;
  };
  if (std::none_of(item.sides.begin(), item.sides.end(), counts_from_fitting)) return;
  if (const auto stay = view.histories.newest_stay(thing)) item.because.push_back(stay->fitted);
}

Item limit_item(const View& view, const logbook::Thing& thing, const LimitInForce& rule) {
  Item item = limit_about(view, thing, *rule.fact);
  item.limit = rule.limit;
  item.source = rule.limit->source.value_or("");
  item.combine = rule.limit->terms.combine;
  item.when_exceeding = rule.limit->when_exceeding;
  const Subject subject{view, thing, item.when_exceeding};
  for (const logbook::Term& term : rule.limit->terms.terms) {
    item.sides.push_back(limit_side(subject, term));
  }
  if (item.sides.empty()) {
    item.state = State::not_known;
    item.lack = Lack::terms;
  } else {
    settle(item);
  }
  add_basis_entry(view, thing, item);
  item.not_counted = waiting_for(view, item);
  return item;
}

}  // namespace

std::vector<Item> limit_items(const View& view, const logbook::Thing& thing) {
  std::vector<Item> items;
  for (const LimitInForce& rule : limits_reaching(view, thing)) {
    items.push_back(limit_item(view, thing, rule));
  }
  for (Item& item : mixed_items(view, thing)) items.push_back(std::move(item));
  share_lives(view, thing, items);
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
