// words/starts.h: how a start went beside what is stated for its model, and what is past a limit.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "reckon/exceedances.h"

namespace words {

// "peak 742 C, battery 25.9 V, idle in 24 s": what was read, the telling ones first; may be empty.
std::string start_figures(const logbook::Started& started);
// "battery 24.1 V, 0.4 V below 24.5 V".
std::string finding_text(const reckon::StartFinding& finding);
std::string findings_text(const std::vector<reckon::StartFinding>& findings);
// "Start of 4 March 2026 (K7QXM-12): past a limit: peak 884 C, 14 C above 870 C." "… normal (peak
// 742 C, battery 25.9 V)." "… nothing is stated to hold it against."
std::string start_text(const reckon::StartJudged& judged);
// normal, worth a look, past a limit, not known: for machines.
std::string_view start_word(const reckon::StartJudged& judged);
// "Engine TS-40 E-1001 on ZZ-KIT, 4 March 2026 (K7QXM-14): temperature 915 C for 3 s, past
// temperature 843 C for 2 s by 72 and 1 s. It stands until it is looked into."
std::string exceedance_text(const reckon::Exceedance& exceedance);

}  // namespace words
