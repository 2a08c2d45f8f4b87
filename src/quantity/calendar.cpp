#include "quantity/calendar.h"

#include <date/date.h>

namespace quantity {
namespace {

// No day that was typed and no period added to it leads further than this; day numbers of the date
// library stay far inside their range.
constexpr std::int64_t furthest_day = 10'000'000;
constexpr std::int64_t furthest_months = 12 * 25'000;

date::year_month_day civil(Day day) {
  EXPECT(day.count() >= -furthest_day && day.count() <= furthest_day);
  return date::sys_days{date::days{static_cast<int>(day.count())}};
}

Day counted(const date::year_month_day& civil_day) {
  return Day::of(date::sys_days{civil_day}.time_since_epoch().count());
}

date::year_month_day last_of_month(const date::year_month_day& any) {
  return any.year() / any.month() / date::last;
}

}  // namespace

YearMonthDay fields(Day day) {
  const date::year_month_day found = civil(day);
  return {static_cast<int>(found.year()), static_cast<unsigned>(found.month()),
          static_cast<unsigned>(found.day())};
}

std::optional<Day> make_day(YearMonthDay fields) {
  if (fields.year < first_year || fields.year > last_year) return std::nullopt;
  if (fields.month > 12 || fields.day > 31) return std::nullopt;
  const date::year_month_day wanted =
      date::year{fields.year} / date::month{fields.month} / date::day{fields.day};
  if (!wanted.ok()) return std::nullopt;
  return counted(wanted);
}

Day add_months(Day day, Months months, MonthRule rule) {
  EXPECT(months.count() >= -furthest_months && months.count() <= furthest_months);
  // A sum of fields, which may name a day that its month does not have.
  const date::year_month_day sum = civil(day) + date::months{static_cast<int>(months.count())};
  if (rule == MonthRule::end_of_month || !sum.ok()) return counted(last_of_month(sum));
  return counted(sum);
}

Day end_of_month(Day day) { return counted(last_of_month(civil(day))); }

std::int64_t utc_minute(Day day, const ClockTime& time) {
  const std::int64_t local = checked_add(checked_multiply(day.count(), 24 * 60), time.minute);
  return checked_subtract(local, time.offset.count());
}

Day utc_day(Instant instant) { return Day::of(floor_divide(instant.count(), 86'400)); }

}  // namespace quantity
