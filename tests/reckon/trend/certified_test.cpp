// The line against figures that others have published or certified.
#include <array>
#include <boost/test/unit_test.hpp>
#include <cstddef>

#include "reckon/trend/line.h"
#include "reckon/trend/student.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::line_of;
using trend_test::series;

// NIST Statistical Reference Datasets, linear regression, set Norris (public domain).
const std::vector<Point> norris{
    {0.2, 0.1},     {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2},    {226.5, 228.1},
    {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},
    {0.6, 0.1},     {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
    {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},
    {0.3, 0.6},     {556.8, 557.6}, {339.1, 339.3}, {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9},
    {11.1, 10.2},   {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2}};

// R `datasets::cars`, Ezekiel 1930: speed in mph and stopping distance in feet.
const std::vector<Point> cars =
    series({4,  4,  7,  7,  8,  9,  10, 10, 10, 11, 11, 12, 12, 12, 12, 13, 13,
            13, 13, 14, 14, 14, 14, 15, 15, 15, 16, 16, 17, 17, 17, 18, 18, 18,
            18, 19, 19, 19, 20, 20, 20, 20, 20, 22, 23, 24, 24, 24, 24, 25},
           {2,  10, 4,  22, 16, 10, 18, 26, 34, 17, 28, 14, 20, 24, 28,  26, 34,
            34, 46, 26, 36, 60, 80, 20, 26, 54, 32, 40, 32, 40, 50, 42,  56, 76,
            84, 36, 46, 68, 32, 48, 52, 56, 64, 66, 54, 70, 92, 93, 120, 85});

BOOST_AUTO_TEST_SUITE(certified)

// All certified figures, to 1e-11 of themselves.
BOOST_AUTO_TEST_CASE(norris_is_met_to_eleven_digits) {
  const Line line = line_of(norris);
  const auto close = boost::test_tools::tolerance(1e-11);
  BOOST_TEST(line.n == 36u);
  BOOST_TEST(line.intercept == -0.262323073774029, close);
  BOOST_TEST(line.intercept_error == 0.232818234301152, close);
  BOOST_TEST(line.slope == 1.00211681802045, close);
  BOOST_TEST(line.slope_error == 0.429796848199937E-03, close);
  BOOST_TEST(line.scatter == 0.884796396144373, close);
  BOOST_TEST(line.r2.value() == 0.999993745883712, close);
  BOOST_TEST(line.residual_sum_of_squares == 26.6173985294224, close);
  BOOST_TEST(line.syy - line.residual_sum_of_squares == 4255954.13232369, close);
  BOOST_TEST(line.slope * line.slope * line.sxx == 4255954.13232369, close);
  const double t = line.slope / line.slope_error;
  BOOST_TEST(t * t == 5436385.54079785, close);
}

// Source: R 4.2.2, lm and predict on `cars`; scipy agrees to nine digits.
BOOST_AUTO_TEST_CASE(cars_and_their_bands_at_21_are_met_as_printed) {
  const Line line = line_of(cars);
  BOOST_TEST(is_printed_as(line.slope, 3.932408759, 9));
  BOOST_TEST(is_printed_as(line.intercept, -17.579094891, 9));
  BOOST_TEST(is_printed_as(value_at(line, 21.0), 65.001489, 6));
  const Interval mean = mean_band(line, 21.0, {0.95, 0.0});
  BOOST_TEST(is_printed_as(mean.low, 58.597384, 6));
  BOOST_TEST(is_printed_as(mean.high, 71.405594, 6));
  const Interval reading = new_reading_band(line, 21.0, {0.95, 0.0});
  BOOST_TEST(is_printed_as(reading.low, 33.422574, 6));
  BOOST_TEST(is_printed_as(reading.high, 96.580404, 6));
}

// Source: EPA Unified Guidance 2009, example 17-5, chloride; its stored residuals.
BOOST_AUTO_TEST_CASE(the_chloride_well_is_met_residual_by_residual) {
  const std::vector<Point> well =
      series({76, 133, 233, 407, 513, 594, 688, 779, 846, 940, 1043, 1150, 1260, 1330, 1385, 1499,
              1577, 1682, 1759},
             {11.5, 12.6, 13.8, 12.3, 12.8, 13.2, 14.1, 13.3, 13.1, 13.2, 15.3, 15.0, 15.2, 15.8,
              16.1, 15.1, 16.4, 17.7, 17.7});
  constexpr std::array residuals{-.251308901,  .672233198,  1.562657935, -.476003024,  -.304152804,
                                 -.154908767,  .454090485,  -.627623005, -1.035038432, -1.226039179,
                                 .555098299,   -.076147233, -.216680023, .166617292,   .296350897,
                                 -1.056564903, .001966391,  .976912364,  .738539411};
  const Line line = line_of(well);
  for (std::size_t place = 0; place < residuals.size(); ++place) {
    const double residual = well[place].y - value_at(line, well[place].x);
    BOOST_TEST(is_printed_as(residual, residuals.at(place), 9));
  }
  BOOST_TEST(is_printed_as(line.intercept, 11.516031701, 9));
  BOOST_TEST(is_printed_as(line.slope, 0.00309575263669, 14));
  BOOST_TEST(is_printed_as(line.slope_error, 0.000334533039101, 15));
  BOOST_TEST(is_printed_as(line.scatter, 0.750185186634, 12));
  const double t = line.slope / line.slope_error;
  BOOST_TEST(is_printed_as(t, 9.25395185, 8));
  BOOST_TEST(is_printed_as(two_sided_p(t, 17.0), 4.764e-8, 11));
}

// Source: Anscombe 1973 (R `anscombe`): four sets, one line, published to two digits.
BOOST_AUTO_TEST_CASE(the_quartet_has_one_line_and_the_fourth_hangs_on_one_point) {
  const std::vector<double> x{10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
  const std::array sets{
      series(x, {8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68}),
      series(x, {9.14, 8.14, 8.74, 8.77, 9.26, 8.10, 6.13, 3.10, 9.13, 7.26, 4.74}),
      series(x, {7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73}),
      series({8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8},
             {6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.50, 5.56, 7.91, 6.89})};
  constexpr std::array slopes{.500091, .500000, .499727, .499909};
  constexpr std::array scatters{1.236603, 1.237214, 1.236311, 1.235695};
  for (std::size_t set = 0; set < sets.size(); ++set) {
    const Line line = line_of(sets.at(set));
    BOOST_TEST(is_printed_as(line.slope, 0.50, 2));
    BOOST_TEST(is_printed_as(line.intercept, 3.00, 2));
    BOOST_TEST(is_printed_as(line.r2.value(), 0.67, 2));
    BOOST_TEST(is_printed_as(line.slope, slopes.at(set), 6));
    BOOST_TEST(is_printed_as(line.scatter, scatters.at(set), 6));
  }
  const Line fourth = line_of(sets[3]);
  BOOST_TEST(leverage(fourth, 19.0) == 1.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(deciding_readings(sets[3], fourth, {0.95, 0.0}) == std::vector<std::size_t>{7});
  BOOST_TEST(deciding_readings(sets[2], line_of(sets[2]), {0.95, 0.0}).empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
