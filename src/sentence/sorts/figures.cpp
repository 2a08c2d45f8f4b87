#include "sentence/sorts/figures.h"

#include <algorithm>
#include <array>
#include <utility>

#include "quantity/figure.h"

namespace sentence {
namespace {

using quantity::Typed;

constexpr std::int64_t most_feet = 60'000;
// Days, seconds and minutes of one statement.
constexpr std::int64_t most_small_number = 100'000;

Fault fault_of(quantity::Misreading why) {
  switch (why) {
    case quantity::Misreading::not_a_number:
      return Fault::not_a_number;
    case quantity::Misreading::two_readings:
      return Fault::two_readings;
    case quantity::Misreading::not_exact:
      return Fault::not_exact;
    case quantity::Misreading::not_whole:
      return Fault::not_whole;
    case quantity::Misreading::out_of_range:
      return Fault::out_of_range;
    case quantity::Misreading::no_such_day:
      return Fault::no_such_day;
    case quantity::Misreading::ambiguous_day:
      return Fault::ambiguous_day;
  }
  return Fault::not_a_number;
}

// Where the figure stands in the line.
Misreading misread_at(const Cursor& cursor, std::string_view figure) {
  Misreading misreading;
  const auto from = static_cast<std::size_t>(figure.data() - cursor.text().data());
  misreading.from = static_cast<std::uint16_t>(from);
  misreading.to = static_cast<std::uint16_t>(from + figure.size());
  misreading.read = std::string(figure);
  return misreading;
}

template <class Value>
using Reads = Typed<Value> (*)(std::string_view);

// A figure without a unit.
template <class Value>
bool read_alone(Cursor& cursor, Reads<Value> reads, Value& value) {
  const std::string_view figure = cursor.take_signed_number();
  return !figure.empty() && hand_over(cursor, figure, reads(figure), value);
}

using Units = std::initializer_list<std::string_view>;

// A figure with its unit. Only with its own unit is a figure this one, so only then is it refused.
template <class Value>
bool read_with(Cursor& cursor, Units units, Reads<Value> reads, Value& value) {
  const std::string_view figure = cursor.take_signed_number();
  if (figure.empty() || !take_unit(cursor, units)) return false;
  return hand_over(cursor, figure, reads(figure), value);
}

bool take_any_quietly(Cursor& cursor, Units units) {
  return take_quietly(cursor, [&] {
    return std::any_of(units.begin(), units.end(),
                       [&](std::string_view unit) { return cursor.take_words(unit); });
  });
}

// Refused, and shown in degrees C: to change only the letter would make a wrong temperature.
bool refuse_fahrenheit(Cursor& cursor, std::string_view figure) {
  const auto read = quantity::read_temperature(figure);
  if (cursor.trace() == nullptr || !read.is_read()) return false;
  const std::int64_t ninths = ((read.value() - quantity::Temperature{}).count() - 320) * 5;
  const std::int64_t tenths = quantity::floor_divide(2 * ninths + 9, 18);
  Misreading misreading = misread_at(cursor, figure);
  misreading.fault = Fault::fahrenheit;
  misreading.first = quantity::say(quantity::Temperature::of(tenths));
  return cursor.refuse(std::move(misreading));
}

Typed<std::int64_t> read_small_number(std::string_view text) {
  const Typed<std::int64_t> whole = quantity::read_whole(text);
  if (!whole.is_read() || whole.value() <= most_small_number) return whole;
  return quantity::Misread{quantity::Misreading::out_of_range, {}, {}};
}

Typed<std::int64_t> read_altitude(std::string_view text) {
  return quantity::read_figure(text, {0, -most_feet, most_feet});
}

void say_with(std::string& out, const std::string& figure, std::string_view unit) {
  out += figure;
  out += ' ';
  out += unit;
}

struct TorqueWord {
  logbook::TorqueUnit unit;
  Units words;
};
const std::array<TorqueWord, 4>& torque_words() {
  static const std::array<TorqueWord, 4> words = {
      TorqueWord{logbook::TorqueUnit::percent, {"%"}},
      TorqueWord{logbook::TorqueUnit::psi, {"psi"}},
      TorqueWord{logbook::TorqueUnit::foot_pounds, {"ft-lb", "lb-ft", "ft lb", "lb ft"}},
      TorqueWord{logbook::TorqueUnit::newton_metres, {"N m", "Nm"}}};
  return words;
}

}  // namespace

bool refuse_figure(Cursor& cursor, std::string_view figure, const quantity::Misread& misread) {
  if (cursor.trace() == nullptr) return false;
  Misreading misreading = misread_at(cursor, figure);
  misreading.fault = fault_of(misread.why);
  misreading.first = misread.first;
  misreading.second = misread.second;
  return cursor.refuse(std::move(misreading));
}

bool take_unit(Cursor& cursor, Units units) {
  return take_any_quietly(cursor, units) || cursor.take_words(*units.begin());
}

bool read_factor(Cursor& cursor, quantity::Factor& factor) {
  return read_alone<quantity::Factor>(cursor, quantity::read_factor, factor);
}
bool read_weight(Cursor& cursor, quantity::Weight& weight) {
  return read_alone<quantity::Weight>(cursor, quantity::read_weight, weight);
}
bool read_decimal(Cursor& cursor, quantity::Decimal& decimal) {
  return read_alone<quantity::Decimal>(cursor, quantity::read_decimal, decimal);
}
bool read_volts(Cursor& cursor, quantity::Decimal& volts) {
  return read_with<quantity::Decimal>(cursor, {"V", "volts", "volt"}, quantity::read_decimal,
                                      volts);
}
bool read_amperes(Cursor& cursor, quantity::Decimal& amperes) {
  return read_with<quantity::Decimal>(cursor, {"A", "amps", "amp", "amperes", "ampere"},
                                      quantity::read_decimal, amperes);
}
bool read_percent(Cursor& cursor, quantity::Decimal& percent) {
  return read_with<quantity::Decimal>(cursor, {"%", "percent"}, quantity::read_decimal, percent);
}
bool read_temperature(Cursor& cursor, quantity::Temperature& temperature) {
  const std::string_view figure = cursor.take_signed_number();
  if (figure.empty()) return false;
  if (take_any_quietly(cursor, {"F", "\u00B0 F", "\u00B0F"})) {
    return refuse_fahrenheit(cursor, figure);
  }
  if (!take_unit(cursor, {"C", "\u00B0 C", "\u00B0C"})) return false;
  return hand_over(cursor, figure, quantity::read_temperature(figure), temperature);
}
bool read_margin(Cursor& cursor, quantity::Margin& margin) {
  return read_with<quantity::Margin>(cursor, {"C", "\u00B0 C", "\u00B0C"}, quantity::read_margin,
                                     margin);
}
bool read_whole(Cursor& cursor, std::int64_t& whole) {
  return read_alone<std::int64_t>(cursor, quantity::read_whole, whole);
}
bool read_seconds(Cursor& cursor, std::int64_t& seconds) {
  return read_with<std::int64_t>(cursor, {"s", "sec", "second", "seconds"}, read_small_number,
                                 seconds);
}
bool read_minutes(Cursor& cursor, std::int64_t& minutes) {
  return read_with<std::int64_t>(cursor, {"min", "minute", "minutes", "mins"}, read_small_number,
                                 minutes);
}
bool read_feet(Cursor& cursor, std::int64_t& feet) {
  return read_with<std::int64_t>(cursor, {"ft", "feet"}, read_altitude, feet);
}
bool read_days(Cursor& cursor, std::int64_t& days) {
  return read_with<std::int64_t>(cursor, {"days", "day"}, read_small_number, days);
}

bool read_torque(Cursor& cursor, logbook::Torque& torque) {
  const std::size_t start = cursor.at();
  for (const TorqueWord& word : torque_words()) {
    cursor.go_to(start);
    torque.unit = word.unit;
    if (read_with<quantity::Decimal>(cursor, word.words, quantity::read_decimal, torque.value)) {
      return true;
    }
  }
  return false;
}

bool read_fuel(Cursor& cursor, logbook::FuelFlow& fuel) {
  const std::size_t start = cursor.at();
  fuel.unit = logbook::FuelUnit::pounds_an_hour;
  if (read_with<quantity::Decimal>(cursor, {"lb/h", "lb/hr", "pph"}, quantity::read_decimal,
                                   fuel.value)) {
    return true;
  }
  cursor.go_to(start);
  fuel.unit = logbook::FuelUnit::kilograms_an_hour;
  return read_with<quantity::Decimal>(cursor, {"kg/h", "kg/hr"}, quantity::read_decimal,
                                      fuel.value);
}

void say_hours(std::string& out, const quantity::Hours& hours) {
  say_with(out, quantity::say(hours), "h");
}
void say_hour_meter(std::string& out, const quantity::HourMeter& reading) {
  out += quantity::say(reading);
}
void say_factor(std::string& out, const quantity::Factor& factor) { out += quantity::say(factor); }
void say_weight(std::string& out, const quantity::Weight& weight) { out += quantity::say(weight); }
void say_decimal(std::string& out, const quantity::Decimal& decimal) {
  out += quantity::say(decimal);
}
void say_volts(std::string& out, const quantity::Decimal& volts) {
  say_with(out, quantity::say(volts), "V");
}
void say_amperes(std::string& out, const quantity::Decimal& amperes) {
  say_with(out, quantity::say(amperes), "A");
}
void say_percent(std::string& out, const quantity::Decimal& percent) {
  say_with(out, quantity::say(percent), "%");
}
void say_temperature(std::string& out, const quantity::Temperature& temperature) {
  say_with(out, quantity::say(temperature), "C");
}
void say_margin(std::string& out, const quantity::Margin& margin) {
  say_with(out, quantity::say(margin), "C");
}
void say_torque(std::string& out, const logbook::Torque& torque) {
  for (const TorqueWord& word : torque_words()) {
    if (word.unit == torque.unit) say_with(out, quantity::say(torque.value), *word.words.begin());
  }
}
void say_fuel(std::string& out, const logbook::FuelFlow& fuel) {
  const bool is_pounds = fuel.unit == logbook::FuelUnit::pounds_an_hour;
  say_with(out, quantity::say(fuel.value), is_pounds ? "lb/h" : "kg/h");
}
void say_whole(std::string& out, const std::int64_t& whole) { out += std::to_string(whole); }
void say_seconds(std::string& out, const std::int64_t& seconds) {
  say_with(out, std::to_string(seconds), "s");
}
void say_minutes(std::string& out, const std::int64_t& minutes) {
  say_with(out, std::to_string(minutes), "min");
}
void say_feet(std::string& out, const std::int64_t& feet) {
  say_with(out, std::to_string(feet), "ft");
}
void say_days(std::string& out, const std::int64_t& days) {
  say_with(out, std::to_string(days), days == 1 ? "day" : "days");
}

}  // namespace sentence
