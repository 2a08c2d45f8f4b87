// reckon/models_on.h: the models of all that a thing lies in, at any depth: of its engine as well
// as of its aircraft. What "on a model" means stands here alone.
#pragma once

#include <set>
#include <vector>

#include "reckon/histories.h"

namespace reckon {

// Not known: in none of the kind, or in one whose model is not on record.
struct ModelsOn {
  std::set<logbook::ModelName> engines;
  std::set<logbook::ModelName> aircraft;
  bool is_engine_known = false;
  bool is_aircraft_known = false;
};

// Of a thing while it is inside these hosts, from its own host outward. An engine and an aircraft
// are on themselves: name them first.
ModelsOn models_on(const Histories& histories, const std::vector<logbook::Thing>& hosts);
// Where the thing is now, in two places at once if the record says so; out of every engine, and off
// every aircraft, where it was last.
ModelsOn models_now_or_last(const Histories& histories, const logbook::Thing& thing);
// Of all that it has ever been in.
ModelsOn models_ever_on(const Histories& histories, const logbook::Thing& thing);

// Whether that is among these for certain; and whether it may be, by what is not known: a model of
// which nothing is on record may be that of an aircraft.
bool is_on(const ModelsOn& on, const logbook::ModelName& model);
bool may_be_on(const Histories& histories, const ModelsOn& on, const logbook::ModelName& model);

}  // namespace reckon
