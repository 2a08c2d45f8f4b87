// reckon/limit_side.h: a term of a limit as a side: so much since a basis or after a day.
#pragma once

#include "reckon/side.h"

namespace reckon {

Side limit_side(const Subject& subject, const logbook::Term& term);

// The day from which a period counts; empty: not on record. Since new is since the day made.
std::optional<Day> basis_day(const Histories& histories, const logbook::Thing& thing,
                             const logbook::Term& term);

}  // namespace reckon
