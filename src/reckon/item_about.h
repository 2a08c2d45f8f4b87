// reckon/item_about.h: the beginning of every item.
#pragma once

#include "reckon/view.h"

namespace reckon {

// An item about a thing, with all that does not depend on what kind of item it is.
Item item_about(const View& view, const logbook::Thing& thing, const StandingFact& definition);
// The same of a limit, with the name by which it is found again.
Item limit_about(const View& view, const logbook::Thing& thing, const StandingFact& definition);

}  // namespace reckon
