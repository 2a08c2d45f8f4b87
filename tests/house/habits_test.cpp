// Calls, types and names that have no place where they stand.

#include "house/habits.h"

#include <boost/test/unit_test.hpp>

using house::check_doubles;
using house::check_names;
using house::check_tests;

BOOST_AUTO_TEST_SUITE(habits)

BOOST_AUTO_TEST_CASE(a_double_outside_the_trend_is_told) {
  BOOST_TEST(check_doubles({"src/reckon/due.cpp", "double a = 0;\n"}).size() == 1U);
  BOOST_TEST(check_doubles({"src/words/a.h", "float a(long double b);\n"}).size() == 2U);
  BOOST_TEST(check_doubles({"src/words/a.h", "// a double\nint double_entry;\n"}).empty());
  BOOST_TEST(check_doubles({"src/reckon/trend/line.cpp", "double a = 0;\n"}).empty());
  BOOST_TEST(check_doubles({"tests/reckon/a_test.cpp", "double a = 0;\n"}).empty());
}

BOOST_AUTO_TEST_CASE(a_test_that_sleeps_is_told) {
  BOOST_TEST(check_tests({"tests/a/a_test.cpp", "std::this_thread::sleep_for(1s);\n"}).size() ==
             1U);
  BOOST_TEST(check_tests({"tests/a/a_test.cpp", "usleep(1); ::sleep(1);\n"}).size() == 2U);
  BOOST_TEST(check_tests({"tests/a/run.py", "time.sleep(1)\n"}).size() == 1U);
  BOOST_TEST(check_tests({"tests/a/a_test.cpp", "// no sleep here\nint sleepless;\n"}).empty());
}

BOOST_AUTO_TEST_CASE(a_test_that_is_switched_off_is_told) {
  const house::Source off = {"tests/a/a_test.cpp", "CASE(a, *boost::unit_test::disabled()) {}\n"};
  BOOST_TEST(check_tests(off).size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_name_that_says_nothing_is_told) {
  BOOST_TEST(check_names({"src/a/a.h", "int get_hours();\n"}).size() == 1U);
  BOOST_TEST(check_names({"src/a/a.h", "class RecordManager;\n"}).size() == 1U);
  BOOST_TEST(check_names({"src/a/a.cpp", "std::get_if<A>(&b); int target_hours; class Utility;\n"})
                 .empty());
}

BOOST_AUTO_TEST_SUITE_END()
