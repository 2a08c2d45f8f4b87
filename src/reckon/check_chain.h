// reckon/check_chain.h: corrections, strikes and replacements: whether the entry that they name is
// there and may be changed.
#pragma once

#include "reckon/check_fact.h"
#include "reckon/standing.h"

namespace reckon {

// The standing fact that the correction would take the place of; null with an objection.
const StandingFact* check_correction(const logbook::Corrected& corrected, const Standing& standing,
                                     Objections& objections);
void check_strike(const logbook::Struck& struck, const Standing& standing, Objections& objections);
// "instead of" names a standing definition of the same kind.
void check_replacement(const logbook::Said& said, const Standing& standing, Objections& objections);
// A line of a chart contradicts no other line on record, at the same torque, height and air.
// in_place_of: what it corrects; null for a new line.
void check_chart(const logbook::Said& said, const Standing& standing,
                 const StandingFact* in_place_of, Objections& objections);
// What was looked into is a start or an exceedance that stands.
void check_looked_into(const logbook::Said& said, const Standing& standing, Objections& objections);

}  // namespace reckon
