#include "reckon/forecast.h"

#include <boost/test/unit_test.hpp>
#include <random>

#include "definitions.h"

using namespace definitions;
using reckon::UseRate;

BOOST_AUTO_TEST_SUITE(forecast)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");

UseRate rate(const std::string& hours, std::int64_t days) {
  return {UseRate::From::stated, support::service(hours), quantity::Days::of(days)};
}

std::string reached(const std::string& left, const UseRate& rate, const std::string& as_of) {
  return text(reckon::day_reached(support::service(left), rate, support::day(as_of)));
}

UseRate rate_of(const support::Book& book, const std::string& as_of) {
  const AsOf asked(book, as_of);
  return reckon::use_rate(asked.histories, asked.standing, kit);
}

}  // namespace

BOOST_AUTO_TEST_CASE(use_starts_the_day_after) {
  BOOST_TEST(reached("120.0", rate("1.25", 1), "2025-01-15") == "2025-04-21");  // rules 91
  BOOST_TEST(reached("0.01", rate("1.25", 1), "2025-01-15") == "2025-01-16");
  BOOST_TEST(reached("1.26", rate("1.25", 1), "2025-01-15") == "2025-01-17");
}

BOOST_AUTO_TEST_CASE(a_rate_is_never_divided_before_it_is_used) {  // records S47: 516 whole days
  const quantity::Day as_of = support::day("2025-03-10");
  const auto day = reckon::day_reached(support::service("190.0"), rate("110.0", 299), as_of);
  BOOST_REQUIRE(day.has_value());
  BOOST_TEST((*day - as_of).count() == 517);
}

BOOST_AUTO_TEST_CASE(without_use_there_is_no_day_and_at_nothing_left_it_is_today) {  // rules 92
  BOOST_TEST(reached("50.0", rate("0.0", 90), "2025-01-15") == "no day");
  BOOST_TEST(reached("0.0", rate("1.0", 1), "2025-01-15") == "2025-01-15");
  BOOST_TEST(reached("900000.0", rate("0.1", 365), "2025-01-15") == "no day");
}

BOOST_AUTO_TEST_CASE(a_walk_day_by_day_reaches_the_same_day) {
  const unsigned seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937 random(seed);
  std::uniform_int_distribution<std::int64_t> any_left(1, 400'000);
  std::uniform_int_distribution<std::int64_t> any_use(100'000, 900'000);
  std::uniform_int_distribution<std::int64_t> any_days(1, 365);
  for (int round = 0; round < 300; ++round) {
    const std::int64_t left = any_left(random);
    const std::int64_t used = any_use(random);
    const std::int64_t days = any_days(random);
    // After n days n / days of the use is flown: left is reached once n x used >= left x days.
    std::int64_t walked = 0;
    std::int64_t flown_times_days = 0;
    while (flown_times_days < left * days) {
      flown_times_days += used;
      ++walked;
    }
    BOOST_TEST_CONTEXT("seed " << seed << " left " << left << " used " << used) {
      BOOST_TEST(reckon::days_to_use(left, used, quantity::Days::of(days)).value() == walked);
    }
  }
}

BOOST_AUTO_TEST_CASE(five_flights_in_ninety_days_make_a_rate) {
  support::Book book;
  book.say("2024-01-01", support::forward(kit, "100.0"));
  for (const char* day : {"2025-01-01", "2025-01-02", "2025-01-03", "2025-01-04"}) {
    book.say(day, support::flew(kit, "2.0"));
  }
  const UseRate year = rate_of(book, "2025-01-31");
  BOOST_CHECK(year.from == UseRate::From::last_365_days);
  BOOST_TEST(year.days.count() == 365);
  book.say("2025-01-05", support::flew(kit, "2.0"));
  const UseRate quarter = rate_of(book, "2025-01-31");
  BOOST_CHECK(quarter.from == UseRate::From::last_90_days);
  BOOST_TEST(quarter.days.count() == 90);
  BOOST_TEST(quarter.hours.count() == support::service("10.0").count());
}

BOOST_AUTO_TEST_CASE(a_young_book_is_reckoned_over_its_own_days) {
  support::Book book;
  book.say("2025-01-01", support::forward(kit, "100.0"));
  for (int flight = 0; flight < 5; ++flight) book.say("2025-01-02", support::flew(kit, "1.0"));
  const UseRate rate = rate_of(book, "2025-01-10");
  BOOST_TEST(rate.days.count() == 10);
}

BOOST_AUTO_TEST_CASE(no_flight_in_a_year_makes_no_rate) {
  support::Book book;
  book.say("2020-01-01", support::forward(kit, "100.0"));
  book.say("2020-01-02", support::flew(kit, "1.0"));
  BOOST_CHECK(rate_of(book, "2025-01-10").from == UseRate::From::none);
}

BOOST_AUTO_TEST_CASE(the_plan_on_record_stands_before_recent_use_while_it_holds) {
  support::Book book;
  book.say("2024-01-01", support::forward(kit, "100.0"));
  logbook::Plan plan;
  plan.aircraft = kit;
  plan.use = logbook::Rate{support::hours("25.0"), logbook::Per::month};
  plan.from = support::day("2025-05-01");
  plan.to = support::day("2025-09-30");
  book.say("2025-01-01", plan);
  BOOST_CHECK(rate_of(book, "2025-04-30").from == UseRate::From::none);
  const UseRate planned = rate_of(book, "2025-05-01");
  BOOST_CHECK(planned.from == UseRate::From::plan);
  BOOST_TEST(planned.hours.count() == support::service("300.0").count());
  BOOST_TEST(planned.days.count() == 365);
  BOOST_CHECK(rate_of(book, "2025-10-01").from == UseRate::From::none);
}

BOOST_AUTO_TEST_SUITE_END()
