// reckon/papers.h: what is declared of each thing: its model, when it was made, released,
// certified.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "reckon/standing.h"

namespace reckon {

// The newest declaration of each date holds.
struct Papers {
  std::optional<logbook::ModelName> model;
  std::optional<quantity::Day> made;
  std::optional<quantity::Day> released;
  std::optional<quantity::Day> first_certificate;
};
using AllPapers = std::map<logbook::Thing, Papers>;

// One for every thing that any standing fact names.
AllPapers papers_of(const Standing& standing);

// The quarter in which an elastomer was cured is over on this day.
quantity::Day last_day_of(const quantity::Quarter& quarter);

}  // namespace reckon
