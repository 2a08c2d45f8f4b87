#include "reckon/side.h"

#include <limits>

#include "reckon/aboard.h"
#include "reckon/use.h"

namespace reckon {
namespace {

constexpr std::int64_t thousandths_of_an_hour = 3600 * 1000;
constexpr std::int64_t thousandths = 1000;

bool is_within(const Figure& left, const Soon& soon) {
  switch (left.unit()) {
    case Unit::hours:
      return left.raw() <= quantity::service_hours(soon.hours).count();
    case Unit::count:
      return left.raw() <= soon.count.count();
    case Unit::days:
      break;
  }
  return left.raw() <= soon.days.count();
}

bool is_reached(State state) { return state == State::over || state == State::due; }

// What a thing used lately on any clock, on the aircraft on which it stood all the time.
std::optional<std::int64_t> days_by_recent_use(const Subject& subject, const Side& side,
                                               const UseRate& rate) {
  const bool is_recent =
      rate.from == UseRate::From::last_90_days || rate.from == UseRate::From::last_365_days;
  if (!is_recent) return std::nullopt;
  const Histories& histories = subject.view.histories;
  const Mark since{subject.view.as_of() - rate.days, end_of_day};
  const auto then = aircraft_at(histories, subject.thing, since);
  if (!then || then != histories.aircraft_now(subject.thing)) return std::nullopt;
  const Total used = used_after(histories, subject.thing, side.clock, since);
  if (used.figure.is_unknown()) return std::nullopt;
  return days_to_use(side.left->raw(), used.figure.raw(), rate.days);
}

std::optional<std::int64_t> days_until(const Subject& subject, const Side& side) {
  const UseRate* rate = subject.view.rate_of(subject.thing);
  if (rate == nullptr || rate->from == UseRate::From::none) return std::nullopt;
  if (!counts_service_hours(side)) return days_by_recent_use(subject, side, *rate);
  return days_to_use(side.left->raw(), rate->hours.count(), rate->days);
}

// For order alone: without a forecast an hour or an event a day.
std::int64_t nominal_days(const Figure& left) {
  const bool is_hours = left.unit() == Unit::hours;
  return quantity::floor_divide(left.raw(), is_hours ? thousandths_of_an_hour : thousandths);
}

void set_expected(const Subject& subject, Side& side) {
  side.days_left = nominal_days(*side.left);
  if (side.state == State::over) return;
  const std::optional<std::int64_t> days = days_until(subject, side);
  if (!days) return;
  side.days_left = *days;
  side.expected = subject.view.as_of() + quantity::Days::of(*days);
}

void set_due_at(const Subject& subject, Side& side) {
  const Histories& histories = subject.view.histories;
  const Mark now = subject.view.now();
  const Figure total = histories.total(subject.thing, side.clock, now).figure;
  if (!total.is_unknown()) side.due_at = plain(total) + *side.left;
  const auto aircraft = histories.aircraft_now(subject.thing);
  if (!aircraft || !counts_service_hours(side)) return;
  const Figure airframe = histories.total(*aircraft, service_clock, now).figure;
  if (!airframe.is_unknown()) side.due_at_airframe = plain(airframe) + *side.left;
}

}  // namespace

std::optional<Clock> clock_of(const logbook::Amount& amount) {
  if (const auto* hours = std::get_if<logbook::ClockHours>(&amount)) {
    return HoursClock{hours->meter};
  }
  if (const auto* count = std::get_if<logbook::Count>(&amount)) return count->counter;
  return std::nullopt;
}

Figure figure_of(const logbook::Amount& amount) {
  if (const auto* hours = std::get_if<logbook::ClockHours>(&amount)) {
    return quantity::service_hours(hours->hours);
  }
  return std::get<logbook::Count>(amount).amount;
}

bool counts_service_hours(const Side& side) {
  return !side.is_calendar && side.clock == service_clock;
}

void set_left(const Subject& subject, Side& side, const Figure& left, Sureness sureness) {
  if (sureness == Sureness::unknown) return set_lack(side, Lack::total);
  side.left = plain(left);
  side.left_is_at_most = sureness == Sureness::at_least;
  side.state = state_of(side, subject.view.soon, subject.when_exceeding);
  if (side.left_is_at_most && !is_reached(side.state)) {
    side.state = State::not_known;
    side.lack = Lack::total_at_least;
  }
  set_due_at(subject, side);
  set_expected(subject, side);
}

void set_last_legal(const Subject& subject, Side& side, Day last_legal) {
  const Day as_of = subject.view.as_of();
  const quantity::Days left = last_legal - as_of;
  side.is_calendar = true;
  side.last_legal = last_legal;
  side.left = Figure(left);
  side.days_left = left.count();
  if (side.basis_day) {
    side.used.figure = Figure(as_of - *side.basis_day);
    side.limit = Figure(last_legal - *side.basis_day);
  }
  side.state = state_of(side, subject.view.soon, subject.when_exceeding);
  if (side.state != State::over) side.expected = last_legal;
}

void set_lack(Side& side, Lack lack) {
  side.left.reset();
  side.lack = lack;
  side.state = State::not_known;
  side.days_left = std::numeric_limits<std::int64_t>::max();
}

State state_of(const Side& side, const Soon& soon, bool when_exceeding) {
  if (!side.left) return State::not_known;
  const std::int64_t left = side.left->raw();
  if (left < 0) return State::over;
  if (left == 0) return when_exceeding ? State::soon : State::due;
  return is_within(*side.left, soon) ? State::soon : State::ok;
}

}  // namespace reckon
