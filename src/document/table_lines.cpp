#include "document/table_lines.h"

#include <algorithm>
#include <optional>

#include "document/grid.h"
#include "document/wrap.h"
#include "text/unicode.h"

namespace document {
namespace {

using Row = std::vector<std::string>;
using Lines = std::vector<std::string>;

constexpr std::size_t gap = 2;

std::size_t total(const Widths& widths) {
  std::size_t sum = widths.empty() ? 0 : gap * (widths.size() - 1);
  for (const std::size_t width : widths) sum += width;
  return sum;
}

// The widest column that can spare a blank; none if all are as narrow as their words allow.
std::optional<std::size_t> widest_to_spare(const Widths& widths, const Widths& least) {
  std::optional<std::size_t> best;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    if (widths[i] <= least[i]) continue;
    if (!best || widths[i] > widths[*best]) best = i;
  }
  return best;
}

// Only columns of words are narrowed; figures stand on the right and are never wrapped.
std::optional<Widths> fitting_widths(const Grid& grid, std::size_t columns) {
  Widths widths = widest(grid, text::columns);
  Widths least = widest(grid, widest_piece);
  for (std::size_t i = 0; i < widths.size(); ++i) {
    if (grid.aligns[i] == Align::right) least[i] = widths[i];
  }
  while (total(widths) > columns) {
    const std::optional<std::size_t> place = widest_to_spare(widths, least);
    if (!place) return std::nullopt;
    --widths[*place];
  }
  return widths;
}

// One row takes as many lines as its most wrapped cell.
void add_row(Lines& lines, const Row& row, const Grid& grid, const Widths& widths) {
  std::vector<Lines> parts;
  std::size_t height = 0;
  for (std::size_t i = 0; i < row.size(); ++i) {
    parts.push_back(wrapped(row[i], widths[i]));
    height = std::max(height, parts.back().size());
  }
  for (std::size_t level = 0; level < height; ++level) {
    std::string line;
    for (std::size_t i = 0; i < row.size(); ++i) {
      if (i > 0) line.append(gap, ' ');
      parts[i].resize(height);
      line += padded(parts[i][level], widths[i], grid.aligns[i]);
    }
    lines.push_back(without_end_blanks(std::move(line)));
  }
}

Row rules(const Widths& widths) {
  Row result;
  for (const std::size_t width : widths) result.emplace_back(width, '-');
  return result;
}

Lines side_by_side(const Grid& grid, const Widths& widths, bool is_headed) {
  Lines lines;
  if (is_headed) {
    add_row(lines, grid.names, grid, widths);
    add_row(lines, rules(widths), grid, widths);
  }
  for (const Row& row : grid.rows) add_row(lines, row, grid, widths);
  return lines;
}

// The words behind their label; further lines start below the first word.
void add_field(Lines& lines, std::string label, const std::string& words, std::size_t columns) {
  const std::size_t indent = text::columns(label);
  const std::size_t room = columns > indent ? columns - indent : 1;
  for (const std::string& part : wrapped(words, room)) {
    lines.push_back(without_end_blanks(label + part));
    label.assign(indent, ' ');
  }
}

Lines field_a_line(const Grid& grid, std::size_t columns, bool is_headed) {
  Lines lines;
  std::size_t label_columns = 0;
  for (const std::string& name : grid.names) {
    label_columns = std::max(label_columns, text::columns(name) + (is_headed ? gap : 0));
  }
  for (const Row& row : grid.rows) {
    if (!lines.empty()) lines.emplace_back();
    for (std::size_t i = 0; i < row.size(); ++i) {
      add_field(lines, padded(grid.names[i], label_columns, Align::left), row[i], columns);
    }
  }
  return lines;
}

}  // namespace

bool has_head(const Table& table) {
  return std::any_of(table.columns.begin(), table.columns.end(),
                     [](const Column& column) { return !column.name.empty(); });
}

std::vector<std::string> table_lines(const Table& table, std::size_t columns) {
  if (table.rows.empty() && !table.if_empty.empty()) return wrapped(table.if_empty, columns);
  const Grid grid = grid_of(table);
  const bool is_headed = has_head(table);
  if (is_headed && columns < narrow_columns) return field_a_line(grid, columns, is_headed);
  const std::optional<Widths> widths = fitting_widths(grid, columns);
  if (!widths) return field_a_line(grid, columns, is_headed);
  return side_by_side(grid, *widths, is_headed);
}

}  // namespace document
