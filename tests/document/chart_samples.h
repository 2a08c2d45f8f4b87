#pragma once
// Charts that several tests look at. Invented, like all engines here.

#include <cstddef>
#include <random>
#include <string>

#include "document/document.h"

namespace document_test {

using document::chart_value;

inline document::ChartPoint counted(double x, double y) {
  return {{chart_value(x, 1), chart_value(y, 1)}, document::ChartMark::counted, ""};
}

inline document::ChartPoint flagged(double x, double y, std::string reason) {
  return {{chart_value(x, 1), chart_value(y, 1)}, document::ChartMark::flagged, std::move(reason)};
}

// A chart with its words and axes and nothing on it yet.
inline document::Chart bare_chart() {
  document::Chart chart;
  chart.key = "margin";
  chart.title = "Temperature margin of engine E-1001";
  chart.alt = "The margin falls by 4.0 C per 100 h; it may reach the floor from 1480 h on.";
  chart.points_name = "readings";
  chart.x = {"Engine hours", "h"};
  chart.y = {"Margin", "C"};
  return chart;
}

// Six readings of which one is flagged, a line with its band, a floor and a wash.
inline document::Chart small_chart() {
  document::Chart chart = bare_chart();
  chart.points = {counted(1200, 30.5), counted(1225, 29.0), flagged(1240, 18.0, "not stabilised"),
                  counted(1250, 28.5), counted(1275, 27.0), counted(1300, 26.5)};
  chart.lines = {{{chart_value(1200, 1), chart_value(30.3, 1)},
                  {chart_value(1300, 1), chart_value(26.3, 1)},
                  document::ChartReach::fitted}};
  chart.bands = {{"95 % band of the line", {}}};
  for (int step = 0; step <= 4; ++step) {
    const double x = 1200 + 25.0 * step;
    const double middle = 30.3 - 1.0 * step;
    const double half = 0.8 + 0.3 * (step - 2) * (step - 2);
    chart.bands[0].samples.push_back(
        {chart_value(x, 1), chart_value(middle - half, 2), chart_value(middle + half, 2)});
  }
  chart.levels = {{chart_value(10, 0), "floor"}};
  chart.events = {{chart_value(1245, 1), "washed 11 March 2026"}};
  return chart;
}

// Many readings in segments between washes, every 40th flagged, with lines of their own.
inline document::Chart large_chart(std::size_t count, std::size_t washes) {
  document::Chart chart = bare_chart();
  std::mt19937 engine(7);
  const auto noise = [&engine] {
    return static_cast<double>(engine() % 2001) / 500.0 - 2.0 + static_cast<double>(engine() % 3);
  };
  const double step = 600.0 / static_cast<double>(count);
  for (std::size_t i = 0; i < count; ++i) {
    const double x = 1000 + step * static_cast<double>(i);
    const double y = 42 - 0.03 * (x - 1000) + noise();
    chart.points.push_back(i % 40 == 39 ? flagged(x, y - 9, "bleed open") : counted(x, y));
  }
  const double last = chart.points.back().place.x.at;
  const double wide = (last - 1000) / static_cast<double>(washes + 1);
  for (std::size_t i = 0; i <= washes; ++i) {
    const double from = 1000 + wide * static_cast<double>(i);
    const double to = from + wide * 0.97;
    chart.lines.push_back({{chart_value(from, 3), chart_value(42 - 0.03 * (from - 1000), 2)},
                           {chart_value(to, 3), chart_value(42 - 0.03 * (to - 1000), 2)},
                           document::ChartReach::fitted});
    if (i == 0) continue;
    chart.events.push_back({chart_value(from, 1), "compressor washed, day " + std::to_string(i)});
  }
  chart.levels = {{chart_value(10, 0), "floor"}};
  return chart;
}

inline document::Document with(document::Chart chart) {
  document::Document document{"Margins of ZZ-KIT", {"As of 4 March 2026."}, {}};
  document.blocks = {std::move(chart)};
  return document;
}

}  // namespace document_test
