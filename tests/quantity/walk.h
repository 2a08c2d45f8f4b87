// tests/quantity/walk.h: a calendar by another road than the program's: a walk from one day to the
// next that knows only how long months are.
#pragma once

#include <compare>

#include "quantity/calendar.h"

namespace walk {

struct Date {
  int year = 1900;
  unsigned month = 1;
  unsigned day = 1;
  auto operator<=>(const Date&) const = default;
};

inline bool is_leap(int year) { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); }

inline unsigned length_of_month(int year, unsigned month) {
  if (month == 2) return is_leap(year) ? 29 : 28;
  return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
}

inline Date next(Date date) {
  if (date.day < length_of_month(date.year, date.month)) {
    return {date.year, date.month, date.day + 1};
  }
  return date.month < 12 ? Date{date.year, date.month + 1, 1} : Date{date.year + 1, 1, 1};
}

inline Date date_of(quantity::Day day) {
  const quantity::YearMonthDay fields = quantity::fields(day);
  return {fields.year, fields.month, fields.day};
}

inline quantity::Day day_of(Date date) {
  return quantity::make_day({date.year, date.month, date.day}).value();
}

}  // namespace walk
