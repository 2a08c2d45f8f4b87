#include "document/html_blocks.h"

#include <algorithm>

#include "document/chart/legend.h"
#include "document/chart/picture.h"
#include "document/grid.h"
#include "document/long_rows.h"
#include "document/markup.h"
#include "document/table_lines.h"
#include "text/unicode.h"

namespace document {
namespace {

// Figures up to this long stay on one line.
constexpr std::size_t longest_figure = 24;

// "state-not-known", for the colour that repeats the word.
std::string state_class(State state) {
  std::string name(word(state));
  std::replace(name.begin(), name.end(), ' ', '-');
  return name.empty() ? name : "state-" + name;
}

void add_if(Attributes& attributes, std::string_view name, std::string_view value) {
  if (!value.empty()) attributes.push_back({name, std::string(value)});
}

std::string cell_html(const Column& column, const Cell& cell) {
  const std::string shown = text_of(cell);
  std::string classes = state_class(cell.state);
  const bool is_right = column.align == Align::right;
  if (is_right) classes += classes.empty() ? "right" : " right";
  if (is_right && text::columns(shown) <= longest_figure) classes += " figure";
  Attributes attributes;
  add_if(attributes, "class", classes);
  add_if(attributes, "data-column", column.key);
  add_if(attributes, "data-exact", cell.exact);
  add_if(attributes, "data-unit", cell.unit);
  add_if(attributes, "data-state", word(cell.state));
  return element("td", attributes, escaped_text(shown));
}

std::string head_html(const Table& table) {
  std::string cells;
  for (const Column& column : table.columns) {
    Attributes attributes{{"scope", "col"}};
    if (column.align == Align::right) attributes.push_back({"class", "right"});
    cells += element("th", attributes, escaped_text(column.name));
  }
  return element("thead", {}, element("tr", {}, cells)) + "\n";
}

std::string row_html(const Table& table, const std::vector<Cell>& row, std::size_t number) {
  std::string cells;
  for (std::size_t i = 0; i < row.size(); ++i) {
    // A cell too many has no column, and is shown all the same.
    cells += cell_html(i < table.columns.size() ? table.columns[i] : Column{}, row[i]);
  }
  return element("tr", {{"data-row", std::to_string(number)}}, cells) + "\n";
}

std::string entry_html(const LegendEntry& entry) {
  const std::string mark =
      entry.mark == LegendMark::event ? std::to_string(entry.number) : key_picture(entry);
  return element("li", {},
                 element("span", {{"class", "mark"}}, mark) +
                     element("span", {}, escaped_text(entry.words))) +
         "\n";
}

std::string axis_head(const ChartAxis& axis) {
  return element("th", {{"scope", "col"}, {"class", "right"}}, escaped_text(axis.name));
}

std::string point_html(const Chart& chart, const ChartPoint& point, std::size_t number) {
  std::string cells;
  for (const LongCell& cell : point_row(chart, point).cells) {
    Attributes attributes;
    if (!cell.exact.empty()) attributes.push_back({"class", "right figure"});
    add_if(attributes, "data-column", cell.column);
    add_if(attributes, "data-exact", cell.exact);
    add_if(attributes, "data-unit", cell.unit);
    add_if(attributes, "data-state", cell.state);
    cells += element("td", attributes, escaped_text(cell.shown));
  }
  return element("tr", {{"data-row", std::to_string(number)}}, cells) + "\n";
}

std::string points_html(const Chart& chart) {
  std::string rows;
  std::size_t number = 0;
  for (const ChartPoint& point : chart.points) rows += point_html(chart, point, ++number);
  const std::string head =
      axis_head(chart.x) + axis_head(chart.y) + element("th", {{"scope", "col"}}, "State");
  const std::string table = element(
      "table", {{"data-key", chart.key}},
      element("thead", {}, element("tr", {}, head)) + "\n" + element("tbody", {}, "\n" + rows));
  const std::string name = "All " + chart.points_name + " as a table";
  return element("details", {}, element("summary", {}, escaped_text(name)) + "\n" + table) + "\n";
}

}  // namespace

std::string html_table(const Table& table) {
  if (table.rows.empty() && !table.if_empty.empty()) {
    return element("p", {{"data-key", table.key}}, escaped_text(table.if_empty)) + "\n";
  }
  std::string rows;
  std::size_t number = 0;
  for (const std::vector<Cell>& row : table.rows) rows += row_html(table, row, ++number);
  const std::string head = has_head(table) ? head_html(table) : "";
  return element("table", {{"data-key", table.key}},
                 "\n" + head + element("tbody", {}, "\n" + rows) + "\n") +
         "\n";
}

std::string html_chart(const Chart& chart) {
  const std::string caption = element("strong", {}, escaped_text(chart.title)) + " " +
                              element("span", {}, escaped_text(chart.alt));
  std::string entries;
  for (const LegendEntry& entry : legend(chart)) entries += entry_html(entry);
  const bool is_tile = chart.size == ChartSize::tile;
  return element("figure", {{"class", is_tile ? "chart tile" : "chart"}},
                 "\n" + element("figcaption", {}, caption) + "\n" +
                     element("div", {{"class", "picture"}}, picture(chart)) + "\n" +
                     element("ul", {{"class", "key"}}, "\n" + entries) + "\n" +
                     points_html(chart)) +
         "\n";
}

}  // namespace document
