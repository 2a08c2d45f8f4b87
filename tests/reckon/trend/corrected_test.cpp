// Corrected readings. The cases are derived: worked out apart from this program from the textbook
// forms (ASME J. Eng. Gas Turbines Power 121(4) 613, 1999).
#include "reckon/trend/corrected.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::seeded;

Air air(double pressure_altitude, double outside) {
  return std::get<Air>(air_at(pressure_altitude, outside));
}

BOOST_AUTO_TEST_SUITE(corrected)

// Practice case C1.
BOOST_AUTO_TEST_CASE(standard_sea_level_air_changes_nothing) {
  const Air standard = air(0.0, 15.0);
  const auto close = boost::test_tools::tolerance(1e-14);
  BOOST_TEST(corrected_temperature(700.0, standard) == 700.0, close);
  BOOST_TEST(corrected_speed(95.0, standard) == 95.0, close);
  BOOST_TEST(corrected_fuel(240.0, standard) == 240.0, close);
  BOOST_TEST(corrected_torque(80.0, standard) == 80.0, close);
  BOOST_TEST(corrected_power(80.0, standard) == 80.0, close);
}

// Practice case C2. Without kelvin the temperature would read 698.632.
BOOST_AUTO_TEST_CASE(a_warm_day_at_five_thousand_feet_comes_out_as_printed) {
  const Air warm = air(5000.0, 30.0);
  BOOST_TEST(is_printed_as(warm.theta, 1.052056, 6));
  BOOST_TEST(is_printed_as(warm.delta, 0.832048, 6));
  BOOST_TEST(is_printed_as(corrected_temperature(735.0, warm), 685.116, 3));
  BOOST_TEST(is_printed_as(corrected_speed(97.2, warm), 94.7647, 4));
  BOOST_TEST(is_printed_as(corrected_fuel(215.0, warm), 250.014, 3));
  BOOST_TEST(is_printed_as(corrected_fuel(215.0, warm, {.fuel = 0.5}), 251.925, 3));
  BOOST_TEST(is_printed_as(corrected_power(78.0, warm), 91.396, 3));
  BOOST_TEST(is_printed_as(corrected_torque(78.0, warm), 93.745, 3));
}

BOOST_AUTO_TEST_CASE(the_exponents_belong_to_their_own_figures) {
  const Air warm = air(5000.0, 30.0);
  const Exponents none{0.0, 0.0, 0.0};
  const auto close = boost::test_tools::tolerance(1e-13);
  BOOST_TEST(corrected_temperature(735.0, warm, none) == 735.0, close);
  BOOST_TEST(corrected_speed(97.2, warm, none) == 97.2, close);
  BOOST_TEST(corrected_fuel(215.0, warm, none) == 215.0 / warm.delta, close);
  BOOST_TEST(corrected_temperature(735.0, warm, {.temperature = 0.5}) ==
                 1008.15 / std::sqrt(warm.theta) - 273.15,
             close);
  BOOST_TEST(corrected_speed(97.2, warm, {.speed = 1.0}) == 97.2 / warm.theta, close);
}

// Practice case K4, and the fixed points 0 C = 32 F, 100 C = 212 F, -40 both.
BOOST_AUTO_TEST_CASE(a_difference_of_twenty_celsius_is_thirty_six_fahrenheit) {
  BOOST_TEST(fahrenheit_degrees(20.0) == 36.0);
  BOOST_TEST(fahrenheit_degrees(30.0) == 54.0);
  BOOST_TEST(celsius_degrees(36.0) == 20.0);
  BOOST_TEST(fahrenheit_of(20.0) == 68.0);
  BOOST_TEST(celsius_of(68.0) == 20.0);
  BOOST_TEST(fahrenheit_of(0.0) == 32.0);
  BOOST_TEST(fahrenheit_of(100.0) == 212.0);
  BOOST_TEST(fahrenheit_of(-40.0) == -40.0);
}

BOOST_AUTO_TEST_CASE(the_difference_of_two_points_is_the_difference_in_either_unit) {
  std::mt19937_64 random = seeded("fahrenheit");
  std::uniform_real_distribution<double> celsius(-60.0, 900.0);
  for (int round = 0; round < 200; ++round) {
    const double one = celsius(random);
    const double other = celsius(random);
    const double apart = fahrenheit_of(one) - fahrenheit_of(other);
    BOOST_TEST(std::abs(apart - fahrenheit_degrees(one - other)) < 1e-9);
    BOOST_TEST(std::abs(celsius_of(fahrenheit_of(one)) - one) < 1e-9);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
