#include "document/chart/picture.h"

#include "document/chart/shapes.h"

namespace document {
namespace {

// Letters stand this far below their middle.
constexpr double baseline = 5;

// Many points are drawn smaller, so that they stay apart.
double radius_for(const Chart& chart) {
  const bool is_tile = chart.size == ChartSize::tile;
  const std::size_t count = chart.points.size() * (is_tile ? 4 : 1);
  if (count > 400) return 2.2;
  return count > 120 ? 3 : 4;
}

std::string points_at(const Chart& chart, const Frame& frame, ChartMark mark) {
  std::string result;
  const double radius = radius_for(chart);
  for (const ChartPoint& point : chart.points) {
    if (point.mark != mark) continue;
    const Spot spot = point_on(frame, point.place);
    const Beyond where = beyond(frame.covered, point.place.y.at);
    const std::string shape =
        mark == ChartMark::counted ? counted_mark(spot, radius) : flagged_mark(spot, radius, where);
    std::string words = figure(point.place.y, chart.y) + " at " + figure(point.place.x, chart.x);
    if (!point.reason.empty()) words += ", " + point.reason;
    result += element("g",
                      {{"data-x", point.place.x.exact},
                       {"data-y", point.place.y.exact},
                       {"data-state", std::string(word(mark))}},
                      element("title", {}, escaped(words)) + shape);
  }
  return result;
}

std::string grid_lines(const Layout& layout) {
  const Box& plot = layout.frame.plot;
  std::string result;
  for (const Tick& tick : layout.frame.y.ticks) {
    const double y = y_on(layout.frame, tick.at);
    result += plain_stroke({plot.left, y}, {plot.right, y}, grid_grey);
  }
  return result;
}

std::string axes(const Layout& layout) {
  const Box& plot = layout.frame.plot;
  std::string result;
  for (const Tick& tick : layout.frame.y.ticks) {
    const double y = y_on(layout.frame, tick.at);
    result += lettering({plot.left - 8, y + baseline}, tick.words, {Anchor::end});
  }
  for (const Tick& tick : layout.frame.x.ticks) {
    const double x = x_on(layout.frame, tick.at);
    result += plain_stroke({x, plot.bottom}, {x, plot.bottom + 5}, edge);
    result += lettering({x, plot.bottom + 20}, tick.words, {Anchor::middle});
  }
  result += plain_stroke({plot.left, plot.top}, {plot.left, plot.bottom}, edge);
  return result + plain_stroke({plot.left, plot.bottom}, {plot.right, plot.bottom}, edge);
}

std::string axis_names(const Layout& layout) {
  std::string result;
  double y = letter_height;
  for (const std::string& words : layout.y_words) {
    result += lettering({0, y}, words, {Anchor::start, Weight::plain, muted});
    y += line_height;
  }
  y = layout.frame.plot.bottom + 41;
  for (const std::string& words : layout.x_words) {
    result += lettering({layout.frame.plot.right, y}, words, {Anchor::end, Weight::plain, muted});
    y += line_height;
  }
  return result;
}

std::string event_marks(const Layout& layout) {
  std::string result;
  for (const EventLabel& label : layout.events) {
    const double middle = label_middle(layout, label.row);
    result += event_stroke({label.x, middle - 7}, {label.x, layout.frame.plot.bottom});
    result += lettering({label.left, middle + baseline}, label.words, {});
  }
  return result;
}

std::string level_marks(const Chart& chart, const Layout& layout) {
  std::string result;
  const Box& plot = layout.frame.plot;
  for (const ChartLevel& level : chart.levels) {
    const double y = y_on(layout.frame, level.y.at);
    result += level_stroke({plot.left, y}, {plot.right, y});
  }
  for (const LevelName& name : layout.levels) {
    result +=
        lettering({plot.right + 6, name.y + baseline}, name.words, {Anchor::start, Weight::strong});
  }
  return result;
}

std::string lines_on(const Chart& chart, const Frame& frame) {
  std::string result;
  for (const ChartLine& line : chart.lines) {
    const Spot from = spot_on(frame, line.from);
    const Spot to = spot_on(frame, line.to);
    const bool is_fitted = line.reach == ChartReach::fitted;
    result += is_fitted ? fitted_stroke(from, to) : ahead_stroke(from, to);
  }
  return result;
}

std::string id_of(const Chart& chart, std::string_view part) {
  return "chart-" + chart.key + "-" + std::string(part);
}

std::string band_key(Spot middle) {
  const auto edge_at = [&](double y) {
    return std::vector<Spot>{{middle.x - 12, middle.y + y}, {middle.x + 12, middle.y + y}};
  };
  return band_area({edge_at(-5), edge_at(5)});
}

}  // namespace

std::string drawing(const Chart& chart, const Layout& layout) {
  std::string bands;
  for (const ChartBand& band : chart.bands) bands += band_area(edges_on(layout.frame, band));
  // A line is narrower than any point, so that it hides none.
  return grid_lines(layout) + bands + axes(layout) + axis_names(layout) + event_marks(layout) +
         level_marks(chart, layout) + points_at(chart, layout.frame, ChartMark::counted) +
         lines_on(chart, layout.frame) + points_at(chart, layout.frame, ChartMark::flagged);
}

std::string described(const Chart& chart) {
  return element("title", {{"id", id_of(chart, "title")}}, escaped(chart.title)) +
         element("desc", {{"id", id_of(chart, "desc")}}, escaped(chart.alt));
}

Attributes svg_attributes(double width, double height) {
  return {{"xmlns", "http://www.w3.org/2000/svg"},
          {"viewBox", "0 0 " + length(width) + " " + length(height)},
          {"font-family", std::string(typeface)},
          {"font-size", length(letter_height)},
          {"fill", std::string(ink)}};
}

std::string picture(const Chart& chart) {
  const Layout layout = layout_of(chart);
  Attributes attributes = svg_attributes(layout.width, layout.height);
  attributes.push_back({"role", "img"});
  attributes.push_back({"aria-labelledby", id_of(chart, "title") + " " + id_of(chart, "desc")});
  return element("svg", attributes, described(chart) + drawing(chart, layout));
}

std::string key_mark(const LegendEntry& entry, Spot middle) {
  const Spot left{middle.x - 12, middle.y};
  const Spot right{middle.x + 12, middle.y};
  switch (entry.mark) {
    case LegendMark::counted:
      return counted_mark(middle, 4);
    case LegendMark::flagged:
      return flagged_mark(middle, 4, Beyond::inside);
    case LegendMark::line:
      return fitted_stroke(left, right);
    case LegendMark::ahead:
      return ahead_stroke(left, right);
    case LegendMark::band:
      return band_key(middle);
    case LegendMark::level:
      return level_stroke({left.x, middle.y}, {right.x + 8, middle.y});
    case LegendMark::event:
      return lettering({middle.x, middle.y + baseline}, std::to_string(entry.number),
                       {Anchor::middle});
    case LegendMark::absent:
      break;
  }
  return "";
}

std::string key_picture(const LegendEntry& entry) {
  Attributes attributes = svg_attributes(36, 16);
  attributes.push_back({"aria-hidden", "true"});
  return element("svg", attributes, key_mark(entry, {14, 8}));
}

}  // namespace document
