#include "reckon/trend/grade.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "quantity/expect.h"
#include "reckon/trend/student.h"

namespace reckon::trend {

namespace {

constexpr double weak_confidence = 0.95;
constexpr double clear_confidence = 0.995;
constexpr std::size_t most_readings_foretold = 10'000;

// Hours are exact outside this folder; in doubles 1229.3 - 1204.3 is a hair less than 25.
constexpr double rounding_hours = 1e-6;

// What Theil-Sen and least squares may differ by through rounding, as a share of the slope.
constexpr double rounding_share = 1e-9;

double span_of(const Group& group) {
  const auto [first, last] = std::ranges::minmax(group, {}, &Point::x);
  return last.x - first.x;
}

// The readings come in any order; the last is the one with the most hours.
Point last_reading(std::span<const Point> points) {
  Point last = points.front();
  for (const Point& point : points) {
    if (point.x >= last.x) last = point;
  }
  return last;
}

// Where further readings are put down: from the last one on, at the mean spacing so far.
struct Ahead {
  double last;     // hours
  double spacing;  // hours
};

Ahead ahead_of(std::span<const Point> points) {
  const auto [first, last] = std::ranges::minmax(points, {}, &Point::x);
  return {last.x, (last.x - first.x) / (static_cast<double>(points.size()) - 1.0)};
}

// sxx after so many more readings have followed at the spacing: the two groups' own sums, and what
// the distance of their means adds.
double sxx_after(const Line& line, const Ahead& ahead, double more) {
  const double n = static_cast<double>(line.n);
  const double mean_of_new = ahead.last + ahead.spacing * (more + 1.0) / 2.0;
  const double within = ahead.spacing * ahead.spacing * more * (more * more - 1.0) / 12.0;
  const double apart = mean_of_new - line.x_mean;
  return line.sxx + within + apart * apart * n * more / (n + more);
}

std::optional<std::size_t> readings_ahead(const Line& line, const Ahead& ahead,
                                          double serial_correlation) {
  if (!(line.scatter > 0.0)) return std::nullopt;
  const double error = widening(serial_correlation) * line.scatter;
  const double degrees = static_cast<double>(line.degrees_of_freedom);
  const auto is_hidden_after = [&](std::size_t more_readings) {
    const double more = static_cast<double>(more_readings);
    const double t = two_sided_t(weak_confidence, degrees + more);
    return t * error >= telling_slope * std::sqrt(sxx_after(line, ahead, more));
  };
  // Each further reading narrows the interval, so the numbers fall into hidden ones and the rest.
  std::size_t shown = most_readings_foretold + 1;
  for (std::size_t first = 0; first < shown;) {
    const std::size_t middle = first + (shown - first) / 2;
    if (is_hidden_after(middle)) {
      first = middle + 1;
    } else {
      shown = middle;
    }
  }
  if (shown > most_readings_foretold) return std::nullopt;
  return shown;
}

bool lies_outside(double slope, const Interval& interval, double rounding) {
  return slope < interval.low - rounding || slope > interval.high + rounding;
}

Agreement agreement_of(const Evidence& evidence) {
  const TheilSen& robust = evidence.theil_sen;
  const double size = std::max(std::abs(evidence.line.slope), std::abs(robust.slope));
  const double rounding = rounding_share * size;
  const bool is_robust_apart = lies_outside(robust.slope, evidence.slope, rounding);
  const bool is_line_apart =
      robust.interval && lies_outside(evidence.line.slope, *robust.interval, rounding);
  if (is_robust_apart && is_line_apart) return Agreement::both_apart;
  if (is_robust_apart) return Agreement::theil_sen_apart;
  return is_line_apart ? Agreement::least_squares_apart : Agreement::agree;
}

std::optional<Direction> direction_of(const std::optional<Interval>& slope) {
  if (slope && slope->high < 0.0) return Direction::falling;
  if (slope && slope->low > 0.0) return Direction::rising;
  return std::nullopt;
}

Grade grade_of(const Evidence& evidence) {
  if (!evidence.direction) return Grade::cannot_tell;
  const bool is_clear = evidence.is_beyond_with_all && evidence.is_beyond_without_last &&
                        evidence.deciding.empty() &&
                        direction_of(evidence.theil_sen.interval) == evidence.direction;
  return is_clear ? Grade::clear : Grade::weak;
}

// Whether the 99.5 % interval leaves out zero, now and one reading ago.
void weigh_twice(Evidence& evidence, Point last, Certainty clear) {
  const std::optional<Direction> now = direction_shown(evidence.line, clear);
  evidence.is_beyond_with_all = now.has_value();
  const Fit before = without(evidence.line, last);
  const Line* one_reading_ago = std::get_if<Line>(&before);
  evidence.is_beyond_without_last =
      now && one_reading_ago != nullptr && direction_shown(*one_reading_ago, clear) == now;
}

Evidence weigh(Groups groups, const LevelledLine& line, double serial_correlation) {
  const Certainty weak{weak_confidence, serial_correlation};
  Evidence evidence{};
  evidence.line = line.newest();
  evidence.slope = slope_interval(evidence.line, weak);
  evidence.direction = direction_shown(evidence.line, weak);
  evidence.deciding = deciding_readings(groups, line, weak);
  weigh_twice(evidence, last_reading(groups.back()), {clear_confidence, serial_correlation});
  const std::optional<TheilSen> robust = theil_sen(groups, weak);
  EXPECT(robust.has_value());
  evidence.theil_sen = *robust;
  evidence.mann_kendall = mann_kendall(groups, serial_correlation);
  evidence.agreement = agreement_of(evidence);
  evidence.levels = line.levels;
  evidence.gains = gains(line, weak);
  return evidence;
}

std::vector<Group> with_readings(Groups groups) {
  std::vector<Group> kept;
  std::ranges::copy_if(groups, std::back_inserter(kept),
                       [](const Group& group) { return !group.empty(); });
  return kept;
}

std::vector<Point> all_of(Groups groups) {
  std::vector<Point> points;
  for (const Group& group : groups) points.insert(points.end(), group.begin(), group.end());
  return points;
}

// Hours between groups say nothing of the slope, and each level takes one reading to be known.
Finding counted(Groups groups) {
  Finding finding{};
  finding.grade = Grade::too_few;
  finding.points = points_in(groups);
  for (const Group& group : groups) finding.span_hours += span_of(group);
  finding.has_points_enough =
      !groups.empty() && finding.points >= fewest_points + groups.size() - 1;
  finding.has_span_enough = finding.span_hours + rounding_hours >= shortest_span_hours;
  return finding;
}

}  // namespace

Finding grade_points(std::span<const Point> points, double serial_correlation) {
  const Group group(points.begin(), points.end());
  return grade_points(Groups(&group, 1), serial_correlation);
}

Finding grade_points(Groups groups, double serial_correlation) {
  const std::vector<Group> kept = with_readings(groups);
  Finding finding = counted(kept);
  if (!finding.has_points_enough || !finding.has_span_enough) return finding;
  const LevelledFit fit = fit_levels(kept);
  const LevelledLine* line = std::get_if<LevelledLine>(&fit);
  EXPECT(line != nullptr);
  Evidence evidence = weigh(kept, *line, serial_correlation);
  if (!evidence.direction) {
    evidence.more_readings =
        readings_ahead(evidence.line, ahead_of(all_of(kept)), serial_correlation);
  }
  finding.evidence = std::move(evidence);
  finding.grade = grade_of(*finding.evidence);
  return finding;
}

std::optional<std::size_t> readings_until_shown(std::span<const Point> points, const Line& line,
                                                double serial_correlation) {
  EXPECT(points.size() == line.n);
  return readings_ahead(line, ahead_of(points), serial_correlation);
}

}  // namespace reckon::trend
