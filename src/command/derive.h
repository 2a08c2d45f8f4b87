// command/derive.h: carries running totals from reckon to store, after an entry and for a rebuild.
#pragma once

#include <vector>

#include "logbook/entry.h"
#include "store/book.h"

namespace command {

// Works out the use of every aircraft that the fresh entries touch and hands it to the pen. The
// whole use of such an aircraft is replaced from its first day that can have changed.
void put_derived(const std::vector<logbook::Entry>& all, const std::vector<logbook::Entry>& fresh,
                 quantity::Day today, store::Pen& pen);
// The same for every aircraft, from the beginning.
void put_all_derived(const std::vector<logbook::Entry>& all, quantity::Day today, store::Pen& pen);

}  // namespace command
