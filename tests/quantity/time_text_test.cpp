// Times of day and UTC instants as text (quantity/calendar.h).
#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/calendar.h"
#include "quantity/outcome.h"

using namespace quantity;

namespace {

std::string time(std::string_view text) { return outcome::of(read_clock_time(text)); }

std::string instant(std::string_view text) { return outcome::of(read_instant(text)); }

std::int64_t utc(std::string_view day, std::string_view time) {
  return utc_minute(read_day(day).value(), read_clock_time(time).value());
}

}  // namespace

BOOST_AUTO_TEST_SUITE(time_text)

BOOST_AUTO_TEST_CASE(times_of_day_carry_their_offset) {
  BOOST_TEST(time("09:11-07:00") == "09:11-07:00");
  BOOST_TEST(time("9:11-07:00") == "09:11-07:00");
  BOOST_TEST(time("09:11+05:30") == "09:11+05:30");
  BOOST_TEST(time("09:11Z") == "09:11Z");
  BOOST_TEST(time("09:11z") == "09:11Z");
  BOOST_TEST(time("09:11+00:00") == "09:11Z");
  BOOST_TEST(time("00:00-14:00") == "00:00-14:00");
  BOOST_TEST(time("23:59+14:00") == "23:59+14:00");
  BOOST_TEST(read_clock_time("09:11-07:00").value().minute == 551);
  BOOST_TEST(read_clock_time("09:11-07:00").value().offset.count() == -420);
}

BOOST_AUTO_TEST_CASE(times_that_no_clock_shows_are_refused) {
  for (const char* text :
       {"25:10Z", "24:00Z", "09:60Z", "09:11+14:01", "09:11-15:00", "09:11+05:60"}) {
    BOOST_TEST(time(text) == "out_of_range", text);
  }
  for (const char* text : {"", "Z", "09:11", "0911Z", "09:1Z", "009:11Z", "09:11:00Z", "09:11-7:00",
                           "09:11-0700", "09:11-00:00", "09:11Z ", " 09:11Z", "09:11ZZ", "-9:11Z",
                           "09:11 Z", "09.11Z", "09:11+", "+09:11", "09:11-07:00Z"}) {
    BOOST_TEST(time(text) == "not_a_number", "\"" << text << "\"");
  }
}

BOOST_AUTO_TEST_CASE(every_time_of_day_at_many_offsets_is_said_and_read_again) {
  for (std::int64_t offset = -840; offset <= 840; offset += 15) {
    for (std::int32_t minute = 0; minute < 24 * 60; ++minute) {
      const ClockTime at{minute, Offset::of(offset)};
      BOOST_REQUIRE(read_clock_time(say(at)).value() == at);
    }
  }
}

// cases/rules.md 4 and 6: airborne to landed, also over midnight, also between two offsets.
BOOST_AUTO_TEST_CASE(minutes_between_two_times_are_counted_in_utc) {
  BOOST_TEST(utc("2026-03-04", "09:58-07:00") - utc("2026-03-04", "09:11-07:00") == 47);
  BOOST_TEST(utc("2026-03-04", "10:06-07:00") - utc("2026-03-04", "09:00-07:00") == 66);
  BOOST_TEST(utc("2026-03-05", "00:25Z") - utc("2026-03-04", "23:40Z") == 45);
  BOOST_TEST(utc("2026-03-04", "10:58-06:00") - utc("2026-03-04", "09:11-07:00") == 47);
  BOOST_TEST(say_tenths(Hours::of(47 * 60), TenthsRule::half_up) == "0.8");
  BOOST_TEST(say_tenths(Hours::of(66 * 60), TenthsRule::half_up) == "1.1");
  BOOST_TEST(say_tenths(Hours::of(45 * 60), TenthsRule::half_up) == "0.8");
  BOOST_TEST(say_tenths(Hours::of(45 * 60), TenthsRule::half_down) == "0.7");
}

// cases/rules.md 21: 19:30 at UTC-7 is 02:30 of the next day in UTC.
BOOST_AUTO_TEST_CASE(an_evening_in_the_west_is_the_next_day_in_utc) {
  const std::int64_t minute = utc("2025-01-26", "19:30-07:00");
  BOOST_TEST(say(Instant::of(minute * 60)) == "2025-01-27T02:30:00Z");
  BOOST_TEST(say(utc_day(Instant::of(minute * 60))) == "2025-01-27");
}

BOOST_AUTO_TEST_CASE(instants_are_read_and_said) {
  BOOST_TEST(instant("2026-03-04T18:22:05Z") == "2026-03-04T18:22:05Z");
  BOOST_TEST(read_instant("1970-01-01T00:00:00Z").value().count() == 0);
  // Open Group Base Specifications, "seconds since the epoch": 2001-09-09T01:46:40Z (from memory).
  BOOST_TEST(read_instant("2001-09-09T01:46:40Z").value().count() == 1'000'000'000);
  BOOST_TEST(say(Instant::of(-1)) == "1969-12-31T23:59:59Z");
  BOOST_TEST(say(utc_day(Instant::of(-1))) == "1969-12-31");
}

BOOST_AUTO_TEST_CASE(instants_take_one_form_only) {
  for (const char* text : {"2026-03-04T24:00:00Z", "2026-03-04T23:60:00Z", "2026-03-04T23:59:60Z",
                           "1899-03-04T23:59:00Z"}) {
    BOOST_TEST(instant(text) == "out_of_range", text);
  }
  for (const char* text : {"", "2026-03-04 18:22:05Z", "2026-03-04T18:22:05z", "2026-03-04T18:22Z",
                           "2026-03-04T18:22:05+00", "4 Mar 2026T18:22:05Z", "2026-03-04T18-22-05Z",
                           "2026-03-04T18:22-05Z", "2026-03-04T1:222:05Z"}) {
    BOOST_TEST(instant(text) == "not_a_number", "\"" << text << "\"");
  }
  BOOST_TEST(instant("2026-02-29T00:00:00Z") == "no_such_day 2026-02-28 2026-03-01");
}

BOOST_AUTO_TEST_CASE(any_instant_is_said_and_read_again) {
  std::mt19937_64 choices = outcome::seeded("any_instant_is_said_and_read_again");
  for (int i = 0; i < 20'000; ++i) {
    // 1900-01-01T00:00:00Z to 2199-12-31T23:59:59Z.
    const Instant at = Instant::of(outcome::between(-2'208'988'800, 7'258'118'399, choices));
    BOOST_REQUIRE(read_instant(say(at)).value() == at);
  }
}

BOOST_AUTO_TEST_SUITE_END()
