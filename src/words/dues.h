// words/dues.h: what is due, when and by which count; what is over; why something is not known.
#pragma once

#include <optional>
#include <string>

#include "reckon/forecast.h"
#include "reckon/lives.h"

namespace words {

// The side that governs; null while no side can be reckoned.
const reckon::Side* governing(const reckon::Item& item);

// "directive D-26-04 in 2.8 h", "annual inspection by 30 June 2026".
std::string next_text(const reckon::Item& item);
// A whole sentence for what is over, due now or not known: "Over: …".
std::string attention_text(const reckon::Item& item);
// "hours since overhaul are not known", without a capital and point.
std::string lack_text(const reckon::Side& side);
// The same of an item: of its governing side, or of the first that is not known.
std::string lack_text(const reckon::Item& item);
// "Directive D-26-04 has 2.8 h left." and what it is left before, as the head of a sum.
std::string left_sentence(const reckon::Item& item);
// Dates by hours rest on a rate, which is named.
std::string rate_text(const reckon::UseRate& rate);

// "Counted: flights to 4 March 2026 (yesterday)."
std::string counted_to_text(std::optional<quantity::Day> last_flight, quantity::Day today);

}  // namespace words
