// reckon/due.h: what falls due next on an aircraft and all that is fitted to it: tasks and limits
// in one list and one order, over first.
#pragma once

#include <vector>

#include "reckon/lives.h"

namespace reckon {

// Warn "soon" within these; the command's --within may widen them.
struct Soon {
  quantity::Hours hours = quantity::Hours::of(25 * 3600);
  quantity::Cycles count = quantity::whole_cycles(25);
  quantity::Days days = quantity::Days::of(30);
};

// Tasks on the aircraft, its engines, parts and models; every fitted thing's limits.
std::vector<Item> due(const Histories& histories, const Standing& standing,
                      const logbook::Aircraft& aircraft, const Soon& soon);

// With an ambiguous order within a day: each item as the reckoning with less left has it.
std::vector<Item> harsher(std::vector<Item> early, std::vector<Item> late);

// The order of a list: over first, then what comes first by left and forecast, not known before ok.
void sort_by_what_comes_first(std::vector<Item>& items);

}  // namespace reckon
