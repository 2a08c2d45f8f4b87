#include "report/trend_chart.h"

#include "reckon/trend/doubles.h"
#include "reckon/trend/drawn.h"
#include "words/trends.h"
#include "words/words.h"

namespace report {

namespace {

using document::Chart;
using document::chart_value;
using reckon::trend::MarginPoint;
using reckon::trend::Segment;
using reckon::trend::Series;

constexpr std::size_t hours_places = 1;

// Rounded as all other figures of the trend are.
std::string tenths(auto degrees) { return quantity::say(reckon::trend::to_tenths(degrees)); }

document::ChartValue hours_value(const reckon::trend::DrawnAt& at) {
  return chart_value(at.hours, hours_places);
}

void add_points(const Segment& segment, Chart& chart) {
  for (const MarginPoint& point : segment.points) {
    if (!point.margin || point.engine_hours.is_unknown()) continue;
    const bool is_counted = point.flag == reckon::trend::Flag::counted;
    document::ChartPoint drawn;
    drawn.place.x = chart_value(point.hours, hours_places);
    drawn.place.y = {point.degrees, quantity::say(*point.margin)};
    drawn.mark = is_counted ? document::ChartMark::counted : document::ChartMark::flagged;
    drawn.reason = words::flag_text(point);
    chart.points.push_back(std::move(drawn));
  }
}

void add_lines(const Series& series, const Segment& segment, Chart& chart) {
  for (const auto& level : reckon::trend::drawn_levels(series, segment)) {
    document::ChartBand band{"95 % band of the line", {}};
    for (const auto& at : level) {
      band.samples.push_back(
          {hours_value(at), {at.low, tenths(at.low)}, {at.high, tenths(at.high)}});
    }
    const auto place = [](const reckon::trend::DrawnAt& at) {
      return document::ChartPlace{hours_value(at), {at.line, tenths(at.line)}};
    };
    chart.lines.push_back({place(level.front()), place(level.back())});
    chart.bands.push_back(std::move(band));
  }
}

void add_events(const Segment& segment, bool is_first, Chart& chart) {
  if (!is_first && segment.beginning != reckon::trend::Beginning::first_reading &&
      !segment.points.empty()) {
    chart.events.push_back(
        {chart_value(segment.points.front().hours, hours_places), words::began_text(segment)});
  }
  for (const auto& wash : segment.washes) {
    if (!wash.hours) continue;
    chart.events.push_back(
        {chart_value(*wash.hours, hours_places), "washed " + quantity::say_long(wash.day)});
  }
}

}  // namespace

std::optional<Chart> margin_chart(const Series& series, std::string key, document::ChartSize size) {
  Chart chart;
  chart.key = std::move(key);
  chart.size = size;
  chart.title = series.engine.serial.text + ", " + std::string(words::series_name(series.check));
  chart.points_name = "readings";
  chart.x = {"Engine hours", "h"};
  chart.y = {"Margin", "C"};
  const bool is_tile = size == document::ChartSize::tile;
  const std::size_t first = is_tile ? series.segments.size() - 1 : 0;
  for (std::size_t i = first; i < series.segments.size(); ++i) {
    add_points(series.segments[i], chart);
    add_lines(series, series.segments[i], chart);
    add_events(series.segments[i], i == first, chart);
  }
  if (chart.points.empty()) return std::nullopt;
  chart.alt = words::chart_text(series, chart.points.size());
  if (series.floor) {
    const std::string floor = quantity::say(*series.floor);
    chart.levels.push_back({{reckon::trend::in_degrees(*series.floor), floor}, "floor"});
  }
  return chart;
}

}  // namespace report
