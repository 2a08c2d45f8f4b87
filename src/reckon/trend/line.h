// reckon/trend/line.h: a straight line through readings by least squares, and how far it can be
// trusted. x is engine hours, y is degrees Celsius of margin; nothing here depends on that.
// Formulas: docs/reckoning.md; certified figures to hold them against: NIST StRD, set Norris.
#pragma once

#include <cstddef>
#include <limits>
#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace reckon::trend {

// The rounding of one double, as a share of it.
inline constexpr double epsilon = std::numeric_limits<double>::epsilon();

inline double squared(double value) { return value * value; }

struct Point {
  double x;  // hours
  double y;  // C
};

// One line; or, of several with one slope (levels.h), the line of one level: then n and the means
// are that level's own, and the rest comes from all levels together.
struct Line {
  std::size_t n;     // points in it
  double x_mean;     // hours
  double y_mean;     // C
  double sxx;        // sum of squared distances of the x from their mean, hours squared
  double syy;        // the same of the y, C squared
  double slope;      // C per hour
  double intercept;  // C at x = 0
  double residual_sum_of_squares;  // C squared
  double scatter;                  // C, one standard deviation of a reading about the line
  double slope_error;              // C per hour, standard error, not widened
  double intercept_error;          // C, standard error, not widened
  std::optional<double> r2;        // share of syy that the line takes up; none when syy is 0
  std::size_t degrees_of_freedom;  // of the scatter, one or more: n - 2 for one line
};

enum class Refusal { fewer_than_three_points, no_spread_in_x };

using Fit = std::variant<Line, Refusal>;

struct Interval {
  double low;
  double high;
};

enum class Direction { falling, rising };

// How sure a band is to be, and what is known of the readings hanging together.
struct Certainty {
  double confidence;          // two-sided, between 0 and 1, such as 0.95
  double serial_correlation;  // lag one, below 1; at 0 the bands are the textbook ones
};

// The mean of one or more points, taken from the first point on: readings that are all alike then
// have exactly themselves as mean, and a constant series has exactly no slope.
Point mean_of(std::span<const Point> points);

// The line of least squares, centred. The points may stand in any order; each is finite.
Fit fit_line(std::span<const Point> points);

// Everything that follows once n, the means, sxx, syy, slope, residuals and degrees of freedom of a
// line are known.
Line completed(Line line);

// The line without one of the points that are in it, reckoned from the line alone. Equal to a new
// fit but for rounding. With the only point of a level that level goes, and the rest of the fit
// stays as it is: the line is returned as it was.
Fit without(const Line& line, Point one_of_its_points);

// The factor by which every band is wider because neighbouring readings resemble each other:
// sqrt((1 + r) / (1 - r)). A negative r never makes a band narrower: 1.
double widening(double serial_correlation);

// The line's own value at x.
double value_at(const Line& line, double x);

// How much a reading at x weighs in its own fitted value, 1/n to 1 for a point of the line.
double leverage(const Line& line, double x);

// Where the line itself may run at x.
Interval mean_band(const Line& line, double x, Certainty certainty);

// Where one new reading at x may fall. Always wider than mean_band.
Interval new_reading_band(const Line& line, double x, Certainty certainty);

// What the slope may be, C per hour.
Interval slope_interval(const Line& line, Certainty certainty);

// Which way the line goes, if the slope interval leaves out zero; none if zero is within it.
std::optional<Direction> direction_shown(const Line& line, Certainty certainty);

// t times the widening: what one standard error is multiplied by to give half a band.
double errors_wide(const Line& line, Certainty certainty);

// The places, in `points`, of readings that decide alone: leave out that one, and direction_shown
// gives another answer, or no line is left. `line` is the fit of `points`.
std::vector<std::size_t> deciding_readings(std::span<const Point> points, const Line& line,
                                           Certainty certainty);

}  // namespace reckon::trend
