// reckon/derived_use.h: an aircraft's use as rows with running totals, as the book keeps them to
// answer quickly. They are made from the same ordered uses as every total.
#pragma once

#include "logbook/derived.h"
#include "reckon/totals.h"

namespace reckon {

// Rows and running totals of days from `from` on; a total counts from the first use. The airframe
// has rows for hours, meters and counters; a place only for what entries state of it, and an engine
// place for its starts.
logbook::DerivedUse derived_use(const Ledger& ledger, Day from);

// "hours", "meter collective", "starts", "gas-generator cycles".
std::string key_of(const Clock& clock);

}  // namespace reckon
