// reckon/mixed_limit.h: a life that several counters use up together: a/A + b/B reaches 1 (design
// 5). What is left of each is told at the mix in which they were used so far; what is used of none,
// as if it alone went on.
#pragma once

#include <vector>

#include "reckon/view.h"

namespace reckon {

// The mixed limits that reach the thing, on whatever model.
std::vector<Item> mixed_items(const View& view, const logbook::Thing& thing);

// The part of the life that is used, with so much more on each side, in thousandths of a count.
// Every side's use is known.
LifeUsed life_used_with(const Item& item, const std::vector<std::int64_t>& more);

}  // namespace reckon
