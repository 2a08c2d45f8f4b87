// sentence/sorts/figures.h: how figures with their units are read and written. Typed units may be
// glued on, long or short, singular or plural; written units are always the same.
#pragma once

#include <initializer_list>
#include <string>

#include "quantity/temperature.h"
#include "quantity/typed.h"
#include "sentence/declare.h"

namespace sentence {

// Refuses the text from there to an end, as the reader of figures said.
bool refuse_figure(Cursor& cursor, std::string_view figure, const quantity::Misread& misread);

// The value, once the figure was read; a figure that was misread is refused.
template <class Value>
bool hand_over(Cursor& cursor, std::string_view figure, const quantity::Typed<Value>& typed,
               Value& value) {
  if (!typed.is_read()) return refuse_figure(cursor, figure, typed.misread());
  value = typed.value();
  return true;
}

// A text that a reader of figures understands, or would but for its size or its two readings.
template <class Value>
bool is_figure(const quantity::Typed<Value>& typed) {
  return typed.is_read() || typed.misread().why != quantity::Misreading::not_a_number;
}

// Takes one of the units; the first is the canonical one.
bool take_unit(Cursor& cursor, std::initializer_list<std::string_view> units);

bool read_hours(Cursor& cursor, quantity::Hours& hours);
bool read_hour_meter(Cursor& cursor, quantity::HourMeter& reading);
bool read_factor(Cursor& cursor, quantity::Factor& factor);
bool read_weight(Cursor& cursor, quantity::Weight& weight);
bool read_decimal(Cursor& cursor, quantity::Decimal& decimal);
bool read_volts(Cursor& cursor, quantity::Decimal& volts);
bool read_amperes(Cursor& cursor, quantity::Decimal& amperes);
bool read_percent(Cursor& cursor, quantity::Decimal& percent);
bool read_temperature(Cursor& cursor, quantity::Temperature& temperature);
bool read_margin(Cursor& cursor, quantity::Margin& margin);
bool read_torque(Cursor& cursor, logbook::Torque& torque);
bool read_fuel(Cursor& cursor, logbook::FuelFlow& fuel);
bool read_whole(Cursor& cursor, std::int64_t& whole);
bool read_seconds(Cursor& cursor, std::int64_t& seconds);
bool read_minutes(Cursor& cursor, std::int64_t& minutes);
bool read_feet(Cursor& cursor, std::int64_t& feet);
bool read_days(Cursor& cursor, std::int64_t& days);

void say_hours(std::string& out, const quantity::Hours& hours);
void say_hour_meter(std::string& out, const quantity::HourMeter& reading);
void say_factor(std::string& out, const quantity::Factor& factor);
void say_weight(std::string& out, const quantity::Weight& weight);
void say_decimal(std::string& out, const quantity::Decimal& decimal);
void say_volts(std::string& out, const quantity::Decimal& volts);
void say_amperes(std::string& out, const quantity::Decimal& amperes);
void say_percent(std::string& out, const quantity::Decimal& percent);
void say_temperature(std::string& out, const quantity::Temperature& temperature);
void say_margin(std::string& out, const quantity::Margin& margin);
void say_torque(std::string& out, const logbook::Torque& torque);
void say_fuel(std::string& out, const logbook::FuelFlow& fuel);
void say_whole(std::string& out, const std::int64_t& whole);
void say_seconds(std::string& out, const std::int64_t& seconds);
void say_minutes(std::string& out, const std::int64_t& minutes);
void say_feet(std::string& out, const std::int64_t& feet);
void say_days(std::string& out, const std::int64_t& days);

template <>
inline constexpr Sort sort_of<quantity::Hours> =
    Leaf<read_hours, say_hours>::sort("hours", "1.7 h", "( decimal | clock ) \"h\"");
template <>
inline constexpr Sort sort_of<quantity::HourMeter> =
    Leaf<read_hour_meter, say_hour_meter>::sort("meter-reading", "1234.5", "decimal | clock");
template <>
inline constexpr Sort sort_of<quantity::Factor> = Leaf<read_factor, say_factor>::sort("factor",
                                                                                      "1.12",
                                                                                      "decimal");
template <>
inline constexpr Sort sort_of<quantity::Weight> = Leaf<read_weight, say_weight>::sort("weight",
                                                                                      "0.5",
                                                                                      "decimal");
template <>
inline constexpr Sort sort_of<quantity::Decimal> = Leaf<read_decimal, say_decimal>::sort("number",
                                                                                         "0.2",
                                                                                         "decimal");
template <>
inline constexpr Sort sort_of<quantity::Temperature> =
    Leaf<read_temperature, say_temperature>::sort("temperature", "702 C",
                                                  "[ \"-\" ] decimal \"C\"");
template <>
inline constexpr Sort sort_of<quantity::Margin> =
    Leaf<read_margin, say_margin>::sort("margin", "10 C", "[ \"-\" ] decimal \"C\"");
template <>
inline constexpr Sort sort_of<logbook::Torque> = Leaf<read_torque, say_torque>::sort(
    "torque", "78 %", "decimal ( \"%\" | \"psi\" | \"ft-lb\" | \"N m\" )");
template <>
inline constexpr Sort sort_of<logbook::FuelFlow> =
    Leaf<read_fuel, say_fuel>::sort("fuel-flow", "210 lb/h", "decimal ( \"lb/h\" | \"kg/h\" )");
template <>
inline constexpr Sort sort_of<std::int64_t> = Leaf<read_whole, say_whole>::sort("whole", "12",
                                                                                "digit { digit }");

inline constexpr Sort volts_sort =
    Leaf<read_volts, say_volts>::sort("volts", "25.9 V", "decimal \"V\"");
inline constexpr Sort amperes_sort =
    Leaf<read_amperes, say_amperes>::sort("amperes", "45 A", "decimal \"A\"");
inline constexpr Sort percent_sort =
    Leaf<read_percent, say_percent>::sort("percent", "96.1 %", "decimal \"%\"");
inline constexpr Sort seconds_sort =
    Leaf<read_seconds, say_seconds>::sort("seconds", "24 s", "whole \"s\"");
inline constexpr Sort minutes_sort =
    Leaf<read_minutes, say_minutes>::sort("minutes", "5 min", "whole \"min\"");
inline constexpr Sort feet_sort =
    Leaf<read_feet, say_feet>::sort("feet", "3500 ft", "[ \"-\" ] whole \"ft\"");
inline constexpr Sort days_sort =
    Leaf<read_days, say_days>::sort("days", "30 days", "whole ( \"day\" | \"days\" )");

}  // namespace sentence
