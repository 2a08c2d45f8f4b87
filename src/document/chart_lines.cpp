#include "document/chart_lines.h"

#include <algorithm>
#include <cmath>

#include "document/chart/cells.h"
#include "document/chart/event_labels.h"
#include "document/chart/legend.h"
#include "document/wrap.h"
#include "text/unicode.h"

namespace document {
namespace {

using Lines = std::vector<std::string>;

constexpr std::size_t full_rows = 17;
constexpr std::size_t tile_rows = 9;
constexpr std::size_t symbol_columns = 3;

// Writes over blanks, from that column on.
void put(std::string& line, std::size_t column, std::string_view words) {
  if (line.size() < column + words.size()) line.resize(column + words.size(), ' ');
  line.replace(column, words.size(), words);
}

std::size_t widest_tick(const Scale& scale) {
  std::size_t widest = 0;
  for (const Tick& tick : scale.ticks) widest = std::max(widest, tick.words.size());
  return widest;
}

// Numbers of events above their lines, the lines running up to them.
Lines event_rows(const Chart& chart, const CellPlot& plot) {
  std::vector<EventName> names;
  for (const ChartEvent* event : numbered_events(chart)) {
    const auto column = std::round(x_on(plot.frame, event->x.at));
    names.push_back({names.size() + 1, column, event->label});
  }
  const LabelRoom room{1e9, 0, text::columns, 0, 0};
  const auto labels = placed_labels(names, room);
  Lines rows(rows_of(labels));
  for (const EventLabel& label : labels) {
    const std::size_t column = cell_of(label.x);
    const std::size_t top = rows.size() - 1 - label.row;
    put(rows[top], column, label.words);
    for (std::size_t row = top + 1; row < rows.size(); ++row) {
      put(rows[row], column, std::string(1, cell_marks::event));
    }
  }
  return rows;
}

// The axis with a cross at each tick, and the figures below where they have room.
Lines foot_rows(const CellPlot& plot, std::size_t indent, std::size_t columns) {
  std::string axis(plot.rows.front().size(), '-');
  std::string figures;
  std::size_t free_from = 0;
  for (const Tick& tick : plot.frame.x.ticks) {
    const std::size_t column = cell_of(x_on(plot.frame, tick.at));
    axis[column] = '+';
    const std::size_t middle = indent + column;
    const std::size_t begin = middle - std::min(middle, tick.words.size() / 2);
    if (begin < free_from || begin + tick.words.size() > columns) continue;
    put(figures, begin, tick.words);
    free_from = figures.size() + 2;
  }
  return {std::string(indent - 1, ' ') + "+" + axis, figures};
}

struct Drawn {
  Lines lines;
  Lines plot;  // the rows of the plot alone
};

Drawn drawn(const Chart& chart, std::size_t columns) {
  const std::size_t height = chart.size == ChartSize::full ? full_rows : tile_rows;
  // The widest tick is known only from the scale, which does not depend on the columns.
  const std::size_t figures = widest_tick(cell_plot(chart, 2, height).frame.y);
  const std::size_t indent = figures + 2;
  const CellPlot plot =
      cell_plot(chart, std::max<std::size_t>(columns, indent + 2) - indent, height);
  Lines lines = wrapped(axis_words(chart.y), columns);
  for (const std::string& row : event_rows(chart, plot)) {
    lines.push_back(std::string(indent, ' ') + row);
  }
  std::vector<std::string> names(height);
  for (const Tick& tick : plot.frame.y.ticks)
    names[cell_of(y_on(plot.frame, tick.at))] = tick.words;
  for (std::size_t row = 0; row < height; ++row) {
    lines.push_back(padded(names[row], figures, Align::right) + " |" + plot.rows[row]);
  }
  for (const std::string& row : foot_rows(plot, indent, columns)) lines.push_back(row);
  for (const std::string& line : wrapped(axis_words(chart.x), columns)) {
    lines.push_back(padded(line, columns, Align::right));
  }
  for (std::string& line : lines) line = without_end_blanks(std::move(line));
  return {lines, plot.rows};
}

std::string symbol_of(const LegendEntry& entry) {
  switch (entry.mark) {
    case LegendMark::counted:
      return {cell_marks::counted};
    case LegendMark::flagged:
      return {cell_marks::flagged};
    case LegendMark::line:
      return {cell_marks::line};
    case LegendMark::ahead:
      return {cell_marks::ahead};
    case LegendMark::band:
      return {cell_marks::band};
    case LegendMark::level:
      return {cell_marks::level};
    case LegendMark::event:
      return std::to_string(entry.number);
    case LegendMark::absent:
      break;
  }
  return "";
}

void add_entry(Lines& lines, const std::string& symbol, const std::string& words,
               std::size_t columns) {
  std::string label = padded(symbol, symbol_columns, Align::left);
  const std::size_t room = columns > symbol_columns ? columns - symbol_columns : 1;
  for (const std::string& part : wrapped(words, room)) {
    lines.push_back(label + part);
    label.assign(symbol_columns, ' ');
  }
}

// Marks that only a drawing in characters needs; said only where they stand.
void add_cell_marks(Lines& lines, const Lines& plot, std::size_t columns) {
  struct Extra {
    char mark;
    const char* words;
  };
  for (const Extra extra : {Extra{cell_marks::several_counted, "several counted in one place"},
                            Extra{cell_marks::several_flagged, "several flagged in one place"},
                            Extra{cell_marks::both, "counted and flagged in one place"},
                            Extra{cell_marks::above, "flagged, higher than the chart reaches"},
                            Extra{cell_marks::below, "flagged, lower than the chart reaches"}}) {
    const bool is_drawn = std::any_of(plot.begin(), plot.end(), [&](const auto& row) {
      return row.find(extra.mark) != row.npos;
    });
    if (is_drawn) add_entry(lines, {extra.mark}, extra.words, columns);
  }
}

}  // namespace

std::vector<std::string> chart_lines(const Chart& chart, std::size_t columns) {
  Lines lines = wrapped(chart.title, columns);
  for (const std::string& line : wrapped(chart.alt, columns)) lines.push_back(line);
  Drawn drawing;
  if (columns >= least_chart_columns) {
    drawing = drawn(chart, std::min(columns, most_chart_columns));
    lines.insert(lines.end(), drawing.lines.begin(), drawing.lines.end());
  }
  for (const LegendEntry& entry : legend(chart)) {
    add_entry(lines, symbol_of(entry), entry.words, columns);
  }
  add_cell_marks(lines, drawing.plot, columns);
  return lines;
}

}  // namespace document
