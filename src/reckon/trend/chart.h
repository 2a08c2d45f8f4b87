// reckon/trend/chart.h: a maker's chart as typed in by its user: the temperature allowed at a
// torque, a pressure altitude and an outside air. Between the typed points it is read linearly on
// all three axes; outside them, or next to a point that was not typed, it has no value. Nothing is
// extended, clamped or rounded to a near line.
//
// The arithmetic does not ask what the axes are called: for a chart turned round, that gives the
// least torque at a temperature, the first axis is the temperature and the value the torque.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace reckon::trend {

// A point of the chart, in the order of ChartAxis.
struct ChartPlace {
  double torque;             // percent, or as the chart has it
  double pressure_altitude;  // ft
  double outside;            // C
  friend bool operator==(const ChartPlace&, const ChartPlace&) = default;
};

enum class ChartAxis { torque, pressure_altitude, outside_air };

struct ChartRow {
  struct Allowed {
    double torque;
    double value;  // C
  };
  double pressure_altitude;  // ft
  double outside;            // C
  std::vector<Allowed> allowed;
};

// Why rows make no chart.
struct SamePlaceTwice {
  ChartPlace place;
  double first;
  double second;
};
struct NoPoints {};
using ChartFault = std::variant<SamePlaceTwice, NoPoints>;

// The grid: each axis rises, values by [torque][altitude][outside], none where nothing was typed.
struct Chart {
  std::array<std::vector<double>, 3> axes;  // in the order of ChartAxis
  std::vector<std::optional<double>> values;
};

// The chart of the rows, in any order; all figures are finite. The same point twice with the same
// value is one point; with two values it is a fault, and the two are named in rising order.
std::variant<Chart, ChartFault> make_chart(std::span<const ChartRow> rows);

// One axis on which a place lies outside the chart.
struct AxisOutside {
  ChartAxis axis;
  double given;
  double out_by;  // more than 0, in the axis' unit
  double nearest_allowed;
};

// The chart has no value there: the place is outside on each of these axes.
struct OutsideChart {
  std::vector<AxisOutside> axes;
};
// The points that would be needed there and were not typed.
struct ChartHole {
  std::vector<ChartPlace> missing;
};
using ChartAnswer = std::variant<double, OutsideChart, ChartHole>;

// The value allowed at a place, trilinear between the points about it, edges included. Points that
// would weigh nothing are not asked for, so a place on a face has one value from either side, and
// an axis with one value is met at exactly that value. The place is finite.
ChartAnswer allowed_at(const Chart& chart, const ChartPlace& place);

}  // namespace reckon::trend
