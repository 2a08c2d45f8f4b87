// reckon/apart.h: corrections of one entry that were made apart, and the ways in which a person may
// decide between them. Until that is done each answer is the one that leaves least.
#pragma once

#include <vector>

#include "reckon/due.h"
#include "reckon/standing.h"

namespace reckon {

// The ways beside the one by which the facts stand. Several disputed entries can be decided in very
// many ways: past sixteen the others are only two, with the other end of each dispute, and with
// nothing of any. What these move is then not known.
struct WaysToDecide {
  std::vector<Decided> others;
  bool are_all = true;
};
WaysToDecide ways_to_decide(const std::vector<MadeApart>& apart);

// Of the items by each way, that by which the facts stand first, those with least left. are_all: as
// of the ways; if not, what differs among them is not known, unless it is due or over in one.
std::vector<Item> with_least_left(std::vector<std::vector<Item>> by_way, bool are_all);

}  // namespace reckon
