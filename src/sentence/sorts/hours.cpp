// How hours are typed: 1.7 h, 1.7h, 1:42, 1:42 h, 1h42, 1 h 42 min, 42 min.
#include <optional>

#include "quantity/figure.h"
#include "sentence/sorts/figures.h"

namespace sentence {
namespace {

using quantity::is_all_digits;
using quantity::is_digit;

bool take_hour_unit(Cursor& cursor) {
  return take_unit(cursor, {"h", "hrs", "hr", "hours", "hour"});
}

// Where there is none, the cursor stays, before any blanks.
template <class Takes>
bool take_or_stay(Cursor& cursor, Takes takes) {
  const std::size_t start = cursor.at();
  const bool is_taken = take_quietly(cursor, takes);
  if (!is_taken) cursor.go_to(start);
  return is_taken;
}

bool take_minute_unit(Cursor& cursor) {
  return take_or_stay(cursor, [&] {
    return take_unit(cursor, {"min", "mins", "minutes", "minute"});
  });
}

// h42 after the 1 of 1h42.
std::string_view take_glued_minutes(Cursor& cursor) {
  const std::string_view rest = cursor.text().substr(cursor.at(), cursor.end() - cursor.at());
  const bool has_minutes = rest.size() >= 3 && (rest[0] == 'h' || rest[0] == 'H') &&
                           is_digit(rest[1]) && is_digit(rest[2]);
  if (!has_minutes) return {};
  const std::size_t start = cursor.at();
  const std::string_view word = cursor.take_bare();
  if (word.size() == 3) return word.substr(1);
  cursor.go_to(start);
  return {};
}

// 42 min after 1 h; empty if there is no such thing.
std::string_view take_minutes(Cursor& cursor) {
  const std::size_t start = cursor.at();
  const std::string_view minutes = cursor.take_number();
  if (is_all_digits(minutes) && minutes.size() <= 2 && take_minute_unit(cursor)) return minutes;
  cursor.go_to(start);
  return {};
}

// Hours and minutes that were typed apart; the figure is all that stands before the cursor.
struct Apart {
  std::size_t from;
  std::string_view whole;
  std::string_view minutes;
};
bool hand_over_both(Cursor& cursor, const Apart& apart, quantity::Hours& hours) {
  const std::string_view figure = cursor.text().substr(apart.from, cursor.at() - apart.from);
  if (apart.whole.size() > 9) {
    return refuse_figure(cursor, figure, {quantity::Misreading::out_of_range, {}, {}});
  }
  const quantity::Typed<quantity::Hours> typed = quantity::hours_and_minutes(
      quantity::value_of_digits(apart.whole), quantity::value_of_digits(apart.minutes));
  return hand_over(cursor, figure, typed, hours);
}

}  // namespace

bool read_hours(Cursor& cursor, quantity::Hours& hours) {
  const std::size_t from = cursor.skip_blanks();
  const std::string_view figure = cursor.take_number();
  if (figure.empty()) return false;
  if (figure.find(':') != std::string_view::npos) {
    take_or_stay(cursor, [&] { return take_hour_unit(cursor); });
    return hand_over(cursor, figure, quantity::read_hours(figure), hours);
  }
  const bool is_whole = is_all_digits(figure);
  if (is_whole) {
    const std::string_view glued = take_glued_minutes(cursor);
    if (!glued.empty()) return hand_over_both(cursor, {from, figure, glued}, hours);
    if (figure.size() <= 2 && take_minute_unit(cursor)) {
      return hand_over_both(cursor, {from, "0", figure}, hours);
    }
  }
  if (!take_hour_unit(cursor)) return false;
  if (is_whole) {
    const std::string_view minutes = take_minutes(cursor);
    if (!minutes.empty()) return hand_over_both(cursor, {from, figure, minutes}, hours);
  }
  return hand_over(cursor, figure, quantity::read_hours(figure), hours);
}

bool read_hour_meter(Cursor& cursor, quantity::HourMeter& reading) {
  const std::string_view figure = cursor.take_number();
  if (figure.empty()) return false;
  take_or_stay(cursor, [&] { return take_hour_unit(cursor); });
  return hand_over(cursor, figure, quantity::read_hour_meter(figure), reading);
}

}  // namespace sentence
