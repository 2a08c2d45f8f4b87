// reckon/lives.h: what is left of every limit of every thing, and which limit runs out first.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "logbook/fact.h"
#include "reckon/histories.h"
#include "reckon/item.h"

namespace reckon {

// Limits that apply to a thing: its own, its part number's (on its host's model), its model's.
// Several: each is an item; the first to run out governs. Things that are off are frozen.
std::vector<Item> lives(const Histories& histories, const Standing& standing);

// The limit or on-condition statement that a thing lacks (condition 4 of ready).
std::vector<logbook::Thing> things_without_limit(const Histories& histories,
                                                 const Standing& standing,
                                                 const logbook::Aircraft& aircraft);

}  // namespace reckon
