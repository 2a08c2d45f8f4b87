// words/workings.h: the terms of a sum, each with the entries it rests on.
#pragma once

#include <string>

#include "reckon/lives.h"

namespace words {

// "used on aircraft ZZ-KIT, engine 1, from 2 May 2024, 212 flights (K7QXM-89 to K7QXM-512)".
std::string term_text(const reckon::Term& term);
// "interval, 100-hour inspection (K7QXM-31)", "life since new, \"limitations rev 4\" (K7QXM-31)".
std::string limit_term_text(const reckon::Item& item, const reckon::Side& side);
// "2400.0 h of 3000.0 h"; "? of 3000.0 h".
std::string part_amount_text(const reckon::PartUsed& part, const reckon::Clock& clock);
// The term; where its model is not on record, that the smallest limit counts.
std::string part_text(const reckon::PartUsed& part);
// A calendar side as one sentence: what it counts from, for how long, its last legal day.
std::string calendar_sentence(const reckon::Item& item, const reckon::Side& side);

}  // namespace words
