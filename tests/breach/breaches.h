// tests/breach/breaches.h: the ways that plain SQL offers to breach the rule that a record is only
// added to, each with what comes of it.
#pragma once

#include <span>
#include <string_view>

namespace breach {

enum class Outcome {
  refused,   // the file itself refuses, and nothing is changed
  found,     // done, and check tells of it
  harmless,  // done, and neither the record nor an answer is another
};

enum class Guards {
  stand,
  are_dropped_and_put_back,  // as by someone who hides that they did
};

struct Breach {
  std::string_view name;
  Guards guards;
  std::string_view sql;
  Outcome outcome;
  // Refused: what the shell says. Found: what check says, as "K-3" for the entry of that number.
  // Harmless: why.
  std::string_view words;
};

// Of a book with one aircraft, an engine and flights, whose entries 19 to 22 are flights.
std::span<const Breach> breaches();

}  // namespace breach
