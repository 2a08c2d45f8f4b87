#include "quantity/temperature.h"

#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/outcome.h"

using namespace quantity;

namespace {

std::string temperature(std::string_view text) { return outcome::of(read_temperature(text)); }

std::string margin(std::string_view text) { return outcome::of(read_margin(text)); }

}  // namespace

BOOST_AUTO_TEST_SUITE(temperatures)

BOOST_AUTO_TEST_CASE(tenths_of_a_degree_are_read) {
  BOOST_TEST(read_temperature("702").value().count() == 7020);
  BOOST_TEST(temperature("702.0") == "702");
  BOOST_TEST(temperature("-12.5") == "-12.5");
  BOOST_TEST(temperature("-0.5") == "-0.5");
  BOOST_TEST(temperature("12,5") == "12.5");
  BOOST_TEST(temperature("-90") == "-90");
  BOOST_TEST(temperature("2000") == "2000");
}

BOOST_AUTO_TEST_CASE(what_cannot_be_taken_is_refused) {
  BOOST_TEST(temperature("-90.1") == "out_of_range");
  BOOST_TEST(temperature("2000.1") == "out_of_range");
  BOOST_TEST(temperature("702.55") == "not_exact 702.5 702.6");
  BOOST_TEST(temperature("-12.55") == "not_exact -12.6 -12.5");
  BOOST_TEST(temperature("1,200") == "two_readings 1.200 1200");
  BOOST_TEST(temperature("1.200") == "two_readings 1.2 1200");
  BOOST_TEST(temperature("+12") == "not_a_number");
  BOOST_TEST(temperature("12C") == "not_a_number");
}

BOOST_AUTO_TEST_CASE(a_margin_is_the_difference_of_two_temperatures) {
  const Temperature limit = read_temperature("720").value();
  const Temperature indicated = read_temperature("731.5").value();
  BOOST_TEST(say(limit - indicated) == "-11.5");
  BOOST_TEST((indicated + (limit - indicated) == limit));
  BOOST_TEST(margin("-11.5") == "-11.5");
  BOOST_TEST(margin("2090") == "2090");
  BOOST_TEST(margin("-2090.1") == "out_of_range");
}

BOOST_AUTO_TEST_CASE(every_temperature_is_said_and_read_again) {
  for (std::int64_t tenths = -900; tenths <= 20'000; ++tenths) {
    BOOST_REQUIRE_EQUAL(read_temperature(say(Temperature::of(tenths))).value().count(), tenths);
    BOOST_REQUIRE_EQUAL(read_margin(say(Margin::of(-tenths))).value().count(), -tenths);
  }
}

BOOST_AUTO_TEST_SUITE_END()
