#include "quantity/hours.h"

#include <array>
#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/outcome.h"

using namespace quantity;

namespace {

std::string hours(std::string_view text) { return outcome::of(read_hours(text)); }

Hours read(std::string_view text) { return read_hours(text).value(); }

Hours minutes(std::int64_t count) { return Hours::of(count * 60); }

// The last minute that each table prints for each tenth from .0 to .9; what follows is 1.0.
using Table = std::array<int, 10>;
// cases/rules.md R3a: a national air-services pilot logbook, front page (G4).
constexpr Table half_up_table{2, 8, 14, 20, 26, 32, 38, 44, 50, 56};
// cases/rules.md R3b: an airline's chart (G5).
constexpr Table half_down_table{3, 9, 15, 21, 27, 33, 39, 45, 51, 57};

std::string printed(const Table& table, int minute) {
  for (std::size_t tenth = 0; tenth < table.size(); ++tenth) {
    if (minute <= table.at(tenth)) return "0." + std::to_string(tenth);
  }
  return "1.0";
}

}  // namespace

BOOST_AUTO_TEST_SUITE(hours_of_service)

BOOST_AUTO_TEST_CASE(tenths_hundredths_and_minutes_are_read_exactly) {
  BOOST_TEST(read("1.7").count() == 6120);
  BOOST_TEST(read("1.70").count() == 6120);
  BOOST_TEST(read("1,7").count() == 6120);
  BOOST_TEST(read("1:42").count() == 6120);
  BOOST_TEST(read("1:42:30").count() == 6150);
  BOOST_TEST(read("0:47").count() == 47 * 60);
  BOOST_TEST(read("00:47").count() == 47 * 60);
  BOOST_TEST(read("3").count() == 10800);
  BOOST_TEST(read("4321.25").count() == 15556500);
  BOOST_TEST(read("1000000").count() == 3'600'000'000);
  BOOST_TEST(hours_and_minutes(1, 42).value().count() == 6120);
}

BOOST_AUTO_TEST_CASE(hours_are_said_in_hundredths_else_minutes_else_seconds) {
  BOOST_TEST(say(Hours::of(6120)) == "1.7");
  BOOST_TEST(say(Hours::of(4500)) == "1.25");
  BOOST_TEST(say(Hours::of(7200)) == "2.0");
  BOOST_TEST(say(Hours::of(0)) == "0.0");
  BOOST_TEST(say(minutes(47)) == "0:47");
  BOOST_TEST(say(Hours::of(43201)) == "12:00:01");
  BOOST_TEST(say(Hours::of(-6120)) == "-1.7");
  BOOST_TEST(say(Hours::of(-2820)) == "-0:47");
  BOOST_TEST(say(Hours::of(-1)) == "-0:00:01");
  BOOST_TEST(say(HourMeter::of(4444200)) == "1234.5");
  BOOST_TEST(say(Factor::of(1120)) == "1.12");
  BOOST_TEST(say(factor_one) == "1");
}

BOOST_AUTO_TEST_CASE(what_is_not_exact_shows_both_neighbours) {
  BOOST_TEST(hours("1.705") == "not_exact 1.70 1.71");
  BOOST_TEST(hours("1.234") == "not_exact 1.23 1.24");
  BOOST_TEST(hours("0.999") == "not_exact 0.99 1.00");
  BOOST_TEST(hours("1.7001") == "not_exact 1.70 1.71");
}

BOOST_AUTO_TEST_CASE(what_has_two_readings_shows_both) {
  BOOST_TEST(hours("1,234") == "two_readings 1.234 1234");
  BOOST_TEST(hours("4.320") == "two_readings 4.32 4320");
  BOOST_TEST(hours("4321.500") == "4321.5");
  BOOST_TEST(hours("1:4") == "two_readings 1:04 1:40");
  BOOST_TEST(hours("1:42:3") == "two_readings 1:42:03 1:42:30");
}

BOOST_AUTO_TEST_CASE(what_is_out_of_range_is_refused) {
  for (const char* text : {"1:60", "1:99", "1:42:60", "1000000.01", "1000000:01", "1000000:00:01",
                           "1234567890", "1234567890:00", "-1.7", "9999999999999999999:00"}) {
    BOOST_TEST(hours(text) == "out_of_range", text);
  }
  BOOST_TEST(outcome::of(hours_and_minutes(1, 60)) == "out_of_range");
  BOOST_TEST(outcome::of(hours_and_minutes(-1, 0)) == "out_of_range");
  BOOST_TEST(outcome::of(hours_and_minutes(0, -1)) == "out_of_range");
  BOOST_TEST(outcome::of(hours_and_minutes(1'000'000, 1)) == "out_of_range");
  BOOST_TEST(outcome::of(hours_and_minutes(1'000'000, 0)) == "1000000.0");
  BOOST_TEST(outcome::of(hours_and_minutes(INT64_MAX, 0)) == "out_of_range");
}

BOOST_AUTO_TEST_CASE(what_is_no_time_is_refused) {
  for (const char* text :
       {"",      ":",        "1:",       ":42",    "1:6",      "1:7",    "1:423",
        "1:42:", "1:42:3:0", "1::42",    "1.5:42", "-1:42",    "1:-4",   "1:42.5",
        "1 :42", "1:4:30",   "1:42:345", "1:2:3",  "1:123:30", "1:42:9", "half"}) {
    BOOST_TEST(hours(text) == "not_a_number", "\"" << text << "\"");
  }
}

BOOST_AUTO_TEST_CASE(factors_are_above_zero_and_at_most_a_hundred) {
  BOOST_TEST(outcome::of(read_factor("1.12")) == "1.12");
  BOOST_TEST(outcome::of(read_factor("100")) == "100");
  BOOST_TEST(outcome::of(read_factor("100.001")) == "out_of_range");
  BOOST_TEST(outcome::of(read_factor("0")) == "out_of_range");
  BOOST_TEST(outcome::of(read_factor("1.1255")) == "not_exact 1.125 1.126");
}

// cases/rules.md 1 to 3, and every minute of both tables.
BOOST_AUTO_TEST_CASE(tenths_follow_the_printed_tables_minute_by_minute) {
  for (int minute = 0; minute <= 60; ++minute) {
    BOOST_TEST(say_tenths(minutes(minute), TenthsRule::half_up) == printed(half_up_table, minute));
    BOOST_TEST(say_tenths(minutes(minute), TenthsRule::half_down) ==
               printed(half_down_table, minute));
  }
  BOOST_TEST(say_tenths(minutes(75), TenthsRule::half_up) == "1.3");
}

BOOST_AUTO_TEST_CASE(tenths_of_negative_amounts_are_mirrored) {
  for (int minute = 1; minute <= 180; ++minute) {
    for (const TenthsRule rule : {TenthsRule::half_up, TenthsRule::half_down}) {
      const std::string over = say_tenths(minutes(-minute), rule);
      const std::string left = say_tenths(minutes(minute), rule);
      BOOST_REQUIRE_EQUAL(over, left == "0.0" ? left : "-" + left);
    }
  }
}

// cases/rules.md 5: ten flights of 8 minutes each; minutes are kept, only the display is rounded.
BOOST_AUTO_TEST_CASE(a_sum_is_rounded_once) {
  BOOST_TEST(say_tenths(minutes(8) * 10, TenthsRule::half_up) == "1.3");
  BOOST_TEST(say_tenths(minutes(8), TenthsRule::half_up) == "0.1");
}

// cases/rules.md 8.
BOOST_AUTO_TEST_CASE(ten_times_a_tenth_is_one_hour) {
  Hours total = read("3974.8");
  for (int i = 0; i < 10; ++i) total += read("0.1");
  BOOST_TEST(say(total) == "3975.8");
}

// style.md 3: added as floating point these give 17282.99999999793.
BOOST_AUTO_TEST_CASE(twelve_thousand_flights_add_up_exactly) {
  Hours total;
  for (int i = 0; i < 12'345; ++i) total += read("1.4");
  BOOST_TEST(total.count() == std::int64_t{17'283} * 3600);
  BOOST_TEST(say(total) == "17283.0");
}

// record-language-trial.md 4.2: 0.1 h x 1.12 is 403.2 s, no whole number of seconds.
BOOST_AUTO_TEST_CASE(factors_stay_exact_and_rounding_says_which_way) {
  const ServiceHours factored = read("0.1") * Factor::of(1120);
  BOOST_TEST(factored.count() == 403'200);
  BOOST_TEST(floor_to_seconds(factored).count() == 403);
  BOOST_TEST(ceiling_to_seconds(factored).count() == 404);
  BOOST_TEST(floor_to_seconds(-factored).count() == -404);
  BOOST_TEST(ceiling_to_seconds(-factored).count() == -403);
  BOOST_TEST((service_hours(read("1.7")) == ServiceHours::of(6'120'000)));
}

BOOST_AUTO_TEST_CASE(a_meter_gives_hours_between_two_readings) {
  const HourMeter before = read_hour_meter("1234.5").value();
  const HourMeter after = read_hour_meter("1236.2").value();
  BOOST_TEST(say(after - before) == "1.7");
  BOOST_TEST(outcome::of(read_hour_meter("1234.567")) == "not_exact 1234.56 1234.57");
}

BOOST_AUTO_TEST_CASE(every_second_of_thirty_hours_is_said_and_read_again) {
  for (std::int64_t second = 0; second <= std::int64_t{30} * 3600; ++second) {
    const std::string text = say(Hours::of(second));
    BOOST_REQUIRE_EQUAL(read(text).count(), second);
    BOOST_REQUIRE_EQUAL(say(read_hour_meter(text).value()), text);
  }
}

BOOST_AUTO_TEST_CASE(any_hours_are_said_and_read_again) {
  std::mt19937_64 choices = outcome::seeded("any_hours_are_said_and_read_again");
  for (int i = 0; i < 50'000; ++i) {
    const std::int64_t second = outcome::between(0, std::int64_t{1'000'000} * 3600, choices);
    BOOST_REQUIRE_EQUAL(read(say(Hours::of(second))).count(), second);
    BOOST_REQUIRE_EQUAL(say(Hours::of(-second - 1)), '-' + say(Hours::of(second + 1)));
  }
}

BOOST_AUTO_TEST_SUITE_END()
