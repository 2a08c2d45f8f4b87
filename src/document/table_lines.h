#pragma once
// One table as lines of text: side by side if the screen is wide enough, else a field a line.

#include <cstddef>
#include <string>
#include <vector>

#include "document/document.h"

namespace document {

// Below this many columns a table with a head is written one field a line.
constexpr std::size_t narrow_columns = 60;

// True if any column has a name to be shown above it.
bool has_head(const Table& table);

// The lines, without line feeds and without blanks at their ends.
std::vector<std::string> table_lines(const Table& table, std::size_t columns);

}  // namespace document
