// reckon/settle.h: which side of an item governs, and the item's state. Combined first, the first
// side to run out governs and what is over or due counts before what is not known; combined latest,
// the last.
#pragma once

#include "reckon/item.h"

namespace reckon {

// Sets governs, state, expected and lack from the sides, which must not be empty.
void settle(Item& item);
// Of counters that use up one life together: all have one state, that of the side that governs.
void settle_together(Item& item);

// Whether its sides say its state; an item without any, with an open limit or with a mixed one is
// as it is.
bool is_settled_by_sides(const Item& item);

// Whether a has a smaller part of its limit left than b (128 bits, never divided).
bool has_less_of_its_limit_left(const Side& a, const Side& b);

}  // namespace reckon
