#include "document/grid.h"

#include <algorithm>

#include "text/unicode.h"
#include "text/visible.h"

namespace document {
namespace {

std::vector<std::string> words_of(const std::vector<Cell>& cells) {
  std::vector<std::string> words;
  for (const Cell& cell : cells) words.push_back(text::visible_line(text_of(cell)));
  return words;
}

std::size_t longest_row(const Table& table) {
  std::size_t longest = table.columns.size();
  for (const std::vector<Cell>& row : table.rows) longest = std::max(longest, row.size());
  return longest;
}

}  // namespace

std::string text_of(const Cell& cell) {
  const std::string_view state = word(cell.state);
  if (state.empty() || text::fold(cell.shown) == state) return cell.shown;
  if (cell.shown.empty()) return std::string(state);
  return cell.shown + " (" + std::string(state) + ")";
}

Grid grid_of(const Table& table) {
  Grid grid;
  for (const Column& column : table.columns) {
    grid.names.push_back(text::visible_line(column.name));
    grid.aligns.push_back(column.align);
  }
  const std::size_t count = longest_row(table);
  grid.names.resize(count);
  grid.aligns.resize(count, Align::left);
  for (const std::vector<Cell>& row : table.rows) {
    grid.rows.push_back(words_of(row));
    grid.rows.back().resize(count);
  }
  return grid;
}

Widths widest(const Grid& grid, std::size_t (*measure)(std::string_view)) {
  Widths widths;
  for (const std::string& name : grid.names) widths.push_back(measure(name));
  for (const std::vector<std::string>& row : grid.rows) {
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], measure(row[i]));
  }
  return widths;
}

}  // namespace document
