// reckon/shared_lives.h: limits that differ from model to model, for a thing that was on several of
// them (design 5). Shorter limit stays: all use counts against the shortest limit that it ever came
// under. By fractions: what it used on each model is a part of the life there; the parts are added
// up, and what is left is so much of the limit on the model it is on. Use whose model is not on
// record (what it had before this record) counts against the smallest limit. Without a stated
// policy what is left is not known, unless it is over by either.
#pragma once

#include <vector>

#include "reckon/view.h"

namespace reckon {

// Of the limits that reach the thing, on whatever model, those that hold are left, each with what
// is left by the policy on record. Of limits on one clock and basis only the one that rules is
// left.
void share_lives(const View& view, const logbook::Thing& thing, std::vector<Item>& items);

}  // namespace reckon
