// words/trends.h: what the margins show, how sure it is, and what it does not show. Never "steady":
// readings can show a loss, but never that there is none.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "reckon/trend/margins.h"

namespace words {

// The digits without their sign: "falling by 4.1".
std::string absolute(quantity::Decimal figure);
// "cruise margin", "idle margin", "power-check margin".
std::string_view series_name(logbook::CheckKind check);
// cruise, idle, power check: for machines.
std::string_view check_word(logbook::CheckKind check);
// "since the fitting of 11 March 2026".
std::string since_text(const reckon::trend::Segment& segment);
// The same for a mark on a chart: "fitted 11 March 2026".
std::string began_text(const reckon::trend::Segment& segment);
// "Clear: the cruise margin is falling by 4.1 C per 100 h (between 2.6 and 5.6), from 46 readings
// over 212 h since the fitting of 11 March 2026."
std::string trend_text(const reckon::trend::Series& series, const reckon::trend::Segment& segment);
// What must not be passed over, as a warning: the last reading past what is allowed, the line at
// the floor; empty where nothing of the kind is.
std::string worry_text(const reckon::trend::Series& series);
// Where the line stands, as of its last reading; empty without a line.
std::string now_text(const reckon::trend::Series& series);
// How many readings were left out of the line, and why; empty if none was.
std::string left_out_text(const reckon::trend::Segment& segment);
// When the line reaches the floor, and by what to plan; empty if nothing can be said.
std::string reach_text(const reckon::trend::Series& series, const reckon::trend::Segment& segment);
// What the hours to the floor in a list mean.
std::string_view reach_column_text();
// "The wash of 11 March 2026 gave back 11.0 C (between 9.8 and 12.2)."
std::string wash_text(const reckon::trend::WashGain& wash);
// What else must be known to read it: single readings that carry it, the other way of drawing the
// line, the stated correlation.
std::vector<std::string> trend_notes(const reckon::trend::Series& series,
                                     const reckon::trend::Segment& segment);
// What the chart of the series shows, for who cannot see it.
std::string chart_text(const reckon::trend::Series& series, std::size_t readings);
// Why a reading was left out of the line; empty if it counts.
std::string flag_text(const reckon::trend::MarginPoint& point);
// clear, weak, cannot tell, too few: for machines.
std::string_view grade_word(reckon::trend::Grade grade);

}  // namespace words
