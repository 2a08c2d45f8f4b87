#include "quantity/figure.h"

#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/expect.h"
#include "quantity/outcome.h"

using namespace quantity;

namespace {

constexpr FigureForm thousandths{3, -999'999'999'999, 999'999'999'999};
constexpr FigureForm tenths{1, 0, 1000};

std::string in_thousandths(std::string_view text) {
  return outcome::of(read_figure(text, thousandths));
}

std::string in_tenths(std::string_view text) { return outcome::of(read_figure(text, tenths)); }

}  // namespace

BOOST_AUTO_TEST_SUITE(figure)

BOOST_AUTO_TEST_CASE(plain_figures_are_read) {
  BOOST_TEST(in_thousandths("0") == "0");
  BOOST_TEST(in_thousandths("3") == "3000");
  BOOST_TEST(in_thousandths("1.7") == "1700");
  BOOST_TEST(in_thousandths("1.234") == "1234");
  BOOST_TEST(in_thousandths("-12.5") == "-12500");
  BOOST_TEST(in_thousandths("-0") == "0");
  BOOST_TEST(in_thousandths("007") == "7000");
  BOOST_TEST(in_thousandths("999999999.999") == "999999999999");
}

BOOST_AUTO_TEST_CASE(what_is_no_figure_is_refused) {
  for (const char* text : {"",
                           "-",
                           "+1",
                           "+1.7",
                           "1.",
                           ".5",
                           ",5",
                           "1,",
                           "1..2",
                           "1.,2",
                           "1 234",
                           " 1",
                           "1 ",
                           "1e3",
                           "0x1",
                           "1.7h",
                           "--1",
                           "1-2",
                           "\xE2\x88\x92"
                           "1",
                           "1'234",
                           "nan",
                           "inf",
                           "1.2.3",
                           "1,2,3",
                           "1.23,456",
                           "1,2345",
                           "1234,567,890",
                           "1.234.5",
                           "1,2.345",
                           "1.234,567.8"}) {
    BOOST_TEST(in_thousandths(text) == "not_a_number", "\"" << text << "\"");
  }
}

// record-language-trial.md A20.
BOOST_AUTO_TEST_CASE(a_decimal_comma_takes_one_or_two_digits_and_no_point_beside_it) {
  BOOST_TEST(in_thousandths("1,7") == "1700");
  BOOST_TEST(in_thousandths("1,75") == "1750");
  BOOST_TEST(in_thousandths("1234,5") == "1234500");
  BOOST_TEST(in_thousandths("-1,7") == "-1700");
}

BOOST_AUTO_TEST_CASE(marks_that_may_part_thousands_show_both_readings) {
  BOOST_TEST(in_thousandths("1,234") == "two_readings 1.234 1234");
  BOOST_TEST(in_thousandths("0,234") == "two_readings 0.234 0234");
  BOOST_TEST(in_thousandths("1.234,5") == "two_readings 1.2345 1234.5");
  BOOST_TEST(in_thousandths("1,234.5") == "two_readings 1.2345 1234.5");
  BOOST_TEST(in_thousandths("12,345,678") == "two_readings 12.345678 12345678");
  BOOST_TEST(in_thousandths("1.234.567") == "two_readings 1.234567 1234567");
  BOOST_TEST(in_thousandths("1.234.567,89") == "two_readings 1.23456789 1234567.89");
  BOOST_TEST(in_thousandths("-1,234") == "two_readings -1.234 -1234");
}

// Where thousandths are held, a point stands before decimals; where they are not, nobody who means
// 4.32 types 4.320, but somebody who means 4320 may.
BOOST_AUTO_TEST_CASE(three_decimals_in_a_coarser_form_may_be_a_thousand) {
  BOOST_TEST(in_thousandths("4.320") == "4320");
  BOOST_TEST(in_tenths("4.300") == "two_readings 4.3 4300");
  BOOST_TEST(in_tenths("4.000") == "two_readings 4 4000");
  BOOST_TEST(in_tenths("0.300") == "3");
  BOOST_TEST(in_tenths("4.30") == "43");
  BOOST_TEST(in_tenths("4.3000") == "43");
}

BOOST_AUTO_TEST_CASE(figures_between_two_smallest_units_show_both_neighbours) {
  BOOST_TEST(in_thousandths("1.2345") == "not_exact 1.234 1.235");
  BOOST_TEST(in_thousandths("1.000001") == "not_exact 1.000 1.001");
  BOOST_TEST(in_thousandths("-1.2345") == "not_exact -1.235 -1.234");
  BOOST_TEST(in_thousandths("-0.0001") == "not_exact -0.001 0.000");
  BOOST_TEST(in_tenths("1.25") == "not_exact 1.2 1.3");
  BOOST_TEST(in_tenths("1.234") == "not_exact 1.2 1.3");
}

BOOST_AUTO_TEST_CASE(at_most_nine_digits_before_and_six_after_the_point) {
  BOOST_TEST(in_thousandths("1234567890") == "out_of_range");
  BOOST_TEST(in_thousandths("0000000001") == "out_of_range");
  BOOST_TEST(in_thousandths("1.2345678") == "out_of_range");
  BOOST_TEST(in_thousandths("1.500000") == "1500");
  BOOST_TEST(in_thousandths(std::string(4000, '9')) == "out_of_range");
  BOOST_TEST(in_tenths("100") == "1000");
  BOOST_TEST(in_tenths("100.1") == "out_of_range");
  BOOST_TEST(in_tenths("-1") == "out_of_range");
}

BOOST_AUTO_TEST_CASE(figures_are_said_without_trailing_zeros) {
  BOOST_TEST(say_figure(1700, {3, 0}) == "1.7");
  BOOST_TEST(say_figure(3000, {3, 0}) == "3");
  BOOST_TEST(say_figure(3000, {3, 1}) == "3.0");
  BOOST_TEST(say_figure(-5, {1, 0}) == "-0.5");
  BOOST_TEST(say_figure(0, {2, 1}) == "0.0");
  BOOST_TEST(say_figure(7, {0, 0}) == "7");
  BOOST_TEST(say_digits(4, 2) == "04");
  BOOST_TEST(say_digits(12345, 2) == "12345");
  BOOST_CHECK_THROW(say_digits(-1, 2), BrokenPromise);
  BOOST_CHECK_THROW(value_of_digits("12a"), BrokenPromise);
}

BOOST_AUTO_TEST_CASE(what_is_said_is_read_again) {
  std::mt19937_64 choices = outcome::seeded("what_is_said_is_read_again");
  for (int i = 0; i < 50'000; ++i) {
    const std::int64_t count = outcome::between(thousandths.lowest, thousandths.highest, choices);
    const std::string text = say_figure(count, {3, 0});
    BOOST_REQUIRE_EQUAL(in_thousandths(text), std::to_string(count));
  }
}

BOOST_AUTO_TEST_SUITE_END()
