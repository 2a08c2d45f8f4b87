#pragma once
// Rows of the long table of as_csv.h, and what is in a chart as such rows.

#include <string>
#include <string_view>
#include <vector>

#include "document/chart/chart.h"

namespace document {

struct LongCell {
  std::string_view column;
  std::string shown;
  std::string exact;
  std::string unit;
  std::string_view state;  // counted or flagged for the height and the state of a point, or nothing
};

struct LongRow {
  std::string section;
  std::vector<LongCell> cells;
};

// The point as cells x, y and state; a flagged one shows its reason behind the word of its state.
LongRow point_row(const Chart& chart, const ChartPoint& point);

// All points in their order, then lines, samples of bands, levels and events; sections and columns
// as as_csv.h tells them.
std::vector<LongRow> long_rows(const Chart& chart);

}  // namespace document
