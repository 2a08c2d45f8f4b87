// reckon/trend/grade.h: how much a line of readings may be believed, graded, with the evidence for
// the grade. There is no grade for "steady": readings can show a loss, but never that there is
// none.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "reckon/trend/groups.h"
#include "reckon/trend/levels.h"
#include "reckon/trend/line.h"
#include "reckon/trend/mann_kendall.h"
#include "reckon/trend/theil_sen.h"

namespace reckon::trend {

// Below either of these no line is drawn. Each group after the first costs one reading more.
inline constexpr std::size_t fewest_points = 5;
inline constexpr double shortest_span_hours = 25.0;

// The serial correlation taken until enough readings are there to know it; to be said where used.
inline constexpr double stated_serial_correlation = 0.2;

// The loss a pilot is told about before it can be seen: 1 C per 100 h.
inline constexpr double telling_slope = 0.01;  // C per hour

enum class Grade {
  too_few,      // fewer than five points or a span of less than 25 h
  cannot_tell,  // zero slope is within the 95 % interval
  weak,         // it is not: so it goes with one steady engine in two or three at some time
  clear,  // beyond the 99.5 % interval, now and one reading ago, by no single reading's doing,
          // and Theil-Sen's 95 % interval says so too
};

// Whether the slopes of least squares and of Theil-Sen each lie within the other's 95 % interval.
// Apart, something other than even scatter is at work: a wild reading, a step, a bend.
enum class Agreement {
  agree,
  least_squares_apart,  // outside the interval of Theil-Sen
  theil_sen_apart,      // outside the interval of least squares
  both_apart,
};

struct Evidence {
  Line line;                           // of the newest group
  Interval slope;                      // C per hour, 95 %, widened
  std::optional<Direction> direction;  // which way, for weak and clear
  bool is_beyond_with_all;             // the 99.5 % interval leaves out zero
  bool is_beyond_without_last;         // so it did one reading ago, on the same side
  // Places, in the points given, of readings without which the 95 % interval answers otherwise. In
  // a line that cannot tell these are readings that hide a slope.
  std::vector<std::size_t> deciding;
  // Only when it cannot tell; see readings_until_shown.
  std::optional<std::size_t> more_readings;
  TheilSen theil_sen;        // 95 %, widened
  MannKendall mann_kendall;  // widened
  Agreement agreement;
  std::vector<Line> levels;  // of each group that has readings; the newest last
  std::vector<Gain> gains;   // from each of them to the next, 95 %, widened
};

struct Finding {
  Grade grade = Grade::too_few;
  std::size_t points = 0;
  double span_hours = 0.0;  // of several groups, the sum of what each spans
  bool has_points_enough = false;
  bool has_span_enough = false;
  std::optional<Evidence> evidence;  // none when too few
};

// Grades the points, given in any order; of points with the same x the one given last is the last.
// Every interval is widened for the serial correlation.
Finding grade_points(std::span<const Point> points, double serial_correlation);

// The same for readings in groups, in the order of time, that share a slope and not a level. Groups
// without readings are passed over. Deciding readings are counted through all groups.
Finding grade_points(Groups groups, double serial_correlation);

// The smallest number of further readings, at the mean spacing so far and with the same scatter,
// after which half the widened 95 % slope interval is less than telling_slope. It may be 0. None
// when the readings show no scatter at all, since the gauge's steps then hide it, and none when it
// is more than ten thousand. `line` is the fit of `points`.
std::optional<std::size_t> readings_until_shown(std::span<const Point> points, const Line& line,
                                                double serial_correlation);

}  // namespace reckon::trend
