// words/figures.h: hours, counts, days and whole amounts as people say them. Used is rounded up,
// left is rounded down; what is not known is never shown as a figure.
#pragma once

#include <string>
#include <string_view>

#include "reckon/lives.h"

namespace words {

enum class Toward { up, down };

// Exactly, as the terms of a sum need it: hundredths of an hour, else h:mm:ss, else more decimals;
// only what none of these can hold is rounded. "1.7 h", "0:20:05 h", "1.232 h".
std::string hours_exact(quantity::ServiceHours hours, Toward toward);
// The same for any figure: "1.7 h", "3 landings", "12 days".
std::string figure_exact(const reckon::Figure& figure, const reckon::Clock& clock);
// How surely a term of a sum is known, behind its figure: "", " at least", " by default".
std::string_view sureness_text(const reckon::Figure& figure);

// "h", "h on the collective meter", "landing" or "landings".
std::string unit_text(const reckon::Clock& clock, bool one);
// For machines: "h", "h collective", a counter's plural, "days".
std::string unit_key(const reckon::Side& side);
// What the figure is on, for what is not known: "hours", "hours on the collective meter", "starts".
std::string clock_name(const reckon::Clock& clock);

// "2.8 h", "at most 2.8 h", "118 days", "over by 0.6 h", "not known".
std::string left_text(const reckon::Side& side);
// "4323.3 h", "at least 2310 starts"; of a calendar side the day it counts from.
std::string used_text(const reckon::Side& side);
// "6000.0 h", "12 calendar months".
std::string limit_text(const reckon::Side& side);
// "airframe 4326.7 h", "1820.4 h (airframe 4326.7 h)", "30 June 2026".
std::string due_text(const reckon::Side& side);
// Over by so much, as a positive figure rounded up: "0.6 h", "3 days".
std::string over_text(const reckon::Side& side);

std::string amount_text(const logbook::Amount& amount);
std::string period_text(const logbook::Period& period);

}  // namespace words
