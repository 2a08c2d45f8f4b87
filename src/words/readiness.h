// words/readiness.h: "can I fly this?" as people say it: yes, no or not known in one line, what
// stops the trip, what is missing and the sentence that would supply it.
#pragma once

#include <string>
#include <vector>

#include "reckon/ready.h"

namespace words {

inline constexpr std::size_t first_line_columns = 80;

// "No. A 3.0 h trip would pass directive D-26-04 by 0.2 h. You can fly 2.8 h." At most 80 columns.
std::string first_line(const reckon::Ready& ready, const reckon::Trip& trip,
                       const logbook::Aircraft& aircraft);
// yes, no, not known.
std::string_view answer_word(reckon::Answer answer);
// What stops the trip, as a whole sentence.
std::string obstacle_text(const reckon::Obstacle& obstacle);
// "The trip: 1 flight, 1 start of each engine, 1 landing."
std::string trip_text(const reckon::Trip& trip);
// "You can fly 2.8 h, until 30 June 2026." Empty if there is nothing to say.
std::string allowed_text(const reckon::Ready& ready);
// The meter against the book, days without a flight. Sentences; none if all is fresh.
std::vector<std::string> freshness_texts(const reckon::Ready& ready, quantity::Day today);

// what: a whole sentence. example: a canonical sentence that would supply it; empty where none can.
struct MissingWords {
  std::string what;
  std::string example;
};
MissingWords missing_words(const reckon::Missing& missing, const logbook::Aircraft& aircraft);
// totals, places, programme … for machines.
std::string_view condition_key(reckon::Condition condition);

}  // namespace words
