#include "reckon/source_factor.h"

namespace reckon {

quantity::Factor source_factor(const Standing& standing, const logbook::Aircraft& aircraft) {
  quantity::Factor factor = quantity::factor_one;
  for (const StandingFact& fact : standing.facts) {
    const auto* source = std::get_if<logbook::CountsHours>(&fact.said->fact);
    if (source == nullptr || source->aircraft != aircraft) continue;
    factor = source->factor.value_or(quantity::factor_one);
  }
  return factor;
}

}  // namespace reckon
