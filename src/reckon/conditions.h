// reckon/conditions.h: what is missing before "yes" may be said (design 7): the conditions on the
// aircraft and what is fitted to it, and those on the record itself.
#pragma once

#include <vector>

#include "reckon/readiness.h"
#include "reckon/view.h"

namespace reckon {

struct Asked {  // one aircraft, what is aboard, and what falls due on it
  const View& view;
  const logbook::Aircraft& aircraft;
  const std::vector<logbook::Thing>& aboard;
  const std::vector<Item>& items;
};

// Conditions 1 to 5.
std::vector<Missing> missing_of_aircraft(const Asked& asked);
// Conditions 6 to 9.
std::vector<Missing> missing_of_record(const Asked& asked, const Book& book);

}  // namespace reckon
