#pragma once
// A table as its words alone, every row equally long: what the layouts for text work on.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "document/document.h"

namespace document {

// A cell as text shows it: its words, and the word of its state unless they are that word already.
std::string text_of(const Cell& cell);

struct Grid {
  std::vector<std::string> names;
  std::vector<Align> aligns;
  std::vector<std::vector<std::string>> rows;
};

using Widths = std::vector<std::size_t>;

// All cells of the table, with control characters shown visibly. A row that is too short is filled
// up; where one is too long the grid grows by columns without a name, so that nothing is hidden.
Grid grid_of(const Table& table);

// The greatest measure in each column, names among them.
Widths widest(const Grid& grid, std::size_t (*measure)(std::string_view));

}  // namespace document
