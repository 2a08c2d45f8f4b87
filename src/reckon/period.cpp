#include "reckon/period.h"

namespace reckon {

using quantity::MonthRule;
using quantity::Months;

quantity::Day last_legal_day(quantity::Day from, const logbook::Period& period) {
  switch (period.unit) {
    case logbook::PeriodUnit::days:
      return from + quantity::Days::of(period.number);
    case logbook::PeriodUnit::months:
      return quantity::add_months(from, Months::of(period.number), MonthRule::same_day);
    case logbook::PeriodUnit::calendar_months:
      return quantity::add_months(from, Months::of(period.number), MonthRule::end_of_month);
    case logbook::PeriodUnit::years:
      break;
  }
  const Months months = Months::of(quantity::checked_multiply(period.number, 12));
  return quantity::add_months(from, months, MonthRule::same_day);
}

}  // namespace reckon
