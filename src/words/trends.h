// words/trends.h: what the margins show, how sure it is, and what it does not show. Never "steady":
// readings can show a loss, but never that there is none.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "reckon/trend/margins.h"

namespace words {

// "cruise margin", "idle margin".
std::string_view series_name(logbook::CheckKind check);
// "since the wash of 11 March 2026", "since it was fitted on 2 May 2024", "since 4 March 2026".
std::string since_text(const reckon::trend::Segment& segment);
// "Clear: the cruise margin is falling by 4.1 C per 100 h (between 2.6 and 5.6), from 46 readings
// over 212 h since the wash of 11 March 2026."
std::string trend_text(const reckon::trend::Series& series, const reckon::trend::Segment& segment);
// What else must be known to read it: single readings that carry it, the stated correlation.
std::vector<std::string> trend_notes(const reckon::trend::Series& series,
                                     const reckon::trend::Segment& segment);
// Why a reading was left out of the line; empty if it counts.
std::string_view flag_text(reckon::trend::Flag flag);
// clear, weak, cannot tell, too few: for machines.
std::string_view grade_word(reckon::trend::Grade grade);

}  // namespace words
