#include "reckon/forecast.h"

#include <algorithm>

#include "reckon/wide.h"

namespace reckon {
namespace {

constexpr std::int64_t least_flights = 5;
constexpr std::int64_t days_of_a_quarter = 90;
constexpr std::int64_t days_of_a_year = 365;
// A day further off than a hundred years is no forecast.
constexpr std::int64_t furthest_days = 36'525;

using From = UseRate::From;

UseRate of_rate(const logbook::Rate& rate) {
  const auto over = [&](std::int64_t times, std::int64_t days) {
    return UseRate{From::plan, quantity::service_hours(rate.hours * times),
                   quantity::Days::of(days)};
  };
  switch (rate.per) {
    case logbook::Per::day:
      return over(1, 1);
    case logbook::Per::week:
      return over(1, 7);
    case logbook::Per::month:
      return over(12, days_of_a_year);
    case logbook::Per::year:
      break;
  }
  return over(1, days_of_a_year);
}

UseRate of_plan(const logbook::Plan& plan) {
  if (const auto* rate = std::get_if<logbook::Rate>(&plan.use)) return of_rate(*rate);
  const auto& stated = std::get<logbook::HoursIn>(plan.use);
  return {From::stated, quantity::service_hours(stated.hours),
          quantity::Days::of(std::max<std::int64_t>(stated.days, 1))};
}

bool holds(const logbook::Plan& plan, Day day) {
  return (!plan.from || *plan.from <= day) && (!plan.to || day <= *plan.to);
}

struct Flown {
  quantity::ServiceHours hours;
  std::int64_t flights = 0;
  quantity::Days days = quantity::Days::of(1);
};

// A book younger than the span is reckoned over its own days, lest the use seem too small.
Flown flown_in(const Histories& histories, const logbook::Aircraft& aircraft, std::int64_t days) {
  const Day as_of = histories.as_of();
  Day from = as_of - quantity::Days::of(days - 1);
  if (const auto begun = histories.brought_forward_day(aircraft)) from = std::max(from, *begun);
  Flown flown;
  flown.days = std::max(as_of - from + quantity::Days::of(1), quantity::Days::of(1));
  for (const Histories::DayUse& use : histories.daily_use(aircraft, from)) {
    flown.hours += use.hours;
    flown.flights += use.flights;
  }
  return flown;
}

}  // namespace

UseRate use_rate(const Histories& histories, const Standing& standing,
                 const logbook::Aircraft& aircraft) {
  // Facts stand in the order of their days: the newest plan that holds is the last.
  for (auto fact = standing.facts.rbegin(); fact != standing.facts.rend(); ++fact) {
    const auto* plan = std::get_if<logbook::Plan>(&fact->said->fact);
    if (plan == nullptr || plan->aircraft != aircraft) continue;
    if (holds(*plan, histories.as_of())) return of_plan(*plan);
  }
  const Flown quarter = flown_in(histories, aircraft, days_of_a_quarter);
  if (quarter.flights >= least_flights) return {From::last_90_days, quarter.hours, quarter.days};
  const Flown year = flown_in(histories, aircraft, days_of_a_year);
  if (year.flights > 0) return {From::last_365_days, year.hours, year.days};
  return {};
}

std::optional<std::int64_t> days_to_use(std::int64_t amount, std::int64_t used,
                                        quantity::Days days) {
  if (amount <= 0) return 0;
  if (used <= 0) return std::nullopt;
  const Wide product = static_cast<Wide>(amount) * days.count();
  const Wide needed = (product + used - 1) / used;
  if (needed > furthest_days) return std::nullopt;
  return static_cast<std::int64_t>(needed);
}

std::optional<Day> day_reached(quantity::ServiceHours left, const UseRate& rate, Day as_of) {
  const auto days = days_to_use(left.count(), rate.hours.count(), rate.days);
  if (!days) return std::nullopt;
  return as_of + quantity::Days::of(*days);
}

quantity::ServiceHours used_in(const UseRate& rate, quantity::Days days) {
  if (days.count() <= 0) return {};
  const Wide product = static_cast<Wide>(rate.hours.count()) * days.count();
  return quantity::ServiceHours::of(static_cast<std::int64_t>(product / rate.days.count()));
}

}  // namespace reckon
