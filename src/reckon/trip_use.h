// reckon/trip_use.h: what a trip would use on one side, and whether the side lets it be flown.
#pragma once

#include <optional>

#include "reckon/readiness.h"
#include "reckon/view.h"

namespace reckon {

// The trip with all that its use depends on. Hours that the pilot's meter shows beyond the book
// count as flown.
struct TripView {
  const View& view;
  const logbook::Aircraft& aircraft;
  Trip trip;
  quantity::Factor factor;
  std::optional<quantity::Hours> gap;  // as the meter shows it
};
TripView trip_view(const View& view, const logbook::Aircraft& aircraft, const Trip& trip);

// Cycles not yet flown are the larger of one full cycle by the counting rule and the dearest of the
// last 50 flights. Lifts and run-on landings are none unless they are flown.
Figure needed(const TripView& trip, const Item& item, const Side& side);

// What is left on a known side once the gap is counted in.
// Of a mixed limit, as much as its side alone could use.
Figure left_after_gap(const TripView& trip, const Item& item, const Side& side);

// Whether a known side stops the trip: at nothing left no hour or event may be started, a trip may
// end exactly on the limit, and the last legal day may be flown.
bool stops(const TripView& trip, const Item& item, const Side& side);

// The side that stops the item's trip; empty: the item lets it be flown. A side that is not known
// stops nothing by itself.
std::optional<int> stopping_side(const TripView& trip, const Item& item);

// The longest trip that the item allows, in hours as the pilot logs them; empty: it sets no bound.
std::optional<quantity::Hours> longest_trip(const TripView& trip, const Item& item);

}  // namespace reckon
