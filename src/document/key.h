#pragma once
// The names by which machines find a table, a chart or a column.

#include <string_view>

namespace document {

// Not empty and made of a-z, 0-9 and _ alone, so that it is safe in every form without escaping.
bool is_key(std::string_view words);

}  // namespace document
