// sentence/describe.h: tables as text: examples and names for messages, help and the grammar.
#pragma once

#include <string>

#include "sentence/table.h"

namespace sentence {

// A canonical text of this sort: 1.7 h.
std::string example_of(const Sort& sort);
// What a message says is wanted: "took off 09:11-07:00"; "hours such as 1.7 h" if it has no word.
std::string wanted_clause(const Clause& clause);

}  // namespace sentence
