// reckon/statements.h: every total that an entry states, beside what the flights sum to at its
// place.
#pragma once

#include <vector>

#include "reckon/past.h"
#include "reckon/totals.h"

namespace reckon {

struct StatementSources {
  const Standing& standing;
  const Timeline& timeline;
  const Past& past;
  const Totals& totals;
};
// By mark of their entries.
std::vector<Statement> statements_of(const StatementSources& from);

// Stated engine totals put on the airframe's clock, for entries that have no better place.
OnAirframe engine_totals_on_airframe(const Timeline& timeline, const Totals& totals);

}  // namespace reckon
