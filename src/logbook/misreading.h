// logbook/misreading.h: what was wrong with a line that someone typed, as data; words says it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace logbook {

enum class Fault {
  unknown_kind,   // no sentence begins like this
  unknown_word,   // not known at this place
  missing,        // a clause or word that the kind needs
  said_twice,     // a clause that may stand once
  day_missing,    // outside a terminal every sentence carries its day
  bad_quote,      // an unbalanced quote
  bad_name,       // a name that looks like a date, number or time, or is too long
  bad_character,  // a control character, or bytes that are no UTF-8
  too_long,       // more than 4,096 bytes
  two_sentences,  // one sentence a line
  not_a_number,
  two_readings,  // first and second hold the readings
  not_exact,     // first and second hold the neighbours
  not_whole,
  out_of_range,
  fahrenheit,  // first: the same in degrees C, to tenths
  no_such_day,
  ambiguous_day,
  two_things,  // a bare name that more than one thing has
};

// One misreading. from and to are byte offsets into the text as typed.
struct Misreading {
  Fault fault = Fault::unknown_word;
  std::uint16_t from = 0;
  std::uint16_t to = 0;
  std::string read;
  std::vector<std::string> expected;
  std::string nearest;
  std::string first;
  std::string second;
};

}  // namespace logbook
