// reckon/limit_item.h: the limits and on-condition statements of one thing, as items.
#pragma once

#include <vector>

#include "reckon/view.h"

namespace reckon {

// An item about a thing, with all that does not depend on what kind of item it is.
Item item_about(const View& view, const logbook::Thing& thing, const StandingFact& definition);

std::vector<Item> limit_items(const View& view, const logbook::Thing& thing);
std::vector<Item> condition_items(const View& view, const logbook::Thing& thing);

}  // namespace reckon
