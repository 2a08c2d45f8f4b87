#include "reckon/period.h"

#include <boost/test/unit_test.hpp>
#include <random>

#include "support/entries.h"

// Cases: rules.md B2 and B3, numbers beside each check.
BOOST_AUTO_TEST_SUITE(period)

using logbook::PeriodUnit;

namespace {

std::string from(const std::string& day, std::int64_t number, PeriodUnit unit) {
  return quantity::say(reckon::last_legal_day(support::day(day), {number, unit}));
}

}  // namespace

BOOST_AUTO_TEST_CASE(calendar_months_run_through_the_last_day_of_the_month) {
  BOOST_TEST(from("2014-06-06", 12, PeriodUnit::calendar_months) == "2015-06-30");  // 9
  BOOST_TEST(from("2015-06-04", 12, PeriodUnit::calendar_months) == "2016-06-30");  // 10
  BOOST_TEST(from("2020-07-22", 24, PeriodUnit::calendar_months) == "2022-07-31");  // 11
  BOOST_TEST(from("2003-03-01", 24, PeriodUnit::calendar_months) == "2005-03-31");  // 12
  BOOST_TEST(from("2023-02-28", 12, PeriodUnit::calendar_months) == "2024-02-29");  // 13
  BOOST_TEST(from("2025-05-02", 12, PeriodUnit::calendar_months) == "2026-05-31");  // 16
  BOOST_TEST(from("2025-04-30", 12, PeriodUnit::calendar_months) == "2026-04-30");  // 16
}

BOOST_AUTO_TEST_CASE(months_keep_the_day_or_take_the_last_of_a_shorter_month) {
  BOOST_TEST(from("2025-01-31", 1, PeriodUnit::months) == "2025-02-28");   // 24
  BOOST_TEST(from("2024-01-31", 1, PeriodUnit::months) == "2024-02-29");   // 24
  BOOST_TEST(from("2024-08-31", 6, PeriodUnit::months) == "2025-02-28");   // 28
  BOOST_TEST(from("2025-02-28", 6, PeriodUnit::months) == "2025-08-28");   // 28, chained
  BOOST_TEST(from("2024-02-29", 24, PeriodUnit::months) == "2026-02-28");  // records S46
}

BOOST_AUTO_TEST_CASE(the_day_of_the_event_is_not_counted) {
  BOOST_TEST(from("2019-11-01", 7, PeriodUnit::days) == "2019-11-08");   // 26
  BOOST_TEST(from("2024-02-05", 30, PeriodUnit::days) == "2024-03-06");  // 29
}

BOOST_AUTO_TEST_CASE(a_last_day_on_a_saturday_stays_there) {
  BOOST_TEST(from("2024-03-15", 12, PeriodUnit::months) == "2025-03-15");  // 27
}

BOOST_AUTO_TEST_CASE(years_are_twelve_months_each) {
  BOOST_TEST(from("2010-03-01", 15, PeriodUnit::years) == "2025-03-01");  // records S38
  BOOST_TEST(from("2024-02-29", 1, PeriodUnit::years) == "2025-02-28");
}

namespace {

// The same by walking one day after the other and counting the first days of months.
quantity::Day walked_end_of_month(quantity::Day day, std::int64_t months) {
  std::int64_t begun = 0;
  while (true) {
    const quantity::Day next = quantity::day_after(day);
    if (quantity::fields(next).day == 1 && ++begun > months) return day;
    day = next;
  }
}

// The same day number in the month so many firsts later, or the last day before the next first.
quantity::Day walked_same_day(quantity::Day day, std::int64_t months) {
  const unsigned wanted = quantity::fields(day).day;
  std::int64_t begun = 0;
  while (true) {
    if (begun == months && quantity::fields(day).day == wanted) return day;
    const quantity::Day next = quantity::day_after(day);
    const bool is_first = quantity::fields(next).day == 1;
    if (begun == months && is_first) return day;
    if (is_first) ++begun;
    day = next;
  }
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_walk_day_by_day_ends_on_the_same_day) {
  const unsigned seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937 random(seed);
  std::uniform_int_distribution<std::int64_t> any_day(0, 40'000);
  std::uniform_int_distribution<std::int64_t> any_number(1, 60);
  for (int round = 0; round < 300; ++round) {
    const quantity::Day day = quantity::Day::of(any_day(random));
    const std::int64_t number = any_number(random);
    BOOST_TEST_CONTEXT("seed " << seed << " day " << quantity::say(day) << " months " << number) {
      BOOST_TEST(quantity::say(reckon::last_legal_day(day, {number, PeriodUnit::months})) ==
                 quantity::say(walked_same_day(day, number)));
      BOOST_TEST(
          quantity::say(reckon::last_legal_day(day, {number, PeriodUnit::calendar_months})) ==
          quantity::say(walked_end_of_month(day, number)));
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
