// report/receipt.h: after an entry: what was saved, the new totals, what is next.
#pragma once

#include <vector>

#include "reckon/due.h"
#include "report/saved.h"
#include "report/sheet.h"

namespace report {

// With histories of the state after the entries; for more than ten entries only their number and
// the aircraft touched are told.
Answer receipt(const reckon::Histories& histories, const reckon::Standing& standing,
               const Saved& saved, const Sheet& sheet);

}  // namespace report
