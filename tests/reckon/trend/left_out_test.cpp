// A line without one of its readings, against a new fit of the rest; and which readings decide.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "reckon/trend/line.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::line_of;
using trend_test::random_series;
using trend_test::seeded;
using trend_test::series;

using Places = std::vector<std::size_t>;

std::vector<Point> all_but(std::vector<Point> points, std::size_t place) {
  points.erase(points.begin() + static_cast<std::ptrdiff_t>(place));
  return points;
}

void check_same(const Line& one, const Line& other) {
  const auto is_near = [](double figure, double expected, double size) {
    return std::abs(figure - expected) <= 1e-8 * size;
  };
  BOOST_TEST(one.n == other.n);
  BOOST_TEST(is_near(one.x_mean, other.x_mean, other.x_mean));
  BOOST_TEST(is_near(one.y_mean, other.y_mean, std::abs(other.y_mean)));
  BOOST_TEST(is_near(one.sxx, other.sxx, other.sxx));
  BOOST_TEST(is_near(one.syy, other.syy, other.syy));
  BOOST_TEST(is_near(one.slope, other.slope, std::abs(other.slope) + other.slope_error));
  BOOST_TEST(is_near(one.scatter, other.scatter, other.scatter));
  BOOST_TEST(is_near(one.slope_error, other.slope_error, other.slope_error));
  BOOST_TEST(is_near(one.intercept, other.intercept, other.intercept_error));
  BOOST_TEST(is_near(one.intercept_error, other.intercept_error, other.intercept_error));
  BOOST_TEST(is_near(one.r2.value(), other.r2.value(), 1.0));
}

BOOST_AUTO_TEST_SUITE(left_out)

BOOST_AUTO_TEST_CASE(leaving_a_reading_out_is_the_same_as_fitting_the_rest) {
  std::mt19937_64 random = seeded("left out");
  for (int round = 0; round < 200; ++round) {
    // Five at least: of four, three are left, and one residual square may be next to nothing.
    std::vector<Point> points = random_series(random);
    while (points.size() < 5) points = random_series(random);
    const Line line = line_of(points);
    for (std::size_t place = 0; place < points.size(); ++place) {
      check_same(std::get<Line>(without(line, points[place])), line_of(all_but(points, place)));
    }
  }
}

BOOST_AUTO_TEST_CASE(three_readings_cannot_spare_one_and_four_can) {
  const auto three = series(0, 10, {20, 22, 19});
  BOOST_TEST(
      (std::get<Refusal>(without(line_of(three), three[0])) == Refusal::fewer_than_three_points));
  const auto four = series(0, 10, {20, 22, 19, 25});
  check_same(std::get<Line>(without(line_of(four), four[3])), line_of(three));
}

BOOST_AUTO_TEST_CASE(the_only_reading_that_gives_the_hours_a_spread_cannot_be_spared) {
  const auto points = series({1204.3, 1204.3, 1204.3, 1250.1, 1204.3}, {30, 32, 31, 25, 29});
  const Line line = line_of(points);
  BOOST_TEST((std::get<Refusal>(without(line, points[3])) == Refusal::no_spread_in_x));
  BOOST_TEST(std::holds_alternative<Line>(without(line, points[0])));
}

// Whole degrees, all alike but one: what is left has no slope, and rounding must not give it one.
BOOST_AUTO_TEST_CASE(one_odd_reading_among_equal_ones_leaves_no_slope_behind) {
  std::mt19937_64 random = seeded("odd one");
  for (int round = 0; round < 200; ++round) {
    std::vector<Point> points = random_series(random);
    for (std::size_t odd = 0; odd < points.size(); ++odd) {
      for (Point& point : points) point.y = 39.7;
      points[odd].y = 31.0;
      const Line rest = std::get<Line>(without(line_of(points), points[odd]));
      BOOST_TEST(!direction_shown(rest, {0.95, 0.2}).has_value());
    }
  }
}

// Derived from a practice case (S61): a plain fall that any seven of the eight readings show.
BOOST_AUTO_TEST_CASE(a_plain_fall_hangs_on_no_single_reading) {
  const auto points = series(0, 25, {30, 29, 29, 27, 26, 26, 24, 23});
  BOOST_TEST(deciding_readings(points, line_of(points), {0.95, 0.2}).empty());
}

BOOST_AUTO_TEST_CASE(a_far_reading_that_makes_the_line_is_named) {
  const auto points =
      series({0, 500, 510, 520, 530, 540, 550, 560, 570}, {60, 40, 41, 40, 41, 40, 41, 40, 41});
  const Line line = line_of(points);
  BOOST_TEST((direction_shown(line, {0.995, 0.0}) == Direction::falling));
  BOOST_TEST(deciding_readings(points, line, {0.95, 0.0}) == Places{0});
}

BOOST_AUTO_TEST_CASE(an_odd_reading_that_hides_the_line_is_named) {
  const auto points = series(0, 25, {30, 29, 29, 27, 26, 26, 24, 45});
  const Line line = line_of(points);
  BOOST_TEST(!direction_shown(line, {0.95, 0.0}).has_value());
  BOOST_TEST(deciding_readings(points, line, {0.95, 0.0}) == Places{7});
}

// The same answer as by fitting anew each time, for random series.
BOOST_AUTO_TEST_CASE(deciding_readings_are_those_a_new_fit_names) {
  std::mt19937_64 random = seeded("deciding");
  std::size_t named = 0;
  for (int round = 0; round < 300; ++round) {
    const std::vector<Point> points = random_series(random);
    const Line line = line_of(points);
    const Certainty certainty{0.95, 0.2};
    Places expected;
    for (std::size_t place = 0; place < points.size(); ++place) {
      const Line rest = line_of(all_but(points, place));
      if (direction_shown(rest, certainty) != direction_shown(line, certainty)) {
        expected.push_back(place);
      }
    }
    named += expected.size();
    BOOST_TEST(deciding_readings(points, line, certainty) == expected);
  }
  BOOST_TEST(named > 0u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
