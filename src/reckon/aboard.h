// reckon/aboard.h: everything that is on one aircraft, at any depth.
#pragma once

#include <optional>
#include <vector>

#include "reckon/histories.h"

namespace reckon {

// The aircraft first, then each thing before what is inside it.
std::vector<logbook::Thing> aboard(const Histories& histories, const logbook::Aircraft& aircraft);

// The aircraft at the root of the thing at a mark; an aircraft is its own root.
std::optional<logbook::Aircraft> aircraft_at(const Histories& histories,
                                             const logbook::Thing& thing, const Mark& mark);
// The engine that the thing is, or is inside of, at a mark.
std::optional<logbook::Engine> engine_at(const Histories& histories, const logbook::Thing& thing,
                                         const Mark& mark);

// Where a gauge was read: a place of an aircraft, and the serial of the engine if it was written.
struct GaugeAt {
  const logbook::Aircraft& aircraft;
  const logbook::PlaceName& place;
  const std::optional<logbook::Serial>& serial;
};
// The engine of that serial, where one is written and only one has it; else the one in the place at
// the mark.
std::optional<logbook::Engine> engine_in(const Histories& histories, const GaugeAt& at,
                                         const Mark& mark);

}  // namespace reckon
