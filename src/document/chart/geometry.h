#pragma once
// Where everything of a chart stands, in whatever unit a pen draws: the one geometry of all pens.

#include <optional>
#include <vector>

#include "document/chart/chart.h"
#include "document/chart/scale.h"

namespace document {

struct Spot {
  double x, y;
};

// top < bottom, as paper and screens count.
struct Box {
  double left, top, right, bottom;
};

// What the chart covers. Across: points, lines and bands, and events that are not far off. Up:
// counted points, lines and levels; bands and flagged points widen that by at most its own height
// on either side, so that one wild point or an open band cannot press the rest flat.
Extent x_extent(const Chart& chart);
Extent y_extent(const Chart& chart);

// Whether an event has its place on the chart, or is only said in words.
enum class Beside { inside, before, after };
Beside beside(const Chart& chart, const ChartEvent& event);

// Whether a value lies above or below what the chart covers. It is then drawn at the edge.
enum class Beyond { inside, above, below };
Beyond beyond(Extent extent, double at);

// A plot with its two scales.
struct Frame {
  Box plot;
  Scale x, y;
  Extent covered;  // upward, before rounding: the same for every pen
};

struct Steps {
  std::size_t across, up;
};

// The x scale ends a little outside its extent, the y scale at round figures.
Frame frame_of(const Chart& chart, const Box& plot, Steps most);

// Where coordinates stand in the frame; what lies beyond it is drawn at its edge.
double x_on(const Frame& frame, double at);
double y_on(const Frame& frame, double at);
Spot spot_on(const Frame& frame, const ChartPlace& place);

// Where a point stands: at the edge of the plot if it is beyond what the chart covers.
Spot point_on(const Frame& frame, const ChartPlace& place);

// The same line held within the extent: a stretch beyond it runs along its edge, with corners where
// the line crosses it.
std::vector<Spot> held_within(const std::vector<Spot>& line, Extent extent);

// The edges of a band as spots of the frame, from left to right.
struct BandEdges {
  std::vector<Spot> upper, lower;
};
BandEdges edges_on(const Frame& frame, const ChartBand& band);

// Places at least `gap` from each other and within the room, in the order of the wanted ones and
// as near to them as they can be. If they do not all fit, the gap shrinks.
std::vector<double> spread(const std::vector<double>& wanted, double gap, Extent room);

}  // namespace document
