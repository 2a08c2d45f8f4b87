// reckon/due.h: what falls due next on an aircraft and all that is fitted to it: tasks and limits
// in one list and one order, over first.
#pragma once

#include <vector>

#include "reckon/lives.h"

namespace reckon {

// Tasks on the aircraft, its engines, parts and models; every fitted thing's limits.
std::vector<Item> due(const Histories& histories, const Standing& standing,
                      const logbook::Aircraft& aircraft, const Soon& soon);

// Of two ways to read the record, as with an ambiguous order within a day: each side as the one
// with less left has it.
std::vector<Item> harsher(std::vector<Item> one, std::vector<Item> other);

// The order of a list: over first, then due, then not known, then what comes first by forecast.
void sort_by_what_comes_first(std::vector<Item>& items);

}  // namespace reckon
