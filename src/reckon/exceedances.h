// reckon/exceedances.h: what was past a limit and stands until somebody has looked into it. It
// follows the engine, wherever that is fitted.
#pragma once

#include <optional>
#include <vector>

#include "reckon/start_findings.h"

namespace reckon {

// How far an exceedance is past one limit of the model, in the gauge's own unit.
struct PastGauge {
  logbook::GaugeFor limit;
  quantity::Decimal by;  // C, percent, or the unit of the torque
  std::int64_t seconds_over = 0;
  logbook::EntryId rule;
};

struct Exceedance {
  logbook::EntryId entry;
  logbook::EntryId newest;  // the newest of its corrections, which sentences name
  Day day;
  logbook::Aircraft aircraft;  // on which it happened
  logbook::PlaceName place;
  std::optional<logbook::Engine> engine;
  std::optional<logbook::GaugeFor> what;  // absent: a start
  std::vector<PastGauge> past;            // empty: no limit on record tells
  std::vector<StartFinding> start;        // what of the start is past a limit
  std::vector<logbook::Band> untold;      // start limits of which it cannot be told
};

// Those that no entry has looked into, oldest first: stated exceedances, starts past a limit, and
// starts of which that cannot be told.
std::vector<Exceedance> open_exceedances(const Histories& histories, const Standing& standing);

// Of these, what touches an aircraft: on an engine that it carries now, or on the aircraft itself
// where the engine is unknown or the drive train turned with it.
std::vector<Exceedance> open_exceedances(const Histories& histories, const Standing& standing,
                                         const logbook::Aircraft& aircraft);

}  // namespace reckon
