// sentence/skip.h: finding one's way through the rest of a line that was not understood.
#pragma once

#include <optional>
#include <string_view>

#include "sentence/cursor.h"

namespace sentence {

// Goes to the comma that ends this clause, or to the end.
void skip_clause(Cursor& cursor);
// Where these words end, if they stand outside quotes at or after the cursor.
std::optional<std::size_t> end_of_words(const Cursor& cursor, std::string_view words);

}  // namespace sentence
