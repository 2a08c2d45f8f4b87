// reckon/check_flight.h: what a flight or run says against itself: hours, meters, clock and counts.
#pragma once

#include <optional>

#include "reckon/check_fact.h"

namespace reckon {

// The clock that is on record as the aircraft's source of hours.
struct HoursSource {
  bool is_stated = false;
  std::optional<logbook::MeterName> meter;  // absent although stated: the clock
};

struct AircraftKind {
  HoursSource source;
  bool is_twin = false;
};

void check_flight(const Placed& placed, const AircraftKind& kind, Objections& objections);

// How many flights a flew entry is; one if it does not say.
quantity::Cycles flights_of(const logbook::Flew& flew);

}  // namespace reckon
