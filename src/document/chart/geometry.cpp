#include "document/chart/geometry.h"

#include <algorithm>
#include <numeric>

namespace document {
namespace {

// Events farther off than this share of the width would press the points together.
constexpr double near_share = 0.15;
// Room beside the first and last point, so that no mark stands on the axis.
constexpr double side_share = 0.02;

double width_of(Extent extent) { return extent.high - extent.low; }

double share_of(Extent extent, double at) { return (at - extent.low) / width_of(extent); }

double between(double from, double to, double share) { return from + (to - from) * share; }

Extent core_x(const Chart& chart) {
  const double first = chart.points.front().place.x.at;
  Extent extent{first, first};
  for (const ChartPoint& point : chart.points) extent = joined(extent, point.place.x.at);
  for (const ChartLine& line : chart.lines) {
    extent = joined(joined(extent, line.from.x.at), line.to.x.at);
  }
  for (const ChartBand& band : chart.bands) {
    for (const ChartBandAt& at : band.samples) extent = joined(extent, at.x.at);
  }
  return widened(extent);
}

Extent with_sides(Extent extent, double share) {
  const double side = share * width_of(extent);
  return {extent.low - side, extent.high + side};
}

// What the chart is about: all that must be seen at its true height.
Extent core_y(const Chart& chart) {
  std::optional<Extent> extent;
  const auto add = [&extent](double at) { extent = joined(extent.value_or(Extent{at, at}), at); };
  for (const ChartPoint& point : chart.points) {
    if (point.mark == ChartMark::counted) add(point.place.y.at);
  }
  for (const ChartLine& line : chart.lines) {
    add(line.from.y.at);
    add(line.to.y.at);
  }
  for (const ChartLevel& level : chart.levels) add(level.y.at);
  return widened(extent.value_or(Extent{chart.points.front().place.y.at,  //
                                        chart.points.front().place.y.at}));
}

// Ordered places, each pushed on by the one before it.
void push_apart(std::vector<double>& places, double gap) {
  for (std::size_t i = 1; i < places.size(); ++i) {
    places[i] = std::max(places[i], places[i - 1] + gap);
  }
}

}  // namespace

Extent x_extent(const Chart& chart) {
  const Extent core = core_x(chart);
  const Extent nearby = with_sides(core, near_share);
  Extent extent = core;
  for (const ChartEvent& event : chart.events) {
    if (beyond(nearby, event.x.at) == Beyond::inside) extent = joined(extent, event.x.at);
  }
  return extent;
}

Extent y_extent(const Chart& chart) {
  const Extent core = core_y(chart);
  const Extent widest = with_sides(core, 1.0);
  Extent extent = core;
  // A level stands a little inside, so that it is not taken for the frame.
  const double inside = 0.05 * width_of(core);
  for (const ChartLevel& level : chart.levels) {
    extent = joined(joined(extent, level.y.at - inside), level.y.at + inside);
  }
  const auto add = [&](double at) {
    extent = joined(extent, std::clamp(at, widest.low, widest.high));
  };
  for (const ChartPoint& point : chart.points) {
    // One far off stands at the edge wherever the edge is, so it needs no room.
    if (beyond(widest, point.place.y.at) == Beyond::inside) add(point.place.y.at);
  }
  for (const ChartBand& band : chart.bands) {
    for (const ChartBandAt& at : band.samples) {
      add(at.lower.at);
      add(at.upper.at);
    }
  }
  return extent;
}

Beside beside(const Chart& chart, const ChartEvent& event) {
  switch (beyond(x_extent(chart), event.x.at)) {
    case Beyond::above:
      return Beside::after;
    case Beyond::below:
      return Beside::before;
    case Beyond::inside:
      break;
  }
  return Beside::inside;
}

Beyond beyond(Extent extent, double at) {
  if (at > extent.high) return Beyond::above;
  return at < extent.low ? Beyond::below : Beyond::inside;
}

Frame frame_of(const Chart& chart, const Box& plot, Steps most) {
  const Extent covered = y_extent(chart);
  return {plot, tight_scale(with_sides(x_extent(chart), side_share), most.across),
          round_scale(covered, most.up), covered};
}

double x_on(const Frame& frame, double at) {
  const double share = std::clamp(share_of({frame.x.low, frame.x.high}, at), 0.0, 1.0);
  return between(frame.plot.left, frame.plot.right, share);
}

double y_on(const Frame& frame, double at) {
  const double share = std::clamp(share_of({frame.y.low, frame.y.high}, at), 0.0, 1.0);
  return between(frame.plot.bottom, frame.plot.top, share);
}

Spot point_on(const Frame& frame, const ChartPlace& place) {
  const Spot spot = spot_on(frame, place);
  switch (beyond(frame.covered, place.y.at)) {
    case Beyond::above:
      return {spot.x, frame.plot.top};
    case Beyond::below:
      return {spot.x, frame.plot.bottom};
    case Beyond::inside:
      break;
  }
  return spot;
}

Spot spot_on(const Frame& frame, const ChartPlace& place) {
  return {x_on(frame, place.x.at), y_on(frame, place.y.at)};
}

std::vector<Spot> held_within(const std::vector<Spot>& line, Extent extent) {
  std::vector<Spot> held;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (i > 0) {
      const Spot from = line[i - 1];
      const Spot to = line[i];
      std::vector<Spot> corners;
      for (const double edge : {extent.low, extent.high}) {
        if ((from.y < edge) == (to.y < edge) || from.y == edge || to.y == edge) continue;
        corners.push_back({between(from.x, to.x, (edge - from.y) / (to.y - from.y)), edge});
      }
      if (corners.size() == 2 && from.y > to.y) std::swap(corners[0], corners[1]);
      held.insert(held.end(), corners.begin(), corners.end());
    }
    held.push_back({line[i].x, std::clamp(line[i].y, extent.low, extent.high)});
  }
  return held;
}

BandEdges edges_on(const Frame& frame, const ChartBand& band) {
  const auto edge = [&](const ChartValue ChartBandAt::*side) {
    std::vector<Spot> line;
    for (const ChartBandAt& at : band.samples) line.push_back({at.x.at, (at.*side).at});
    line = held_within(line, {frame.y.low, frame.y.high});
    for (Spot& spot : line) spot = {x_on(frame, spot.x), y_on(frame, spot.y)};
    return line;
  };
  return {edge(&ChartBandAt::upper), edge(&ChartBandAt::lower)};
}

std::vector<double> spread(const std::vector<double>& wanted, double gap, Extent room) {
  std::vector<std::size_t> order(wanted.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return wanted[a] < wanted[b]; });
  if (wanted.size() > 1) {
    gap = std::min(gap, width_of(room) / static_cast<double>(wanted.size() - 1));
  }
  std::vector<double> places;
  for (const std::size_t i : order) places.push_back(std::clamp(wanted[i], room.low, room.high));
  push_apart(places, gap);
  // Whatever was pushed out of the room pushes back from its end.
  double limit = room.high;
  for (auto place = places.rbegin(); place != places.rend(); ++place) {
    *place = std::min(*place, limit);
    limit = *place - gap;
  }
  std::vector<double> result(wanted.size());
  for (std::size_t i = 0; i < order.size(); ++i) result[order[i]] = places[i];
  return result;
}

}  // namespace document
