// The line against practice cases, and what it refuses. Every figure here is derived from a
// practice case: worked out apart from this program, not published.
#include "reckon/trend/line.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "quantity/expect.h"
#include "reckon/trend/student.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::line_of;
using trend_test::series;

const std::vector<Point> falling_margin = series(0, 25, {30, 29, 29, 27, 26, 26, 24, 23});

BOOST_AUTO_TEST_SUITE(line)

// Practice case S61.
BOOST_AUTO_TEST_CASE(a_margin_falling_four_degrees_a_hundred_hours_is_found) {
  const Line line = line_of(falling_margin);
  BOOST_TEST(line.slope == -0.040, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(line.intercept == 30.25, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(is_printed_as(line.slope_error, 0.0031, 4));
  BOOST_TEST(is_printed_as(line.scatter, 0.5, 1));
  BOOST_TEST(value_at(line, 506.25) == 10.0, boost::test_tools::tolerance(1e-12));
}

// Practice case F6: the bands of S61 at 300 h.
BOOST_AUTO_TEST_CASE(the_bands_at_300_hours_are_met_as_printed) {
  const Line line = line_of(falling_margin);
  const Interval mean = mean_band(line, 300.0, {0.95, 0.0});
  BOOST_TEST(is_printed_as(mean.low, 16.5881, 4));
  BOOST_TEST(is_printed_as(mean.high, 19.9119, 4));
  const Interval reading = new_reading_band(line, 300.0, {0.95, 0.0});
  BOOST_TEST(is_printed_as(reading.low, 16.1863, 4));
  BOOST_TEST(is_printed_as(reading.high, 20.3137, 4));
}

// Practice case S65 (b).
BOOST_AUTO_TEST_CASE(scatter_without_a_trend_gives_a_small_t) {
  const Line line = line_of(series(0, 20, {20, 26, 18, 25, 19, 24}));
  BOOST_TEST(is_printed_as(line.slope, 0.009, 3));
  BOOST_TEST(is_printed_as(line.slope_error, 0.045, 3));
  BOOST_TEST(is_printed_as(line.slope / line.slope_error, 0.19, 2));
  BOOST_TEST(is_printed_as(line.scatter, 3.8, 1));
}

// Practice case S67: two readings with bleed heat on hide in the same slope, not in the scatter.
BOOST_AUTO_TEST_CASE(like_is_compared_with_like) {
  const Line like = line_of(series({0, 25, 75, 125, 150}, {26, 25.5, 24.5, 23.5, 23}));
  BOOST_TEST(like.slope == -0.020, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(like.scatter < 1e-12);
  const std::vector<double> mixed{26, 25.5, 18, 24.5, 17, 23.5, 23};
  const Line all_seven = line_of(series(0, 25, mixed));
  BOOST_TEST(is_printed_as(all_seven.slope, -0.020, 3));
  BOOST_TEST(is_printed_as(all_seven.scatter, 3.7, 1));
  const Line first_six = line_of(series(0, 25, {26, 25.5, 18, 24.5, 17, 23.5}));
  BOOST_TEST(is_printed_as(first_six.slope, -0.036, 3));
  BOOST_TEST(is_printed_as(first_six.scatter, 4.0, 1));
}

// Practice case F9.
BOOST_AUTO_TEST_CASE(uneven_hours_are_no_hindrance) {
  const Line line = line_of(series({1204.3, 1212.8, 1221.1, 1230.6, 1238.9, 1247.2, 1256.4, 1265.0,
                                    1273.7, 1282.1, 1291.5, 1300.2},
                                   {41, 43, 40, 42, 39, 41, 40, 38, 40, 37, 39, 38}));
  BOOST_TEST(is_printed_as(line.slope, -0.04159269, 8));
  BOOST_TEST(is_printed_as(line.slope_error, 0.0116953, 7));
  BOOST_TEST(is_printed_as(line.scatter, 1.219237, 6));
  const double t = line.slope / line.slope_error;
  BOOST_TEST(is_printed_as(t, -3.5564, 4));
  BOOST_TEST(is_printed_as(two_sided_p(t, 10.0), 0.005213, 6));
  BOOST_TEST(is_printed_as(value_at(line, 1849.0), 15.0, 2));
}

// Practice case E1: neither engine shows a trend, the split of the two does.
BOOST_AUTO_TEST_CASE(the_split_of_twins_shows_what_neither_engine_does) {
  const std::vector<double> left{34, 29, 38, 31, 27, 36, 33, 25, 30, 35, 28, 26};
  const std::vector<double> right{36, 31, 40, 34, 30, 40, 37, 29, 35, 40, 34, 32};
  std::vector<double> split;
  for (std::size_t place = 0; place < left.size(); ++place) {
    split.push_back(left[place] - right[place]);
  }
  const Line of_left = line_of(series(0, 10, left));
  BOOST_TEST(is_printed_as(of_left.slope, -0.046154, 6));
  BOOST_TEST(is_printed_as(of_left.slope_error, 0.033818, 6));
  const Line of_right = line_of(series(0, 10, right));
  BOOST_TEST(is_printed_as(of_right.slope, -0.006294, 6));
  BOOST_TEST(is_printed_as(of_right.slope_error, 0.034184, 6));
  const Line of_split = line_of(series(0, 10, split));
  BOOST_TEST(is_printed_as(of_split.slope, -0.03986014, 8));
  BOOST_TEST(is_printed_as(of_split.slope_error, 0.00257256, 8));
  BOOST_TEST(is_printed_as(of_split.scatter, 0.308, 3));
  const Certainty plain{0.95, 0.0};
  BOOST_TEST(!direction_shown(of_left, plain).has_value());
  BOOST_TEST(!direction_shown(of_right, plain).has_value());
  BOOST_TEST((direction_shown(of_split, plain) == Direction::falling));
}

BOOST_AUTO_TEST_CASE(fewer_than_three_points_make_no_line) {
  const std::vector<Point> two{{1.0, 2.0}, {3.0, 4.0}};
  for (std::size_t few = 0; few <= two.size(); ++few) {
    const Fit fit = fit_line(std::span(two).first(few));
    BOOST_TEST((std::get<Refusal>(fit) == Refusal::fewer_than_three_points));
  }
}

BOOST_AUTO_TEST_CASE(readings_at_the_same_hours_make_no_line) {
  const auto at_once = series({1204.3, 1204.3, 1204.3, 1204.3}, {30, 31, 29, 28});
  BOOST_TEST((std::get<Refusal>(fit_line(at_once)) == Refusal::no_spread_in_x));
}

BOOST_AUTO_TEST_CASE(a_reading_that_is_no_number_breaks_a_promise) {
  for (double const bad : {std::nan(""), std::numeric_limits<double>::infinity()}) {
    BOOST_CHECK_THROW(fit_line(series(0, 1, {1, 2, bad, 4})), quantity::BrokenPromise);
    BOOST_CHECK_THROW(fit_line(series({0, 1, bad, 3}, {1, 2, 3, 4})), quantity::BrokenPromise);
  }
}

// Gauges read in whole degrees and hours in tenths: rounding must not make a trend of nothing.
BOOST_AUTO_TEST_CASE(readings_all_alike_have_exactly_no_slope_and_show_nothing) {
  for (double const margin : {0.1, 39.7, 40.0, -3.3}) {
    std::vector<Point> alike;
    for (double const x : {1204.3, 1212.8, 1221.1, 1230.6, 1238.9, 1247.2, 1256.4}) {
      alike.push_back({x, margin});
    }
    const Line line = line_of(alike);
    BOOST_TEST(line.slope == 0.0);
    BOOST_TEST(line.scatter == 0.0);
    BOOST_TEST(line.y_mean == margin);
    BOOST_TEST(!line.r2.has_value());
    BOOST_TEST(!direction_shown(line, {0.95, 0.2}).has_value());
  }
}

BOOST_AUTO_TEST_CASE(the_direction_is_that_of_the_slope) {
  const Certainty plain{0.95, 0.0};
  BOOST_TEST((direction_shown(line_of(falling_margin), plain) == Direction::falling));
  const auto rising = series(0, 25, {23, 24, 26, 26, 27, 29, 29, 30});
  BOOST_TEST((direction_shown(line_of(rising), plain) == Direction::rising));
}

// By hand: 0.2 gives the root of 1.5, 0.6 gives 2, 0.8 gives 3.
BOOST_AUTO_TEST_CASE(bands_are_widened_for_serial_correlation_and_never_narrowed) {
  BOOST_TEST(widening(0.0) == 1.0);
  BOOST_TEST(widening(0.2) == std::sqrt(1.5), boost::test_tools::tolerance(1e-15));
  BOOST_TEST(widening(0.6) == 2.0, boost::test_tools::tolerance(1e-15));
  BOOST_TEST(widening(0.8) == 3.0, boost::test_tools::tolerance(1e-15));
  BOOST_TEST(widening(-0.5) == 1.0);
  BOOST_CHECK_THROW(widening(1.0), quantity::BrokenPromise);
  BOOST_CHECK_THROW(widening(std::nan("")), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_CASE(every_band_takes_the_widening) {
  const Line line = line_of(falling_margin);
  const Certainty plain{0.95, 0.0};
  const Certainty related{0.95, 0.6};
  const auto width = [](const Interval& band) { return band.high - band.low; };
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(width(mean_band(line, 300, related)) == 2 * width(mean_band(line, 300, plain)), close);
  BOOST_TEST(
      width(new_reading_band(line, 300, related)) == 2 * width(new_reading_band(line, 300, plain)),
      close);
  BOOST_TEST(width(slope_interval(line, related)) == 2 * width(slope_interval(line, plain)), close);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
