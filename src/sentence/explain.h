// sentence/explain.h: reading a line again that could not be read, to say all that is wrong with
// it.
#pragma once

#include <string_view>
#include <vector>

#include "sentence/cursor.h"

namespace sentence {

// At least one misreading, in the order of their places.
std::vector<Misreading> explain(std::string_view text, const Reading& reading);
// Of the sentence inside another, up to the cursor's end; the faults go to the cursor's trace. True
// if there are none.
bool explain_inner(Cursor& cursor);
Misreading too_long(std::string_view text);

}  // namespace sentence
