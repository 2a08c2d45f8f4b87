#include "reckon/lives.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/limit_item.h"

namespace reckon {

std::vector<Item> lives(const Histories& histories, const Standing& standing) {
  const View view = view_of(histories, standing, {});
  std::vector<Item> items;
  for (const logbook::Thing& thing : histories.things()) {
    for (Item& item : limit_items(view, thing)) items.push_back(std::move(item));
    for (Item& item : condition_items(view, thing)) items.push_back(std::move(item));
  }
  return items;
}

std::vector<logbook::Thing> things_without_limit(const Histories& histories,
                                                 const Standing& standing,
                                                 const logbook::Aircraft& aircraft) {
  const View view = view_of(histories, standing, {});
  std::vector<logbook::Thing> without = aboard(histories, aircraft);
  std::erase_if(without, [&](const logbook::Thing& thing) {
    if (std::holds_alternative<logbook::Aircraft>(thing)) return true;
    return !limit_items(view, thing).empty() || !condition_items(view, thing).empty();
  });
  return without;
}

}  // namespace reckon
