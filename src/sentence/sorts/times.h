// sentence/sorts/times.h: how days, times of day, instants and quarters are read and written.
#pragma once

#include <string>

#include "quantity/calendar.h"
#include "sentence/declare.h"

namespace sentence {

// 2026-03-04, 4 Mar 2026, today, yesterday (the last two if it is known which day it is).
bool read_day(Cursor& cursor, quantity::Day& day);
// 09:11-07:00, 09:11Z. Without its offset a time is refused.
bool read_clock_time(Cursor& cursor, quantity::ClockTime& time);
bool read_instant(Cursor& cursor, quantity::Instant& instant);
bool read_quarter(Cursor& cursor, quantity::Quarter& quarter);

void say_day(std::string& out, const quantity::Day& day);
void say_clock_time(std::string& out, const quantity::ClockTime& time);
void say_instant(std::string& out, const quantity::Instant& instant);
void say_quarter(std::string& out, const quantity::Quarter& quarter);

template <>
inline constexpr Sort sort_of<quantity::Day> =
    Leaf<read_day, say_day>::sort("date", "2026-03-04", "4digit \"-\" 2digit \"-\" 2digit");
template <>
inline constexpr Sort sort_of<quantity::ClockTime> = Leaf<read_clock_time, say_clock_time>::sort(
    "time", "09:11-07:00", "2digit \":\" 2digit ( \"Z\" | ( \"+\" | \"-\" ) 2digit \":\" 2digit )");
template <>
inline constexpr Sort sort_of<quantity::Instant> = Leaf<read_instant, say_instant>::sort(
    "instant", "2026-03-04T18:22:05Z", "date \"T\" 2digit \":\" 2digit \":\" 2digit \"Z\"");
template <>
inline constexpr Sort sort_of<quantity::Quarter> =
    Leaf<read_quarter, say_quarter>::sort("quarter", "2Q2018", "digit \"Q\" 4digit");

}  // namespace sentence
