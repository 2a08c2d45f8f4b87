#pragma once
// One chart as lines of text: its sentence, the drawing in characters, the key in words.

#include <cstddef>
#include <string>
#include <vector>

#include "document/chart/chart.h"

namespace document {

// Below this many columns only the words of a chart are written.
constexpr std::size_t least_chart_columns = 40;
// A drawing grows no wider than this, however wide the screen.
constexpr std::size_t most_chart_columns = 120;

// The lines, without line feeds and without blanks at their ends; the drawing never wider than
// `columns`. The words are the same at every width.
std::vector<std::string> chart_lines(const Chart& chart, std::size_t columns);

}  // namespace document
