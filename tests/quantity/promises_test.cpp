// What a caller may never ask of a number or a day: the program stops before anything is written.
// No source: bounds are checked when text is read, so each of these is a fault of ours.
#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/calendar.h"
#include "quantity/exact.h"
#include "quantity/figure.h"

using namespace quantity;

BOOST_AUTO_TEST_SUITE(promises)

BOOST_AUTO_TEST_CASE(days_and_months_end_where_no_period_leads) {
  const Day far = Day::of(10'000'000);
  BOOST_TEST(say(make_day({2026, 3, 4}).value()) == "2026-03-04");
  BOOST_CHECK_NO_THROW(say(far));
  BOOST_CHECK_THROW(say(far + Days::of(1)), BrokenPromise);
  BOOST_CHECK_THROW(say(Day::of(-10'000'001)), BrokenPromise);
  const Day day = make_day({2026, 3, 4}).value();
  BOOST_CHECK_THROW(add_months(day, Months::of(300'001), MonthRule::same_day), BrokenPromise);
  BOOST_CHECK_THROW(add_months(day, Months::of(-300'001), MonthRule::end_of_month), BrokenPromise);
}

BOOST_AUTO_TEST_CASE(only_digits_have_a_value_and_no_more_than_fit) {
  BOOST_TEST(value_of_digits(std::string(18, '9')) == 999'999'999'999'999'999);
  BOOST_CHECK_THROW(value_of_digits(""), BrokenPromise);
  BOOST_CHECK_THROW(value_of_digits("12a"), BrokenPromise);
  BOOST_CHECK_THROW(value_of_digits(std::string(19, '1')), BrokenPromise);
}

BOOST_AUTO_TEST_CASE(division_says_which_way_it_goes) {
  BOOST_TEST(floor_divide(7, 2) == 3);
  BOOST_TEST(floor_divide(-7, 2) == -4);
  BOOST_TEST(floor_divide(-8, 2) == -4);
  BOOST_TEST(ceiling_divide(7, 2) == 4);
  BOOST_TEST(ceiling_divide(-7, 2) == -3);
  BOOST_TEST(ceiling_divide(8, 2) == 4);
}

BOOST_AUTO_TEST_SUITE_END()
