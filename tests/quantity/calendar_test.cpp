#include "quantity/calendar.h"

#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/outcome.h"
#include "quantity/walk.h"

using namespace quantity;

namespace {

Day day(std::string_view text) { return read_day(text).value(); }

std::string after(std::string_view text, std::int64_t months, MonthRule rule) {
  return say(add_months(day(text), Months::of(months), rule));
}

// FAA calendar months (cases/rules.md R5): the last legal day.
std::string calendar_months(std::int64_t months, std::string_view text) {
  return after(text, months, MonthRule::end_of_month);
}

std::string same_day(std::int64_t months, std::string_view text) {
  return after(text, months, MonthRule::same_day);
}

std::string days_after(std::int64_t days, std::string_view text) {
  return say(day(text) + Days::of(days));
}

// Fliegel and Van Flandern, Communications of the ACM 11 (1968) 657 (from memory): the Julian day
// number of a Gregorian date; 1970-01-01 is 2440588.
std::int64_t julian_day(const walk::Date& date) {
  const std::int64_t year = date.year;
  const std::int64_t month = date.month;
  const std::int64_t shift = (month - 14) / 12;
  return (1461 * (year + 4800 + shift)) / 4 + (367 * (month - 2 - 12 * shift)) / 12 -
         (3 * ((year + 4900 + shift) / 100)) / 4 + date.day - 32075;
}

// The day reached by walking until the month has changed so often, then to the day number or to the
// end of the month.
walk::Date walked(walk::Date from, std::int64_t months, MonthRule rule) {
  walk::Date at = from;
  while (months > 0) {
    const unsigned month = at.month;
    at = walk::next(at);
    if (at.month != month) --months;
  }
  const unsigned wanted = rule == MonthRule::same_day ? from.day : 31;
  while (at.day < wanted && walk::next(at).month == at.month) at = walk::next(at);
  return at;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(calendar)

BOOST_AUTO_TEST_CASE(every_day_from_1900_to_2199_has_its_number_and_fields) {
  Day counted = day("1900-01-01");
  for (walk::Date date; date.year <= last_year; date = walk::next(date)) {
    BOOST_REQUIRE_EQUAL(counted.count(), julian_day(date) - 2'440'588);
    BOOST_REQUIRE(walk::date_of(counted) == date);
    BOOST_REQUIRE(walk::day_of(date) == counted);
    BOOST_REQUIRE(day(say(counted)) == counted);
    counted = day_after(counted);
  }
  BOOST_TEST(say(day_before(counted)) == "2199-12-31");
}

BOOST_AUTO_TEST_CASE(days_that_do_not_exist_are_not_made) {
  BOOST_TEST(!make_day({2023, 2, 29}).has_value());
  BOOST_TEST(!make_day({2100, 2, 29}).has_value());
  BOOST_TEST(make_day({2024, 2, 29}).has_value());
  BOOST_TEST(!make_day({2024, 13, 1}).has_value());
  BOOST_TEST(!make_day({2024, 0, 1}).has_value());
  BOOST_TEST(!make_day({2024, 1, 0}).has_value());
  BOOST_TEST(!make_day({2024, 257, 1}).has_value());
  BOOST_TEST(!make_day({2024, 1, 257}).has_value());
  BOOST_TEST(!make_day({1899, 12, 31}).has_value());
  BOOST_TEST(!make_day({2200, 1, 1}).has_value());
  BOOST_TEST(!make_day({67560, 1, 1}).has_value());
}

// cases/rules.md 9 (R5, G11), 10 (G11), 11 (G12), 12 (G13), 13 and 14 (R5, R6), 16.
BOOST_AUTO_TEST_CASE(calendar_months_run_through_the_last_day_of_the_month) {
  BOOST_TEST(calendar_months(12, "2014-06-06") == "2015-06-30");
  BOOST_TEST(say(day_after(day("2015-06-30"))) == "2015-07-01");
  BOOST_TEST(calendar_months(12, "2015-06-04") == "2016-06-30");
  BOOST_TEST(calendar_months(24, "2020-07-22") == "2022-07-31");
  BOOST_TEST(calendar_months(24, "2003-03-01") == "2005-03-31");
  BOOST_TEST(calendar_months(12, "2023-02-28") == "2024-02-29");
  BOOST_TEST(calendar_months(12, "2025-04-03") == "2026-04-30");
  BOOST_TEST(calendar_months(12, "2025-03-28") == "2026-03-31");
  BOOST_TEST(calendar_months(12, "2025-05-02") == "2026-05-31");
  BOOST_TEST(calendar_months(12, "2025-04-30") == "2026-04-30");
  BOOST_TEST(say(end_of_month(day("2024-02-01"))) == "2024-02-29");
}

// cases/rules.md 24 (R10: Reg. 1182/71 Art. 3) and 25's interval (R11, G20).
BOOST_AUTO_TEST_CASE(months_by_the_same_day_end_on_the_last_day_of_a_shorter_month) {
  BOOST_TEST(same_day(1, "2025-01-31") == "2025-02-28");
  BOOST_TEST(same_day(1, "2024-01-31") == "2024-02-29");
  BOOST_TEST(same_day(6, "1999-01-31") == "1999-07-31");
  BOOST_TEST(same_day(12, "2024-02-29") == "2025-02-28");
  BOOST_TEST(same_day(-1, "2024-03-31") == "2024-02-29");
  BOOST_TEST(same_day(0, "2024-03-31") == "2024-03-31");
}

// cases/rules.md 28: both ways of going on after a day was cut to the end of February.
BOOST_AUTO_TEST_CASE(six_months_twice_are_earlier_when_chained) {
  BOOST_TEST(same_day(6, "2024-08-31") == "2025-02-28");
  BOOST_TEST(same_day(12, "2024-08-31") == "2025-08-31");
  BOOST_TEST(same_day(6, same_day(6, "2024-08-31")) == "2025-08-28");
}

// cases/rules.md 18 (R9, G74), 19 and 20 (R9), 26 (R10), 29 (14 CFR 91.171, from memory): the day
// of the event is not counted.
BOOST_AUTO_TEST_CASE(day_counts_leave_out_the_first_day) {
  BOOST_TEST(days_after(10, "2002-09-10") == "2002-09-20");
  BOOST_TEST(days_after(3, "2024-02-27") == "2024-03-01");
  BOOST_TEST(days_after(120, "2024-11-05") == "2025-03-05");
  BOOST_TEST(days_after(7, "2019-11-01") == "2019-11-08");
  BOOST_TEST(days_after(30, "2024-02-05") == "2024-03-06");
  BOOST_TEST((day("2024-03-06") - day("2024-02-05")).count() == 30);
}

// cases/rules.md 27 (caution at R10): no due day moves to the next working day.
BOOST_AUTO_TEST_CASE(a_due_day_on_a_saturday_stays_there) {
  const Day due = add_months(day("2025-02-15"), Months::of(1), MonthRule::same_day);
  BOOST_TEST(say(due) == "2025-03-15");
  // 1970-01-01 was a Thursday.
  BOOST_TEST((due.count() + 4) % 7 == 6);
}

BOOST_AUTO_TEST_CASE(added_months_agree_with_a_walk_from_day_to_day) {
  std::mt19937_64 choices = outcome::seeded("added_months_agree_with_a_walk_from_day_to_day");
  const std::int64_t first = day("1900-01-01").count();
  const std::int64_t last = day("2189-12-31").count();
  for (int i = 0; i < 3000; ++i) {
    Day from = Day::of(outcome::between(first, last, choices));
    if (i % 2 == 0) from = end_of_month(from);
    const std::int64_t months = outcome::between(0, 120, choices);
    for (const MonthRule rule : {MonthRule::same_day, MonthRule::end_of_month}) {
      const Day sum = add_months(from, Months::of(months), rule);
      const walk::Date expected = walked(walk::date_of(from), months, rule);
      BOOST_REQUIRE_MESSAGE(walk::date_of(sum) == expected, say(from) << " + " << months);
    }
  }
}

BOOST_AUTO_TEST_CASE(every_period_that_can_be_typed_ends_on_a_day) {
  const Day last = day("2199-12-31");
  BOOST_TEST(say(add_months(last, Months::of(20'000 * 12), MonthRule::same_day)) == "22199-12-31");
  BOOST_TEST(fields(last + Days::of(20'000)).year == 2254);
  BOOST_CHECK_THROW(fields(Day::of(INT64_MAX)), BrokenPromise);
  BOOST_CHECK_THROW(add_months(last, Months::of(INT64_MAX), MonthRule::same_day), BrokenPromise);
}

BOOST_AUTO_TEST_SUITE_END()
