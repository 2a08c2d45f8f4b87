// Days and quarters as text (quantity/calendar.h).
#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/calendar.h"
#include "quantity/outcome.h"

using namespace quantity;

namespace {

std::string day(std::string_view text) { return outcome::of(read_day(text)); }

std::string quarter(std::string_view text) { return outcome::of(read_quarter(text)); }

}  // namespace

BOOST_AUTO_TEST_SUITE(day_text)

BOOST_AUTO_TEST_CASE(days_are_read_as_digits_or_with_the_name_of_the_month) {
  BOOST_TEST(day("2026-03-04") == "2026-03-04");
  BOOST_TEST(day("4 Mar 2026") == "2026-03-04");
  BOOST_TEST(day("04 MARCH 2026") == "2026-03-04");
  BOOST_TEST(day("4 march 2026") == "2026-03-04");
  BOOST_TEST(day("30 sept 2026") == "2026-09-30");
  BOOST_TEST(day("31 May 2026") == "2026-05-31");
  BOOST_TEST(read_day("1970-01-01").value().count() == 0);
}

BOOST_AUTO_TEST_CASE(days_are_said_long_for_people) {
  BOOST_TEST(say_long(read_day("2026-03-04").value()) == "4 March 2026");
  BOOST_TEST(say_long(read_day("2026-12-31").value()) == "31 December 2026");
}

BOOST_AUTO_TEST_CASE(a_day_said_long_is_read_again) {
  for (Day at = read_day("2023-12-01").value(); at < read_day("2025-02-01").value();
       at = day_after(at)) {
    BOOST_REQUIRE_EQUAL(day(say_long(at)), say(at));
  }
}

BOOST_AUTO_TEST_CASE(a_day_that_two_countries_read_differently_shows_both) {
  BOOST_TEST(day("03/04/2025") == "ambiguous_day 2025-03-04 2025-04-03");
  BOOST_TEST(day("3/4/2025") == "ambiguous_day 2025-03-04 2025-04-03");
  BOOST_TEST(day("03.04.2025") == "ambiguous_day 2025-03-04 2025-04-03");
  BOOST_TEST(day("03-04-2025") == "ambiguous_day 2025-03-04 2025-04-03");
  BOOST_TEST(day("25/12/2025") == "ambiguous_day 2025-12-25");
  BOOST_TEST(day("12/25/2025") == "ambiguous_day 2025-12-25");
  BOOST_TEST(day("05/05/2025") == "ambiguous_day 2025-05-05");
  BOOST_TEST(day("31/31/2025") == "no_such_day");
  BOOST_TEST(day("03/04/3025") == "out_of_range");
}

BOOST_AUTO_TEST_CASE(a_day_that_does_not_exist_shows_the_nearest_days) {
  BOOST_TEST(day("2023-02-29") == "no_such_day 2023-02-28 2023-03-01");
  BOOST_TEST(day("30 February 2024") == "no_such_day 2024-02-29 2024-03-01");
  BOOST_TEST(day("2024-04-31") == "no_such_day 2024-04-30 2024-05-01");
  BOOST_TEST(day("2199-12-32") == "no_such_day 2199-12-31 2200-01-01");
  BOOST_TEST(day("2024-13-01") == "no_such_day");
  BOOST_TEST(day("2024-00-01") == "no_such_day");
  BOOST_TEST(day("2024-01-00") == "no_such_day");
  BOOST_TEST(day("3025-01-01") == "out_of_range");
  BOOST_TEST(day("1899-12-31") == "out_of_range");
  BOOST_TEST(day("2200-01-01") == "out_of_range");
}

BOOST_AUTO_TEST_CASE(what_is_no_day_is_refused) {
  for (const char* text : {"",
                           "2026-2-9",
                           "2026-02-9",
                           "2026-2-09",
                           "24-02-09",
                           "2026-02-09x",
                           " 2026-02-09",
                           "2026-02-09 ",
                           "20260209",
                           "2026/02/09",
                           "2026-02",
                           "2026-02-09-01",
                           "+026-02-09",
                           "2026-+2-09",
                           "4 Mar 26",
                           "4 Ma 2026",
                           "4 Marc 2026",
                           "Mar 4 2026",
                           "4  Mar 2026",
                           "4 Mar",
                           "004 Mar 2026",
                           "today",
                           "--",
                           "1/2",
                           "03/04/25",
                           "1.2",
                           "-2026-02-09"}) {
    BOOST_TEST(day(text) == "not_a_number", "\"" << text << "\"");
  }
}

BOOST_AUTO_TEST_CASE(quarters_are_read_and_said) {
  BOOST_TEST(quarter("2Q2018") == "2Q2018");
  BOOST_TEST(quarter("4q1999") == "4Q1999");
  BOOST_TEST(quarter("0Q2018") == "out_of_range");
  BOOST_TEST(quarter("5Q2018") == "out_of_range");
  BOOST_TEST(quarter("1Q1899") == "out_of_range");
  BOOST_TEST(quarter("1Q2200") == "out_of_range");
  BOOST_TEST(quarter("Q22018") == "not_a_number");
  BOOST_TEST(quarter("2Q18") == "not_a_number");
  BOOST_TEST(quarter("22018Q") == "not_a_number");
  BOOST_TEST((Quarter{2018, 4} < Quarter{2019, 1}));
}

BOOST_AUTO_TEST_SUITE_END()
