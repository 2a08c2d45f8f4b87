#include "document/long_rows.h"

namespace document {
namespace {

LongCell value_cell(std::string_view column, const ChartValue& value, const ChartAxis& axis) {
  return {column, figure(value, axis), value.exact, axis.unit, ""};
}

LongCell words_cell(std::string_view column, std::string_view words) {
  return {column, std::string(words), "", "", ""};
}

LongRow line_row(const Chart& chart, const ChartLine& line) {
  const std::string_view reach = line.reach == ChartReach::fitted ? "fitted" : "ahead";
  return {chart.key + "_line",
          {value_cell("x", line.from.x, chart.x), value_cell("y", line.from.y, chart.y),
           value_cell("x_to", line.to.x, chart.x), value_cell("y_to", line.to.y, chart.y),
           words_cell("reach", reach)}};
}

LongRow band_row(const Chart& chart, const ChartBand& band, const ChartBandAt& at) {
  return {chart.key + "_band",
          {words_cell("label", band.label), value_cell("x", at.x, chart.x),
           value_cell("lower", at.lower, chart.y), value_cell("upper", at.upper, chart.y)}};
}

}  // namespace

LongRow point_row(const Chart& chart, const ChartPoint& point) {
  const std::string_view state = word(point.mark);
  std::string shown(state);
  if (!point.reason.empty()) shown += ": " + point.reason;
  LongRow row{chart.key,
              {value_cell("x", point.place.x, chart.x), value_cell("y", point.place.y, chart.y),
               words_cell("state", shown)}};
  // Whoever reads the heights alone must not take a flagged one for a counted one.
  row.cells[1].state = row.cells[2].state = state;
  return row;
}

std::vector<LongRow> long_rows(const Chart& chart) {
  std::vector<LongRow> rows;
  for (const ChartPoint& point : chart.points) rows.push_back(point_row(chart, point));
  for (const ChartLine& line : chart.lines) rows.push_back(line_row(chart, line));
  for (const ChartBand& band : chart.bands) {
    for (const ChartBandAt& at : band.samples) rows.push_back(band_row(chart, band, at));
  }
  for (const ChartLevel& level : chart.levels) {
    rows.push_back({chart.key + "_level",
                    {words_cell("label", level.label), value_cell("y", level.y, chart.y)}});
  }
  for (const ChartEvent& event : chart.events) {
    rows.push_back({chart.key + "_event",
                    {words_cell("label", event.label), value_cell("x", event.x, chart.x)}});
  }
  return rows;
}

}  // namespace document
