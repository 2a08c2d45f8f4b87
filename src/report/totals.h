// report/totals.h: what one thing has by now on every clock that counts for it, since new and since
// overhaul.
#pragma once

#include <string>
#include <vector>

#include "report/sheet.h"

namespace report {

struct ThingTotal {
  reckon::Clock clock;
  reckon::Figure figure;
  bool is_since_overhaul = false;
};

// Hours, flights, starts and landings as far as they belong to the thing, and every other counter
// that it has a figure of. Since overhaul only where it was overhauled.
std::vector<ThingTotal> totals_of(const reckon::Histories& histories, const logbook::Thing& thing);

// "Total: 2227.9 h and 2598 starts. Since overhaul: 320.4 h."
std::string totals_text(const std::vector<ThingTotal>& totals);

// [{"unit","amount","sureness","since","shown"}…]: hours in whole seconds, rounded up; sureness is
// exact, at least, default or unknown; since is new or overhaul.
document::Json totals_json(const std::vector<ThingTotal>& totals);

}  // namespace report
