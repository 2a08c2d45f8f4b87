// reckon/limit_item.h: the limits and on-condition statements of one thing, as items.
#pragma once

#include <vector>

#include "reckon/view.h"

namespace reckon {

std::vector<Item> limit_items(const View& view, const logbook::Thing& thing);
std::vector<Item> condition_items(const View& view, const logbook::Thing& thing);

}  // namespace reckon
