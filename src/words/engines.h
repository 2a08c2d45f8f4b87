// words/engines.h: one engine in one line, for answers about an aircraft.
#pragma once

#include <string>
#include <vector>

#include "reckon/start_findings.h"
#include "reckon/trend/series.h"

namespace words {

// "Cruise margin 24 C: no loss seen (1 C per 100 h would show after about 30 more readings)."
std::string margins_text(const reckon::trend::Series& series);

// "Engine TS-40 E-1001: Last start normal (peak 742 C, battery 25.9 V). Cruise margin 24 C: …".
// Start and margins may be absent; without both it is empty.
std::string engine_text(const logbook::Engine& engine, const reckon::StartJudged* last_start,
                        const std::vector<const reckon::trend::Series*>& margins);

}  // namespace words
