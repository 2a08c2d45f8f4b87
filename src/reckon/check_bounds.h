// reckon/check_bounds.h: settings and ranges that no engine can have.
#pragma once

#include "reckon/check_fact.h"

namespace reckon {

// A serial correlation is from 0 to 0.95, an exponent from 0 to 3, and a range begins at its lower
// end; else the sentence is refused.
void check_bounds(const logbook::Fact& fact, Objections& objections);

}  // namespace reckon
