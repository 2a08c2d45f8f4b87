// How times of day and UTC instants are written and read.
#include <cstddef>

#include "quantity/calendar.h"
#include "quantity/figure.h"

namespace quantity {
namespace {

constexpr std::int64_t seconds_in_day = 86'400;
constexpr std::int64_t most_offset_minutes = 14 * 60;
constexpr Misreading not_a_time = Misreading::not_a_number;
constexpr Misreading out_of_range = Misreading::out_of_range;

// 420 minutes as 07:00.
std::string say_minutes(std::int64_t minutes) {
  return say_digits(minutes / 60, 2) + ':' + say_digits(minutes % 60, 2);
}

// Minutes in 9:11 or 09:11, whatever the hour.
Typed<std::int64_t> read_minutes(std::string_view text) {
  const std::size_t mark = text.find(':');
  if (mark > 2) return not_a_time;  // farther away, or nowhere
  const std::string_view hours = text.substr(0, mark);
  const std::string_view minutes = text.substr(mark + 1);
  if (!is_all_digits(hours) || !is_all_digits(minutes) || minutes.size() != 2) return not_a_time;
  if (value_of_digits(minutes) > 59) return out_of_range;
  return value_of_digits(hours) * 60 + value_of_digits(minutes);
}

// Z, -07:00, +05:30. RFC 3339 gives -00:00 the meaning "offset not known", so it is not taken.
Typed<Offset> read_offset(std::string_view text) {
  if (text == "Z" || text == "z") return Offset::of(0);
  const bool is_west = text.starts_with('-');
  if ((!is_west && !text.starts_with('+')) || text.size() != 6) return not_a_time;
  const Typed<std::int64_t> minutes = read_minutes(text.substr(1));
  if (!minutes.is_read()) return minutes.misread();
  if (minutes.value() > most_offset_minutes) return out_of_range;
  if (is_west && minutes.value() == 0) return not_a_time;
  return Offset::of(is_west ? -minutes.value() : minutes.value());
}

// Seconds of the day in 18:22:05.
Typed<std::int64_t> read_second_of_day(std::string_view text) {
  const bool has_shape = text.size() == 8 && text[5] == ':' && is_all_digits(text.substr(6));
  if (!has_shape) return not_a_time;
  const Typed<std::int64_t> minutes = read_minutes(text.substr(0, 5));
  if (!minutes.is_read()) return minutes.misread();
  const std::int64_t seconds = value_of_digits(text.substr(6));
  if (minutes.value() >= 24 * 60 || seconds > 59) return out_of_range;
  return minutes.value() * 60 + seconds;
}

}  // namespace

std::string say(const ClockTime& time) {
  const std::string local = say_minutes(time.minute);
  const std::int64_t offset = time.offset.count();
  if (offset == 0) return local + 'Z';
  return local + (offset < 0 ? '-' : '+') + say_minutes(offset < 0 ? -offset : offset);
}

Typed<ClockTime> read_clock_time(std::string_view text) {
  const std::size_t mark = text.find_first_of("Zz+-");
  if (mark == std::string_view::npos) return not_a_time;
  const Typed<std::int64_t> minute = read_minutes(text.substr(0, mark));
  if (!minute.is_read()) return minute.misread();
  const Typed<Offset> offset = read_offset(text.substr(mark));
  if (!offset.is_read()) return offset.misread();
  if (minute.value() >= 24 * 60) return out_of_range;
  return ClockTime{static_cast<std::int32_t>(minute.value()), offset.value()};
}

std::string say(Instant instant) {
  const Day day = utc_day(instant);
  const std::int64_t second = instant.count() - day.count() * seconds_in_day;
  return say(day) + 'T' + say_minutes(second / 60) + ':' + say_digits(second % 60, 2) + 'Z';
}

Typed<Instant> read_instant(std::string_view text) {
  const bool has_shape = text.size() == 20 && text[4] == '-' && text[10] == 'T' && text[19] == 'Z';
  if (!has_shape) return not_a_time;
  const Typed<Day> day = read_day(text.substr(0, 10));
  if (!day.is_read()) return day.misread();
  const Typed<std::int64_t> second = read_second_of_day(text.substr(11, 8));
  if (!second.is_read()) return second.misread();
  return Instant::of(day.value().count() * seconds_in_day + second.value());
}

}  // namespace quantity
