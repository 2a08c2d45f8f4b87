#include "quantity/hours.h"

#include <cstddef>

#include "quantity/figure.h"

namespace quantity {
namespace {

constexpr std::int64_t seconds_in_hour = 3600;
constexpr std::int64_t seconds_in_minute = 60;
constexpr std::int64_t seconds_in_hundredth = 36;
constexpr std::int64_t seconds_in_tenth = 360;
constexpr std::int64_t most_hours = 1'000'000;
constexpr FigureForm hundredths_of_hours{2, 0, most_hours * 100};

std::string say_clock(std::int64_t seconds) {
  const std::int64_t minutes = seconds % seconds_in_hour / seconds_in_minute;
  const std::string text = say_digits(seconds / seconds_in_hour, 1) + ':' + say_digits(minutes, 2);
  const std::int64_t rest = seconds % seconds_in_minute;
  return rest == 0 ? text : text + ':' + say_digits(rest, 2);
}

std::string say_seconds(std::int64_t seconds) {
  if (seconds % seconds_in_hundredth == 0) {
    return say_figure(seconds / seconds_in_hundredth, {2, 1});
  }
  if (seconds < 0) return '-' + say_clock(checked_subtract(0, seconds));
  return say_clock(seconds);
}

// The digits of 1:42 or 1:42:30; seconds is empty in 1:42.
struct Clock {
  std::string_view hours;
  std::string_view minutes;
  std::string_view seconds;
};

// 1:4 may be 1:04 or 1:40.
Misread misread_short_clock(std::string_view before, std::string_view digit) {
  const std::string start(before);
  const std::string end(digit);
  if (digit.front() > '5') return {Misreading::not_a_number, {}, {}};
  return {Misreading::two_readings, start + '0' + end, start + end + '0'};
}

Typed<Hours> weigh(const Clock& clock) {
  constexpr Misreading out_of_range = Misreading::out_of_range;
  if (clock.hours.size() > 9) return out_of_range;
  const std::int64_t seconds = clock.seconds.empty() ? 0 : value_of_digits(clock.seconds);
  if (seconds > 59) return out_of_range;
  const Typed<Hours> whole_minutes =
      hours_and_minutes(value_of_digits(clock.hours), value_of_digits(clock.minutes));
  if (!whole_minutes.is_read()) return whole_minutes;
  const Hours hours = whole_minutes.value() + Hours::of(seconds);
  if (hours > Hours::of(most_hours * seconds_in_hour)) return out_of_range;
  return hours;
}

Typed<Hours> read_clock(std::string_view text) {
  constexpr Misreading not_a_number = Misreading::not_a_number;
  const std::size_t first = text.find(':');
  const std::size_t second = text.find(':', first + 1);
  const bool has_seconds = second != std::string_view::npos;
  Clock clock{text.substr(0, first), text.substr(first + 1), {}};
  if (has_seconds) {
    clock.minutes = text.substr(first + 1, second - first - 1);
    clock.seconds = text.substr(second + 1);
  }
  if (!is_all_digits(clock.hours) || !is_all_digits(clock.minutes)) return not_a_number;
  if (has_seconds && (clock.minutes.size() != 2 || !is_all_digits(clock.seconds))) {
    return not_a_number;
  }
  const std::string_view last = has_seconds ? clock.seconds : clock.minutes;
  if (last.size() == 1) return misread_short_clock(text.substr(0, text.size() - 1), last);
  return last.size() == 2 ? weigh(clock) : not_a_number;
}

}  // namespace

std::string say(Hours hours) { return say_seconds(hours.count()); }

std::string say(HourMeter reading) { return say_seconds(reading.count()); }

std::string say(Factor factor) { return say_figure(factor.count(), {3, 0}); }

std::string say_tenths(Hours hours, TenthsRule rule) {
  const bool is_negative = hours.is_negative();
  const std::int64_t size = is_negative ? (-hours).count() : hours.count();
  const std::int64_t half = seconds_in_tenth / 2;
  const std::int64_t tenths = rule == TenthsRule::half_up
                                  ? floor_divide(checked_add(size, half), seconds_in_tenth)
                                  : ceiling_divide(size - half, seconds_in_tenth);
  return say_figure(is_negative ? -tenths : tenths, {1, 1});
}

Typed<Hours> read_hours(std::string_view text) {
  if (text.find(':') != std::string_view::npos) return read_clock(text);
  const Typed<std::int64_t> hundredths = read_figure(text, hundredths_of_hours);
  if (!hundredths.is_read()) return hundredths.misread();
  return Hours::of(hundredths.value() * seconds_in_hundredth);
}

Typed<Hours> hours_and_minutes(std::int64_t hours, std::int64_t minutes) {
  const bool is_in_range = hours >= 0 && minutes >= 0 && minutes <= 59 &&
                           (hours < most_hours || (hours == most_hours && minutes == 0));
  if (!is_in_range) return Misreading::out_of_range;
  return Hours::of(hours * seconds_in_hour + minutes * seconds_in_minute);
}

Typed<HourMeter> read_hour_meter(std::string_view text) {
  const Typed<Hours> hours = read_hours(text);
  if (!hours.is_read()) return hours.misread();
  return HourMeter::of(hours.value().count());
}

Typed<Factor> read_factor(std::string_view text) {
  const Typed<std::int64_t> factor = read_figure(text, {3, 0, most_factor.count()});
  if (!factor.is_read()) return factor.misread();
  if (factor.value() == 0) return Misreading::out_of_range;
  return Factor::of(factor.value());
}

}  // namespace quantity
