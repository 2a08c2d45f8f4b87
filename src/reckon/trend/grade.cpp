#include "reckon/trend/grade.h"

#include <algorithm>
#include <cmath>
#include <ranges>

#include "quantity/expect.h"
#include "reckon/trend/student.h"

namespace reckon::trend {

namespace {

constexpr double weak_confidence = 0.95;
constexpr double clear_confidence = 0.995;
constexpr std::size_t most_readings_foretold = 10'000;

// Hours are exact outside this folder; in doubles 1229.3 - 1204.3 is a hair less than 25.
constexpr double rounding_hours = 1e-6;

struct Extent {
  double first;  // hours
  double last;   // hours
};

Extent extent_of(std::span<const Point> points) {
  if (points.empty()) return {0.0, 0.0};
  const auto [first, last] = std::ranges::minmax(points, {}, &Point::x);
  return {first.x, last.x};
}

// The readings come in any order; the last is the one with the most hours.
Point last_reading(std::span<const Point> points) {
  Point last = points.front();
  for (const Point& point : points) {
    if (point.x >= last.x) last = point;
  }
  return last;
}

// sxx after so many more readings have followed at the spacing: the two groups' own sums, and what
// the distance of their means adds.
double sxx_after(const Line& line, double last_x, double spacing, double more) {
  const double n = static_cast<double>(line.n);
  const double mean_of_new = last_x + spacing * (more + 1.0) / 2.0;
  const double within = spacing * spacing * more * (more * more - 1.0) / 12.0;
  const double apart = mean_of_new - line.x_mean;
  return line.sxx + within + apart * apart * n * more / (n + more);
}

Grade grade_of(const Evidence& evidence) {
  if (!evidence.direction) return Grade::cannot_tell;
  const bool is_clear =
      evidence.is_beyond_with_all && evidence.is_beyond_without_last && evidence.deciding.empty();
  return is_clear ? Grade::clear : Grade::weak;
}

Evidence weigh(std::span<const Point> points, const Line& line, double serial_correlation) {
  const Certainty weak{weak_confidence, serial_correlation};
  const Certainty clear{clear_confidence, serial_correlation};
  Evidence evidence{};
  evidence.line = line;
  evidence.slope = slope_interval(line, weak);
  evidence.direction = direction_shown(line, weak);
  evidence.deciding = deciding_readings(points, line, weak);

  const std::optional<Direction> now = direction_shown(line, clear);
  evidence.is_beyond_with_all = now.has_value();
  const Fit before = without(line, last_reading(points));
  const Line* one_reading_ago = std::get_if<Line>(&before);
  evidence.is_beyond_without_last =
      now && one_reading_ago != nullptr && direction_shown(*one_reading_ago, clear) == now;
  if (!evidence.direction) {
    evidence.more_readings = readings_until_shown(points, line, serial_correlation);
  }
  return evidence;
}

}  // namespace

Finding grade_points(std::span<const Point> points, double serial_correlation) {
  const Extent extent = extent_of(points);
  Finding finding{};
  finding.grade = Grade::too_few;
  finding.points = points.size();
  finding.span_hours = extent.last - extent.first;
  finding.has_points_enough = points.size() >= fewest_points;
  finding.has_span_enough = finding.span_hours + rounding_hours >= shortest_span_hours;
  if (!finding.has_points_enough || !finding.has_span_enough) return finding;

  const Fit fit = fit_line(points);
  const Line* line = std::get_if<Line>(&fit);
  EXPECT(line != nullptr);
  finding.evidence = weigh(points, *line, serial_correlation);
  finding.grade = grade_of(*finding.evidence);
  return finding;
}

std::optional<std::size_t> readings_until_shown(std::span<const Point> points, const Line& line,
                                                double serial_correlation) {
  EXPECT(points.size() == line.n);
  if (!(line.scatter > 0.0)) return std::nullopt;
  const Extent extent = extent_of(points);
  const double spacing = (extent.last - extent.first) / (static_cast<double>(line.n) - 1.0);
  const double error = widening(serial_correlation) * line.scatter;
  const auto is_hidden_after = [&](std::size_t more_readings) {
    const double more = static_cast<double>(more_readings);
    const double t = two_sided_t(weak_confidence, static_cast<double>(line.n) - 2.0 + more);
    return t * error >= telling_slope * std::sqrt(sxx_after(line, extent.last, spacing, more));
  };
  // Each further reading narrows the interval, so the numbers fall into hidden ones and the rest.
  const auto numbers = std::views::iota(std::size_t{0}, most_readings_foretold + 1);
  const auto found = std::ranges::partition_point(numbers, is_hidden_after);
  if (found == numbers.end()) return std::nullopt;
  return *found;
}

}  // namespace reckon::trend
