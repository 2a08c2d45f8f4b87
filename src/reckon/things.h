// reckon/things.h: which aircraft, engines and parts a fact names.
#pragma once

#include <vector>

#include "logbook/fact.h"

namespace reckon {

// Each thing once, sorted. Models and part numbers are no things; the fact inside a correction is
// looked into.
std::vector<logbook::Thing> things_in(const logbook::Fact& fact);

}  // namespace reckon
