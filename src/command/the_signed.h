// command/the_signed.h: which entries a person wants to sign: by their names, or all work of a
// visit.
#pragma once

#include <string>
#include <vector>

#include "command/book_view.h"

namespace command {

struct TheSigned {
  std::vector<const logbook::Entry*> entries;  // by writer and number, each once
  std::string refusal;                         // a sentence; then there are none
};

// "K7QXM-131", "K7QXM-131..K7QXM-134".
TheSigned named_to_sign(const BookView& view, const std::vector<std::string>& names);
// All work of that day on the aircraft and what was aboard, in its newest words, that this person
// has not yet signed, or not yet so that it counts.
TheSigned work_of_visit(const BookView& view, const logbook::Aircraft& aircraft, quantity::Day day,
                        const logbook::Signed& who);

// Puts in their names: the longest run of numbers as a range, the others one by one.
void name_in(logbook::Signed& fact, const TheSigned& these, const std::vector<logbook::Entry>& all);

}  // namespace command
