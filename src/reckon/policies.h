// reckon/policies.h: how a thing whose limits differ from model to model shares its life among
// them, as the record states it (design 5).
#pragma once

#include <vector>

#include "reckon/view.h"

namespace reckon {

struct Policy {
  Sharing sharing = Sharing::not_stated;
  std::vector<logbook::EntryId> said;  // the entries that say so
};

// What is stated for the thing, its part number and its model. Two that differ: disputed.
Policy policy_for(const View& view, const logbook::Thing& thing);

}  // namespace reckon
