#include "reckon/trend/line.h"

#include <algorithm>
#include <cmath>

#include "quantity/expect.h"
#include "reckon/trend/student.h"

namespace reckon::trend {

namespace {

Interval around(double middle, double half_width) {
  return {middle - half_width, middle + half_width};
}

}  // namespace

Point mean_of(std::span<const Point> points) {
  const Point first = points.front();
  Point sum{0.0, 0.0};
  for (const Point& point : points) {
    sum.x += point.x - first.x;
    sum.y += point.y - first.y;
  }
  const double n = static_cast<double>(points.size());
  return {first.x + sum.x / n, first.y + sum.y / n};
}

Line completed(Line line) {
  const double n = static_cast<double>(line.n);
  line.intercept = line.y_mean - line.slope * line.x_mean;
  line.scatter =
      std::sqrt(line.residual_sum_of_squares / static_cast<double>(line.degrees_of_freedom));
  line.slope_error = line.scatter / std::sqrt(line.sxx);
  line.intercept_error = line.scatter * std::sqrt(1.0 / n + line.x_mean * line.x_mean / line.sxx);
  line.r2.reset();
  if (line.syy > 0.0) line.r2 = 1.0 - line.residual_sum_of_squares / line.syy;
  return line;
}

Fit fit_line(std::span<const Point> points) {
  for (const Point& point : points) EXPECT(std::isfinite(point.x) && std::isfinite(point.y));
  if (points.size() < 3) return Refusal::fewer_than_three_points;
  const Point mean = mean_of(points);
  Line line{};
  line.n = points.size();
  line.degrees_of_freedom = line.n - 2;
  line.x_mean = mean.x;
  line.y_mean = mean.y;
  double sxy = 0.0;
  for (const Point& point : points) {
    line.sxx += squared(point.x - mean.x);
    line.syy += squared(point.y - mean.y);
    sxy += (point.x - mean.x) * (point.y - mean.y);
  }
  if (!(line.sxx > 0.0)) return Refusal::no_spread_in_x;
  line.slope = sxy / line.sxx;
  for (const Point& point : points) {
    line.residual_sum_of_squares += squared(point.y - mean.y - line.slope * (point.x - mean.x));
  }
  return completed(line);
}

Fit without(const Line& line, Point one_of_its_points) {
  if (line.n == 1) return line;
  if (line.degrees_of_freedom < 2) return Refusal::fewer_than_three_points;
  const double n = static_cast<double>(line.n);
  const double dx = one_of_its_points.x - line.x_mean;
  const double dy = one_of_its_points.y - line.y_mean;
  const double residual = dy - line.slope * dx;
  const double own_share = 1.0 - leverage(line, one_of_its_points.x);
  // With the only point that gives x its spread, the line goes; what is left then is rounding.
  if (own_share <= n * n * epsilon) return Refusal::no_spread_in_x;
  Line rest = line;
  rest.n = line.n - 1;
  rest.degrees_of_freedom = line.degrees_of_freedom - 1;
  rest.x_mean = line.x_mean - dx / (n - 1.0);
  rest.y_mean = line.y_mean - dy / (n - 1.0);
  rest.sxx = line.sxx * own_share * n / (n - 1.0);
  rest.syy = std::max(0.0, line.syy - dy * dy * n / (n - 1.0));
  rest.slope = line.slope - dx * residual / (line.sxx * own_share);
  // A difference of two nearly equal sums is known no better than their rounding. Taken as zero it
  // would make the rest look free of scatter, and a slope of rounding size would look certain.
  const double rounding = 4.0 * n * epsilon * line.residual_sum_of_squares;
  rest.residual_sum_of_squares =
      std::max(rounding, line.residual_sum_of_squares - residual * residual / own_share);
  return completed(rest);
}

double widening(double serial_correlation) {
  EXPECT(serial_correlation < 1.0);
  const double r = std::max(0.0, serial_correlation);
  return std::sqrt((1.0 + r) / (1.0 - r));
}

double errors_wide(const Line& line, Certainty certainty) {
  return two_sided_t(certainty.confidence, static_cast<double>(line.degrees_of_freedom)) *
         widening(certainty.serial_correlation);
}

double value_at(const Line& line, double x) { return line.y_mean + line.slope * (x - line.x_mean); }

double leverage(const Line& line, double x) {
  return 1.0 / static_cast<double>(line.n) + squared(x - line.x_mean) / line.sxx;
}

Interval mean_band(const Line& line, double x, Certainty certainty) {
  const double error = line.scatter * std::sqrt(leverage(line, x));
  return around(value_at(line, x), errors_wide(line, certainty) * error);
}

Interval new_reading_band(const Line& line, double x, Certainty certainty) {
  const double error = line.scatter * std::sqrt(1.0 + leverage(line, x));
  return around(value_at(line, x), errors_wide(line, certainty) * error);
}

Interval slope_interval(const Line& line, Certainty certainty) {
  return around(line.slope, errors_wide(line, certainty) * line.slope_error);
}

std::optional<Direction> direction_shown(const Line& line, Certainty certainty) {
  const Interval slope = slope_interval(line, certainty);
  if (slope.high < 0.0) return Direction::falling;
  if (slope.low > 0.0) return Direction::rising;
  return std::nullopt;
}

std::vector<std::size_t> deciding_readings(std::span<const Point> points, const Line& line,
                                           Certainty certainty) {
  EXPECT(points.size() == line.n);
  const std::optional<Direction> shown = direction_shown(line, certainty);
  std::vector<std::size_t> deciding;
  for (std::size_t place = 0; place < points.size(); ++place) {
    const Fit rest = without(line, points[place]);
    const Line* still = std::get_if<Line>(&rest);
    if (still == nullptr || direction_shown(*still, certainty) != shown) deciding.push_back(place);
  }
  return deciding;
}

}  // namespace reckon::trend
