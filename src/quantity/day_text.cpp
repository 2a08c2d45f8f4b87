// How days and quarters are written and read.
#include <array>
#include <cstddef>
#include <optional>

#include "quantity/calendar.h"
#include "quantity/figure.h"

namespace quantity {
namespace {

constexpr Misreading not_a_day = Misreading::not_a_number;

constexpr std::array<std::string_view, 12> month_names = {
    "January", "February", "March",     "April",   "May",      "June",
    "July",    "August",   "September", "October", "November", "December"};

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& c : result) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return result;
}

// 1 to 12 for March, mar, MAR and sept; 0 for anything else.
unsigned month_named(std::string_view typed) {
  const std::string word = lower(typed);
  if (word == "sept") return 9;
  for (unsigned i = 0; i < month_names.size(); ++i) {
    const std::string name = lower(month_names[i]);
    if (word == name || word == name.substr(0, 3)) return i + 1;
  }
  return 0;
}

using Parts = std::array<std::string_view, 3>;

// The three parts between two marks; empty where there are not just two.
std::optional<Parts> split(std::string_view text, char mark) {
  const std::size_t first = text.find(mark);
  if (first == std::string_view::npos) return std::nullopt;
  const std::size_t second = text.find(mark, first + 1);
  if (second == std::string_view::npos) return std::nullopt;
  if (text.find(mark, second + 1) != std::string_view::npos) return std::nullopt;
  return Parts{text.substr(0, first), text.substr(first + 1, second - first - 1),
               text.substr(second + 1)};
}

bool has_month(const YearMonthDay& fields) { return fields.month >= 1 && fields.month <= 12; }

// 30 February: the last day of that month and the day after it are the nearest days.
Misread misread_day(const YearMonthDay& fields) {
  if (fields.year < first_year || fields.year > last_year) {
    return {Misreading::out_of_range, {}, {}};
  }
  if (!has_month(fields) || fields.day == 0) return {Misreading::no_such_day, {}, {}};
  const Day last = end_of_month(*make_day({fields.year, fields.month, 1}));
  return {Misreading::no_such_day, say(last), say(day_after(last))};
}

Typed<Day> day_of(const YearMonthDay& fields) {
  const std::optional<Day> day = make_day(fields);
  if (!day) return misread_day(fields);
  return *day;
}

unsigned small_number(std::string_view digits) {
  return static_cast<unsigned>(value_of_digits(digits));
}

bool is_short_number(std::string_view text) { return is_all_digits(text) && text.size() <= 2; }

bool is_year(std::string_view text) { return is_all_digits(text) && text.size() == 4; }

// 2026-03-04. One digit for a month or day is refused: 2026-1-12 may lack a digit.
Typed<Day> read_iso(const Parts& parts) {
  if (parts[1].size() != 2 || parts[2].size() != 2) return not_a_day;
  return day_of({static_cast<int>(value_of_digits(parts[0])), small_number(parts[1]),
                 small_number(parts[2])});
}

// 03/04/2025 is 3 April to some and 4 March to others.
Misread misread_order(const Parts& parts) {
  const int year = static_cast<int>(value_of_digits(parts[2]));
  const unsigned one = small_number(parts[0]);
  const unsigned two = small_number(parts[1]);
  const std::optional<Day> month_first = make_day({year, one, two});
  const std::optional<Day> day_first = make_day({year, two, one});
  if (!month_first && !day_first) return misread_day({year, two, one});
  Misread misread{Misreading::ambiguous_day, {}, {}};
  misread.first = say(month_first ? *month_first : *day_first);
  if (month_first && day_first && *month_first != *day_first) misread.second = say(*day_first);
  return misread;
}

Typed<Day> read_digits(const Parts& parts, char mark) {
  if (!is_short_number(parts[1])) return not_a_day;
  const bool begins_with_year = is_year(parts[0]) && is_short_number(parts[2]);
  if (mark == '-' && begins_with_year) return read_iso(parts);
  const bool ends_with_year = is_short_number(parts[0]) && is_year(parts[2]);
  if (ends_with_year) return misread_order(parts);
  return not_a_day;
}

// 4 March 2026.
Typed<Day> read_words(const Parts& parts) {
  const unsigned month = month_named(parts[1]);
  if (month == 0 || !is_short_number(parts[0]) || !is_year(parts[2])) return not_a_day;
  return day_of({static_cast<int>(value_of_digits(parts[2])), month, small_number(parts[0])});
}

}  // namespace

std::string say(Day day) {
  const YearMonthDay date = fields(day);
  return say_digits(date.year, 4) + '-' + say_digits(date.month, 2) + '-' + say_digits(date.day, 2);
}

std::string say_long(Day day) {
  const YearMonthDay date = fields(day);
  return say_digits(date.day, 1) + ' ' + std::string(month_names[date.month - 1]) + ' ' +
         say_digits(date.year, 4);
}

Typed<Day> read_day(std::string_view text) {
  if (const std::optional<Parts> words = split(text, ' ')) return read_words(*words);
  for (const char mark : {'-', '/', '.'}) {
    if (const std::optional<Parts> parts = split(text, mark)) return read_digits(*parts, mark);
  }
  return not_a_day;
}

std::string say(Quarter quarter) {
  return say_digits(quarter.quarter, 1) + 'Q' + say_digits(quarter.year, 4);
}

Typed<Quarter> read_quarter(std::string_view text) {
  const bool has_shape = text.size() == 6 && is_digit(text[0]) &&
                         (text[1] == 'Q' || text[1] == 'q') && is_year(text.substr(2));
  if (!has_shape) return not_a_day;
  const Quarter quarter{static_cast<int>(value_of_digits(text.substr(2))), text[0] - '0'};
  const bool is_in_range = quarter.year >= first_year && quarter.year <= last_year &&
                           quarter.quarter >= 1 && quarter.quarter <= 4;
  if (!is_in_range) return Misreading::out_of_range;
  return quarter;
}

}  // namespace quantity
