// reckon/trend/segments.h: the readings of one engine and check cut where something was done.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/trend/model_rules.h"

namespace reckon::trend {

// A point with what decides to which segment it belongs.
struct PlacedPoint {
  MarginPoint point;
  Mark mark;
  std::string held_against;  // empty: nothing on record
};

// Something done to the engine.
struct Event {
  Mark mark;
  Done done;
  std::optional<logbook::EntryId> entry;
  std::optional<double> hours;  // of the engine, then; absent: not known
};

// Fittings and work, by mark.
std::vector<Event> events_of(const Histories& histories, const Standing& standing,
                             const logbook::Engine& engine);

// Where the history ends: what a reading taken now would be held against.
struct End {
  Mark mark;
  std::string held_against;
};

// The points, by mark, in segments; the levels of each point within its segment are set. What was
// done since the last reading begins a segment without points.
std::vector<Segment> cut(const std::vector<PlacedPoint>& points, const std::vector<Event>& events,
                         const End& end);

}  // namespace reckon::trend
