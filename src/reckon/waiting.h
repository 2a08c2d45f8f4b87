// reckon/waiting.h: work that does not count, since it is not signed as the record asks, and that
// would move a due point or a life if it did. What is older than work that counts moves nothing.
#pragma once

#include <vector>

#include "reckon/view.h"

namespace reckon {

// Whether this work would change a figure if it counted: its task was not done, nor its thing
// overhauled, by newer work that counts; or its task takes from an interval what was flown past the
// one before.
bool waits(const StandingFact& work, const Histories& histories, const Standing& standing);

// The newest entries of such work by which this item would count: its task done or stated as next
// due, or its thing overhauled where a side counts since overhaul.
std::vector<logbook::EntryId> waiting_for(const View& view, const Item& item);

}  // namespace reckon
