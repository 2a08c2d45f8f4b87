// sentence/findings.h: how what was wanted at a place becomes a misreading.
#pragma once

#include <string_view>
#include <vector>

#include "sentence/cursor.h"

namespace sentence {

// How far an attempt came.
std::size_t reach_of(const Trace& trace);
// Adds what another attempt wanted, if it came as far or farther.
void merge(Trace& into, const Trace& other);

// What a trace says is wrong, once nothing took the text at the cursor. A value that was understood
// but refused outweighs what was wanted elsewhere.
Misreading misreading_of(const Cursor& cursor, const Trace& trace);
// Something is missing at this place.
Misreading missing_at(std::size_t at, std::vector<std::string> expected);

}  // namespace sentence
