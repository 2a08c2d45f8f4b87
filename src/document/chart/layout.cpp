#include "document/chart/layout.h"

#include <algorithm>
#include <cmath>

#include "document/chart/legend.h"
#include "document/chart/letters.h"
#include "text/visible.h"

namespace document {
namespace {

constexpr double full_plot = 270;
constexpr double tile_plot = 100;
constexpr double bottom_figures = 26;  // the figures of the x axis with their ticks
constexpr double margin_gap = 10;
constexpr double least_right = 24;
constexpr std::size_t most_level_columns = 16;
constexpr std::size_t most_event_columns = 26;
constexpr std::size_t most_event_rows = 4;

double words_width(std::string_view words) { return static_cast<double>(drawn_width(words)); }

double widest_of(const Scale& scale) {
  double widest = 0;
  for (const Tick& tick : scale.ticks) widest = std::max(widest, words_width(tick.words));
  return widest;
}

std::string level_words(const Chart& chart, const ChartLevel& level) {
  const std::string words = level.label + " " + figure(level.y, chart.y);
  return shortened(text::visible_line(words), most_level_columns);
}

// As many steps across as leave their figures apart.
Frame fitting_frame(const Chart& chart, const Box& plot) {
  constexpr double between_figures = 18;
  const bool is_full = chart.size == ChartSize::full;
  Steps most = is_full ? Steps{8, 6} : Steps{3, 3};
  for (;; --most.across) {
    const Frame frame = frame_of(chart, plot, most);
    if (most.across == 1 || frame.x.ticks.size() < 2) return frame;
    const double apart = x_on(frame, frame.x.ticks[1].at) - x_on(frame, frame.x.ticks[0].at);
    if (apart >= widest_of(frame.x) + between_figures) return frame;
  }
}

double left_margin(const Chart& chart) {
  return widest_of(fitting_frame(chart, {0, 0, 1, 1}).y) + margin_gap;
}

double right_margin(const Chart& chart) {
  double widest = least_right;
  if (chart.size == ChartSize::tile) return widest;
  for (const ChartLevel& level : chart.levels) {
    const double wide = bold_widening * words_width(level_words(chart, level));
    widest = std::max(widest, wide + margin_gap);
  }
  return widest;
}

void place_events(const Chart& chart, Layout& layout) {
  const bool is_full = chart.size == ChartSize::full;
  std::vector<EventName> names;
  for (const ChartEvent* event : numbered_events(chart)) {
    names.push_back(
        {names.size() + 1, x_on(layout.frame, event->x.at), text::visible_line(event->label)});
  }
  const LabelRoom room{layout.width, 4, drawn_width, is_full ? most_event_columns : 0,
                       most_event_rows};
  layout.events = placed_labels(names, room);
}

void place_levels(const Chart& chart, Layout& layout) {
  if (chart.size == ChartSize::tile) return;
  std::vector<double> wanted;
  for (const ChartLevel& level : chart.levels) wanted.push_back(y_on(layout.frame, level.y.at));
  const Box& plot = layout.frame.plot;
  const std::vector<double> places = spread(wanted, line_height, {plot.top, plot.bottom});
  for (std::size_t i = 0; i < places.size(); ++i) {
    layout.levels.push_back({places[i], level_words(chart, chart.levels[i])});
  }
}

}  // namespace

Layout layout_of(const Chart& chart) {
  const bool is_full = chart.size == ChartSize::full;
  Layout layout{};
  layout.width = is_full ? full_width : tile_width;
  layout.y_words = boxed(axis_words(chart.y), layout.width);
  layout.x_words = boxed(axis_words(chart.x), layout.width);
  Box plot{left_margin(chart), 0, layout.width - right_margin(chart), 1};
  layout.frame = fitting_frame(chart, plot);
  place_events(chart, layout);
  const auto rows = static_cast<double>(layout.y_words.size() + rows_of(layout.events));
  plot.top = rows * line_height + margin_gap;
  plot.bottom = plot.top + (is_full ? full_plot : tile_plot);
  layout.frame.plot = plot;
  place_levels(chart, layout);
  layout.height =
      plot.bottom + bottom_figures + line_height * static_cast<double>(layout.x_words.size());
  return layout;
}

double label_middle(const Layout& layout, std::size_t row) {
  return layout.frame.plot.top - margin_gap / 2 - line_height * (static_cast<double>(row) + 0.5);
}

}  // namespace document
