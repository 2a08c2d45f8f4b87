// quantity/calendar.h: civil days, months, times of day. The only door to the date library. A day
// is where the event happened and is never converted.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "quantity/exact.h"
#include "quantity/hours.h"
#include "quantity/typed.h"

namespace quantity {

// A difference of days.
class Days : public Exact<Days> {};
// A civil day, counted from 1970-01-01.
class Day : public Point<Day, Days> {};

constexpr Day day_after(Day day) { return day + Days::of(1); }
constexpr Day day_before(Day day) { return day - Days::of(1); }

// Days that are typed lie in these years.
inline constexpr int first_year = 1900;
inline constexpr int last_year = 2199;

struct YearMonthDay {
  int year = 1970;
  unsigned month = 1;
  unsigned day = 1;
};
YearMonthDay fields(Day day);
// Empty when there is no such day (2023-02-29) or the year is outside 1900 to 2199.
std::optional<Day> make_day(YearMonthDay fields);

// Months are no durations: they are added only under a named rule.
class Months : public Exact<Months> {};
enum class MonthRule {
  same_day,      // same day number, or the last day of a shorter month (Reg. 1182/71 Art. 3)
  end_of_month,  // through the last day of the month ("calendar months", 14 CFR 91.409)
};
Day add_months(Day day, Months months, MonthRule rule);
Day end_of_month(Day day);

// ISO text 2026-03-04, and for people "4 March 2026".
std::string say(Day day);
std::string say_long(Day day);
// Reads 2026-03-04, 4 Mar 2026, 4 March 2026. 03/04/2025 is ambiguous_day with both readings;
// 25/12/2025 too (one reading), lest the writer trust that order on the third day of a month.
Typed<Day> read_day(std::string_view text);

// Minutes east of Greenwich, -840 to 840.
class Offset : public Exact<Offset> {};
// A time of day at a stated offset: 09:11-07:00, 09:11Z.
struct ClockTime {
  std::int32_t minute = 0;  // of the local day, 0 to 1439
  Offset offset;
  auto operator<=>(const ClockTime&) const = default;
  bool operator==(const ClockTime&) const = default;
};
std::string say(const ClockTime& time);
Typed<ClockTime> read_clock_time(std::string_view text);
// Minutes since 1970-01-01T00:00Z of a local day and time.
std::int64_t utc_minute(Day day, const ClockTime& time);

// A UTC instant in seconds since 1970, written 2026-03-04T18:22:05Z.
class Instant : public Point<Instant, Hours> {};
std::string say(Instant instant);
Typed<Instant> read_instant(std::string_view text);
Day utc_day(Instant instant);

// The quarter in which an elastomer was cured: 2Q2018.
struct Quarter {
  int year = 1970;
  int quarter = 1;
  auto operator<=>(const Quarter&) const = default;
  bool operator==(const Quarter&) const = default;
};
std::string say(Quarter quarter);
Typed<Quarter> read_quarter(std::string_view text);

}  // namespace quantity
