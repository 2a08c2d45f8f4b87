#pragma once
// A chart as plain values: what was measured against what, and what was concluded from it.
// This folder alone may use double on this floor: where a mark stands on paper is no amount. What
// machines read of a chart is always the exact text beside the coordinate.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace document {

// A coordinate, and its digits for people and machines (12.5), without the unit of its axis.
struct ChartValue {
  double at = 0;
  std::string exact;
};

// The value with that many digits behind the point, exact and drawn alike. What is not finite has
// no digits, which faults() tells.
ChartValue chart_value(double at, std::size_t places);

struct ChartAxis {
  std::string name;  // "Margin"
  std::string unit;  // "C"; nothing for bare numbers
};

// A flagged point is kept and shown, and left out of whatever was worked out.
enum class ChartMark { counted, flagged };

// "counted" or "flagged".
std::string_view word(ChartMark mark);

struct ChartPlace {
  ChartValue x, y;
};

struct ChartPoint {
  ChartPlace place;
  ChartMark mark = ChartMark::counted;
  std::string reason;  // why it is flagged: "not stabilised"
};

// A fitted line stands over points only; one that goes ahead of them is drawn otherwise.
enum class ChartReach { fitted, ahead };

struct ChartLine {
  ChartPlace from, to;
  ChartReach reach = ChartReach::fitted;
};

struct ChartBandAt {
  ChartValue x, lower, upper;
};

struct ChartBand {
  std::string label;  // "95 % band of the line"
  std::vector<ChartBandAt> samples;
};

// A horizontal one; "floor" is read as "floor 10 C", so the label does not hold the figure.
struct ChartLevel {
  ChartValue y;
  std::string label;
};

// A vertical one: "washed 11 March 2026".
struct ChartEvent {
  ChartValue x;
  std::string label;
};

// A tile is one of several small charts that stand side by side to be compared.
enum class ChartSize { full, tile };

struct Chart {
  std::string key;  // names the chart to machines; unique among tables and charts
  std::string title;
  std::string alt;                     // one sentence that says what it shows
  std::string points_name = "points";  // what the points are, as a plural: "readings"
  ChartAxis x, y;
  std::vector<ChartPoint> points;
  std::vector<ChartLine> lines;  // one a segment; the gaps between them stay empty
  std::vector<ChartBand> bands;
  std::vector<ChartLevel> levels;
  std::vector<ChartEvent> events;
  ChartSize size = ChartSize::full;
};

// "Margin, C": what stands beside the axis.
std::string axis_words(const ChartAxis& axis);

// "12.5 C": the digits with the unit of the axis.
std::string figure(const ChartValue& value, const ChartAxis& axis);

// What is wrong with the building of a chart, said for developers: no points, no title, no
// sentence, a name that is missing, an odd key, digits that are no number or say another value
// than is drawn, a coordinate that is not finite or beyond 1e12, a flagged point without a reason,
// a fitted line or a band that runs backward or past the points, a band upside down.
std::vector<std::string> faults(const Chart& chart);

}  // namespace document
