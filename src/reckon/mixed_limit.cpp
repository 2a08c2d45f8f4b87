#include "reckon/mixed_limit.h"

#include <algorithm>

#include "reckon/item_about.h"
#include "reckon/limit_side.h"
#include "reckon/settle.h"
#include "reckon/use.h"
#include "reckon/waiting.h"

namespace reckon {
namespace {

std::int64_t used_on(const Side& side) { return std::max<std::int64_t>(side.used.figure.raw(), 0); }

bool is_use_unknown(const Side& side) { return side.used.figure.is_unknown(); }

// The counter that has used the largest part of the life.
std::size_t largest_part(const std::vector<Side>& sides) {
  std::size_t largest = 0;
  for (std::size_t i = 1; i < sides.size(); ++i) {
    const Wide here = static_cast<Wide>(used_on(sides[i])) * sides[largest].limit->raw();
    const Wide there = static_cast<Wide>(used_on(sides[largest])) * sides[i].limit->raw();
    if (here > there) largest = i;
  }
  return largest;
}

std::int64_t left_at_the_mix(const LifeUsed& life, const Side& side) {
  const bool goes_on_alone = life.is_nothing() || used_on(side) == 0;
  const std::int64_t left =
      goes_on_alone ? life.left_of(side.limit->raw()) : life.left_in_share(used_on(side));
  return in_whole_units(left, side.clock);
}

Sureness sureness_of_all(const std::vector<Side>& sides) {
  Sureness sureness = Sureness::exact;
  for (const Side& side : sides) sureness = quantity::worse(sureness, side.used.figure.sureness());
  return sureness;
}

// One state for all: none of them may go on alone once the life is used up.
void settle_mix(const Subject& subject, Item& item) {
  const LifeUsed life = life_used_with(item, {});
  const Sureness sureness = sureness_of_all(item.sides);
  for (Side& side : item.sides) {
    side.life_used = life;
    const std::int64_t left = left_at_the_mix(life, side);
    set_left(subject, side, figure_on(side.clock, {left, Sureness::exact}), sureness);
    // Only a counter that is not all known is to blame.
    if (side.used.figure.sureness() != Sureness::at_least) side.lack = Lack::nothing;
  }
  item.governs = static_cast<int>(largest_part(item.sides));
  settle_together(item);
}

// Counters that are known may be over by themselves; else nothing can be told.
void settle_unknown_mix(const Subject& subject, Item& item) {
  const auto unknown = std::find_if(item.sides.begin(), item.sides.end(), is_use_unknown);
  if (life_used_with(item, {}).is_more_than_all()) {
    for (Side& side : item.sides) {
      if (is_use_unknown(side)) side.used.figure = zero(side.clock).as_sure_as(Sureness::at_least);
    }
    return settle_mix(subject, item);
  }
  for (Side& side : item.sides) set_lack(side, is_use_unknown(side) ? Lack::total : Lack::nothing);
  item.governs = static_cast<int>(unknown - item.sides.begin());
  item.state = State::not_known;
  item.lack = Lack::total;
}

Item mixed_item(const View& view, const logbook::Thing& thing, const MixedLimitInForce& rule) {
  Item item = limit_about(view, thing, *rule.fact);
  item.mixed = rule.limit;
  item.source = rule.limit->source.value_or("");
  item.when_exceeding = rule.limit->when_exceeding;
  const Subject subject{view, thing, item.when_exceeding};
  for (const logbook::PartOfLife& part : rule.limit->parts) {
    const logbook::Count whole{part.limit, part.counter};
    item.sides.push_back(limit_side(subject, {whole, logbook::Basis::new_, std::nullopt}));
  }
  if (std::any_of(item.sides.begin(), item.sides.end(), is_use_unknown)) {
    settle_unknown_mix(subject, item);
  } else {
    settle_mix(subject, item);
  }
  item.not_counted = waiting_for(view, item);
  return item;
}

}  // namespace

std::vector<Item> mixed_items(const View& view, const logbook::Thing& thing) {
  std::vector<Item> items;
  for (const MixedLimitInForce& rule : view.rules.mixed_limits) {
    if (reaches(view.histories, rule.limit->scope, thing)) {
      items.push_back(mixed_item(view, thing, rule));
    }
  }
  return items;
}

LifeUsed life_used_with(const Item& item, const std::vector<std::int64_t>& more) {
  std::vector<UsedOf> parts;
  for (std::size_t i = 0; i < item.sides.size(); ++i) {
    const Side& side = item.sides[i];
    const std::int64_t added = i < more.size() ? more[i] : 0;
    parts.push_back({used_on(side) + added, side.limit->raw()});
  }
  return LifeUsed(parts);
}

}  // namespace reckon
