#pragma once
// The drawing of a chart in characters: one cell a mark.

#include <cstddef>
#include <string>
#include <vector>

#include "document/chart/geometry.h"

namespace document {

// ASCII, so that every terminal and every printer shows them alike.
namespace cell_marks {
constexpr char counted = 'o';
constexpr char several_counted = 'O';
constexpr char flagged = 'x';
constexpr char several_flagged = 'X';
constexpr char both = '*';
constexpr char above = '^';
constexpr char below = 'v';
constexpr char line = '-';
constexpr char ahead = '.';
constexpr char band = ':';
constexpr char level = '=';
constexpr char event = '|';
}  // namespace cell_marks

// Rows of the plot alone, top first, each `columns` long, with what was drawn last on top: events,
// edges of bands, levels, lines, points. Both numbers are at least 2.
struct CellPlot {
  Frame frame;  // in cells: column and row of a value, to be rounded
  std::vector<std::string> rows;
};
CellPlot cell_plot(const Chart& chart, std::size_t columns, std::size_t rows);

// The column or row in which a place falls.
std::size_t cell_of(double place);

}  // namespace document
