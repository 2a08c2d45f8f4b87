// reckon/models_on.h: the models of all that a thing lies in, at any depth: of its engine as well
// as of its aircraft.
#pragma once

#include <set>

#include "reckon/histories.h"

namespace reckon {

// The models of all engines and of all aircraft that the thing has ever been in. Days alone tell
// which stays of a host overlap, so a change within a day counts for both.
struct ModelsBeenOn {
  std::set<logbook::ModelName> engines;
  std::set<logbook::ModelName> aircraft;
};
ModelsBeenOn models_been_on(const Histories& histories, const logbook::Thing& thing);

enum class OnModel {
  holds,
  holds_not,
  no_such_model,  // nothing on record is of the model: it may be a slip of the finger
};
// Whether what is laid upon a model holds for a thing: while it is in an engine or on an aircraft
// of that model; off them, if the last of their kind that it was in was of that model. A thing that
// was in none, or on an aircraft of an unknown model, is held to it: that is the careful side.
OnModel on_model(const Histories& histories, const logbook::Thing& thing,
                 const logbook::ModelName& model);

}  // namespace reckon
