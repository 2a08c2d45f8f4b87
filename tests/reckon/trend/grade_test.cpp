// The grades of a line and their evidence. Series from practice cases are derived, not published.
#include "reckon/trend/grade.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "reckon/trend/student.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::line_of;
using trend_test::random_series;
using trend_test::seeded;
using trend_test::series;

using Places = std::vector<std::size_t>;

bool is_graded(const std::vector<Point>& points, double serial_correlation, Grade grade) {
  return grade_points(points, serial_correlation).grade == grade;
}

const std::vector<Point> falling_margin = series(0, 25, {30, 29, 29, 27, 26, 26, 24, 23});
const std::vector<Point> scattered = series(0, 20, {20, 26, 18, 25, 19, 24});
// Practice case F9: t is -3.5564 with ten degrees of freedom, and 99.5 % asks for 3.581.
const std::vector<Point> uneven = series({1204.3, 1212.8, 1221.1, 1230.6, 1238.9, 1247.2, 1256.4,
                                          1265.0, 1273.7, 1282.1, 1291.5, 1300.2},
                                         {41, 43, 40, 42, 39, 41, 40, 38, 40, 37, 39, 38});

BOOST_AUTO_TEST_SUITE(grade)

// Practice case S61: "clear trend".
BOOST_AUTO_TEST_CASE(a_steady_fall_is_clear) {
  for (double const serial_correlation : {0.0, stated_serial_correlation}) {
    const Finding finding = grade_points(falling_margin, serial_correlation);
    BOOST_TEST((finding.grade == Grade::clear));
    BOOST_TEST(finding.points == 8u);
    BOOST_TEST(finding.span_hours == 175.0);
    const Evidence& evidence = finding.evidence.value();
    BOOST_TEST((evidence.direction == Direction::falling));
    BOOST_TEST(evidence.line.slope == -0.040, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(evidence.is_beyond_with_all);
    BOOST_TEST(evidence.is_beyond_without_last);
    BOOST_TEST(evidence.deciding.empty());
    BOOST_TEST(!evidence.more_readings.has_value());
  }
}

BOOST_AUTO_TEST_CASE(a_steady_rise_is_clear_too_and_says_so) {
  std::vector<Point> rising = falling_margin;
  for (Point& point : rising) point.y = -point.y;
  const Finding finding = grade_points(rising, 0.2);
  BOOST_TEST((finding.grade == Grade::clear));
  BOOST_TEST((finding.evidence.value().direction == Direction::rising));
}

// Practice case S61 by hand: slope error 0.00308607, t 2.446912 for 6, widened by sqrt(1.5).
BOOST_AUTO_TEST_CASE(the_slope_interval_given_is_the_widened_95_one) {
  const Interval slope = grade_points(falling_margin, 0.2).evidence.value().slope;
  const double half = 2.446912 * 0.00308607 * std::sqrt(1.5);
  BOOST_TEST(is_printed_as(slope.low, -0.040 - half, 7));
  BOOST_TEST(is_printed_as(slope.high, -0.040 + half, 7));
}

// Practice case S65: two points are no line, and scatter is "no trend can be told yet".
BOOST_AUTO_TEST_CASE(scatter_cannot_tell_and_two_points_are_too_few) {
  const Finding finding = grade_points(scattered, 0.2);
  BOOST_TEST((finding.grade == Grade::cannot_tell));
  BOOST_TEST(!finding.evidence.value().direction.has_value());
  const Finding two = grade_points(series(0, 200, {25, 24}), 0.2);
  BOOST_TEST((two.grade == Grade::too_few));
  BOOST_TEST(two.points == 2u);
  BOOST_TEST(two.span_hours == 200.0);
  BOOST_TEST(!two.has_points_enough);
  BOOST_TEST(two.has_span_enough);
  BOOST_TEST(!two.evidence.has_value());
}

BOOST_AUTO_TEST_CASE(five_points_over_twenty_five_hours_are_the_least) {
  BOOST_TEST(is_graded({}, 0.2, Grade::too_few));
  BOOST_TEST(is_graded(series(0, 100, {30, 28, 26, 24}), 0.2, Grade::too_few));
  BOOST_TEST(!is_graded(series(0, 100, {30, 28, 26, 24, 23}), 0.2, Grade::too_few));
  const std::vector<double> margins{30, 28, 26, 24, 22};
  const Finding shorter = grade_points(series({0, 6, 12, 18, 24.9}, margins), 0.2);
  BOOST_TEST((shorter.grade == Grade::too_few));
  BOOST_TEST(shorter.has_points_enough);
  BOOST_TEST(!shorter.has_span_enough);
  BOOST_TEST(!is_graded(series({0, 6, 12, 18, 25}, margins), 0.2, Grade::too_few));
  BOOST_TEST(is_graded(series(1204.3, 0.0, margins), 0.2, Grade::too_few));
}

// Hours are written in tenths; no tenth may lose a series its 25 h to the rounding of doubles.
BOOST_AUTO_TEST_CASE(twenty_five_hours_are_enough_wherever_they_begin) {
  for (int tenths = 0; tenths < 20000; ++tenths) {
    std::vector<Point> points;
    for (int const step : {0, 50, 100, 200, 250}) {
      points.push_back({(tenths + step) / 10.0, 30.0});
    }
    const bool has_enough = grade_points(points, 0.2).has_span_enough;
    points.back().x = (tenths + 249) / 10.0;
    const bool has_too_little = grade_points(points, 0.2).has_span_enough;
    if (!has_enough || has_too_little) BOOST_ERROR("from " << tenths << " tenths of an hour");
  }
}

BOOST_AUTO_TEST_CASE(a_fall_beyond_95_but_not_995_in_a_hundred_is_weak) {
  const Finding finding = grade_points(uneven, 0.0);
  BOOST_TEST((finding.grade == Grade::weak));
  BOOST_TEST((finding.evidence.value().direction == Direction::falling));
  BOOST_TEST(!finding.evidence.value().is_beyond_with_all);
  BOOST_TEST(!finding.evidence.value().is_beyond_without_last);
  BOOST_TEST(!finding.evidence.value().more_readings.has_value());
}

// t is -3.5564; at 0.5 it has to pass 2.228 times the root of 3, 3.859.
BOOST_AUTO_TEST_CASE(readings_that_resemble_their_neighbours_prove_less) {
  BOOST_TEST(is_graded(uneven, 0.2, Grade::weak));
  BOOST_TEST(is_graded(uneven, 0.5, Grade::cannot_tell));
}

// Seven readings hardly prove a fall; the eighth, lower than all, puts the line beyond 99.5 %.
BOOST_AUTO_TEST_CASE(one_more_reading_does_not_make_it_clear_by_itself) {
  const auto points = series(0, 25, {30, 29, 29.5, 28.5, 29, 28, 28, 27});
  const Finding finding = grade_points(points, 0.0);
  BOOST_TEST(finding.evidence.value().is_beyond_with_all);
  BOOST_TEST(!finding.evidence.value().is_beyond_without_last);
  BOOST_TEST(finding.evidence.value().deciding.empty());
  BOOST_TEST((finding.grade == Grade::weak));
}

BOOST_AUTO_TEST_CASE(the_last_reading_is_the_one_with_most_hours_not_the_one_given_last) {
  std::vector<Point> points = series(0, 25, {30, 29, 29.5, 28.5, 29, 28, 28, 27});
  std::reverse(points.begin(), points.end());
  BOOST_TEST(!grade_points(points, 0.0).evidence.value().is_beyond_without_last);
}

// Plain bands would call it clear; widened for 0.4 the 99.5 % one holds zero and the 95 % one not.
BOOST_AUTO_TEST_CASE(the_band_of_the_clear_grade_is_widened_too) {
  const auto points = series(0, 25, {30, 29, 29, 27, 28, 26, 27, 25, 26, 26});
  BOOST_TEST(is_graded(points, 0.0, Grade::clear));
  const Finding finding = grade_points(points, 0.4);
  BOOST_TEST((finding.grade == Grade::weak));
  BOOST_TEST(!finding.evidence.value().is_beyond_with_all);
  BOOST_TEST(!finding.evidence.value().is_beyond_without_last);
}

BOOST_AUTO_TEST_CASE(a_line_that_one_reading_carries_is_not_clear) {
  const auto points =
      series({0, 500, 510, 520, 530, 540, 550, 560, 570}, {60, 40, 41, 40, 41, 40, 41, 40, 41});
  const Finding finding = grade_points(points, 0.0);
  BOOST_TEST(finding.evidence.value().is_beyond_with_all);
  BOOST_TEST(finding.evidence.value().is_beyond_without_last);
  BOOST_TEST(finding.evidence.value().deciding == Places{0});
  BOOST_TEST((finding.grade == Grade::weak));
}

BOOST_AUTO_TEST_CASE(readings_all_alike_cannot_tell_and_foretell_nothing) {
  const Finding finding = grade_points(series(1204.3, 8.3, {39.7, 39.7, 39.7, 39.7, 39.7}), 0.2);
  BOOST_TEST((finding.grade == Grade::cannot_tell));
  BOOST_TEST(!finding.evidence.value().more_readings.has_value());
}

BOOST_AUTO_TEST_CASE(the_grade_does_not_hang_on_the_order_or_on_where_zero_is) {
  std::mt19937_64 random = seeded("grade");
  for (int round = 0; round < 300; ++round) {
    std::vector<Point> points = random_series(random);
    const Finding finding = grade_points(points, 0.2);
    for (Point& point : points) point = {point.x + 700.0, point.y - 25.0};
    std::shuffle(points.begin(), points.end(), random);
    const Finding other = grade_points(points, 0.2);
    BOOST_TEST((finding.grade == other.grade));
    if (!finding.evidence) continue;
    BOOST_TEST((finding.evidence->direction == other.evidence->direction));
    BOOST_TEST(finding.evidence->deciding.size() == other.evidence->deciding.size());
    BOOST_TEST((finding.evidence->more_readings == other.evidence->more_readings));
  }
}

// Derived from practice cases S65 (b) and E1, left engine: the numbers were worked out by another
// program that puts the readings down one by one and finds t by integration.
BOOST_AUTO_TEST_CASE(the_readings_still_needed_are_as_worked_out_by_hand) {
  const auto needed = [](const std::vector<Point>& points, double serial_correlation) {
    return grade_points(points, serial_correlation).evidence.value().more_readings.value();
  };
  BOOST_TEST(needed(scattered, 0.0) == 21u);
  BOOST_TEST(needed(scattered, 0.2) == 25u);
  const auto left = series(0, 10, {34, 29, 38, 31, 27, 36, 33, 25, 30, 35, 28, 26});
  BOOST_TEST(needed(left, 0.0) == 32u);
  BOOST_TEST(needed(left, 0.2) == 38u);
}

// Half the widened 95 % interval after so many more readings, put down one by one.
double half_width_after(std::vector<Point> points, std::size_t more, double scatter) {
  const double first = points.front().x;
  const double spacing = (points.back().x - first) / (static_cast<double>(points.size()) - 1.0);
  for (std::size_t left = more; left > 0; --left) {
    points.push_back({points.back().x + spacing, 0.0});
  }
  double mean = 0.0;
  for (const Point& point : points) mean += point.x / static_cast<double>(points.size());
  double sxx = 0.0;
  for (const Point& point : points) sxx += (point.x - mean) * (point.x - mean);
  const double t = two_sided_t(0.95, static_cast<double>(points.size()) - 2.0);
  return t * std::sqrt(1.5) * scatter / std::sqrt(sxx);
}

BOOST_AUTO_TEST_CASE(the_readings_still_needed_are_enough_and_one_fewer_is_not) {
  std::mt19937_64 random = seeded("readings needed");
  for (int round = 0; round < 300; ++round) {
    const std::vector<Point> points = random_series(random);
    const Line line = line_of(points);
    const auto needed = readings_until_shown(points, line, 0.2);
    if (!needed) continue;
    BOOST_TEST(half_width_after(points, *needed, line.scatter) < 0.01);
    if (*needed == 0) continue;
    BOOST_TEST(half_width_after(points, *needed - 1, line.scatter) >= 0.01 * (1.0 - 1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_long_quiet_series_would_have_shown_it_already) {
  std::vector<double> margins;
  for (int place = 0; place < 60; ++place) margins.push_back(place % 2 == 0 ? 40.0 : 41.0);
  const auto points = series(0, 10, margins);
  const Finding finding = grade_points(points, 0.2);
  BOOST_TEST((finding.grade == Grade::cannot_tell));
  BOOST_TEST(finding.evidence.value().more_readings.value() == 0u);
}

BOOST_AUTO_TEST_CASE(more_than_ten_thousand_readings_are_not_foretold) {
  const auto points = series(0, 6.5, {2e9, -2e9, 2e9, -2e9, 2e9});
  BOOST_TEST(!readings_until_shown(points, line_of(points), 0.2).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
