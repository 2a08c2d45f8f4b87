#include "words/figures.h"

#include "words/grammar.h"
#include "words/names.h"
#include "words/words.h"

namespace words {

namespace {

using quantity::Sureness;
using reckon::Clock;
using reckon::Figure;
using reckon::Side;

// In thousandths of a second, the smallest unit of service hours.
constexpr std::int64_t hundredth_of_an_hour = 36'000;
constexpr std::int64_t second = 1000;
constexpr std::int64_t five_decimals = 36;

std::int64_t whole_units(std::int64_t raw, std::int64_t unit, Toward toward) {
  return toward == Toward::up ? quantity::ceiling_divide(raw, unit)
                              : quantity::floor_divide(raw, unit);
}

std::string to_hundredths(quantity::ServiceHours hours, Toward toward) {
  const std::int64_t hundredths = whole_units(hours.count(), hundredth_of_an_hour, toward);
  return quantity::say(quantity::Hours::of(hundredths * 36)) + " h";
}

// A fraction of an hour with five decimals, without zeros at its end.
std::string with_five_decimals(std::int64_t raw) {
  const std::int64_t units = raw / five_decimals;
  const std::int64_t size = units < 0 ? -units : units;
  std::string fraction = std::to_string(100'000 + size % 100'000).substr(1);
  while (fraction.size() > 1 && fraction.back() == '0') fraction.pop_back();
  return (units < 0 ? "-" : "") + std::to_string(size / 100'000) + "." + fraction;
}

std::string plain(const Figure& figure, const Clock& clock, Toward toward) {
  switch (figure.unit()) {
    case reckon::Unit::hours: {
      const std::string hours = to_hundredths(figure.hours(), toward);
      return hours.substr(0, hours.size() - 1) + unit_text(clock, false);
    }
    case reckon::Unit::count:
      return quantity::say(figure.count()) + " " +
             unit_text(clock, figure.count() == quantity::whole_cycles(1));
    case reckon::Unit::days:
      return counted(figure.days().count(), "day", "days");
  }
  return {};
}

}  // namespace

std::string hours_used(quantity::ServiceHours hours) { return to_hundredths(hours, Toward::up); }

std::string hours_left(quantity::ServiceHours hours) { return to_hundredths(hours, Toward::down); }

std::string hours_exact(quantity::ServiceHours hours, Toward toward) {
  const std::int64_t raw = hours.count();
  if (raw % hundredth_of_an_hour == 0) return to_hundredths(hours, toward);
  if (raw % second != 0 && raw % five_decimals == 0) return with_five_decimals(raw) + " h";
  return quantity::say(quantity::Hours::of(whole_units(raw, second, toward))) + " h";
}

std::string figure_exact(const Figure& figure, const Clock& clock) {
  if (figure.is_unknown()) return "not known";
  if (figure.unit() == reckon::Unit::hours) return hours_exact(figure.hours(), Toward::up);
  return plain(figure, clock, Toward::up);
}

std::string_view sureness_text(const Figure& figure) {
  switch (figure.sureness()) {
    case Sureness::at_least:
      return " at least";
    case Sureness::by_default:
      return " by default";
    case Sureness::exact:
    case Sureness::unknown:
      break;
  }
  return "";
}

std::string figure_used(const Figure& figure, const Clock& clock) {
  const std::string shown = plain(figure, clock, Toward::up);
  switch (figure.sureness()) {
    case Sureness::exact:
      return shown;
    case Sureness::by_default:
      return fill("{} by default", {shown});
    case Sureness::at_least:
      return fill("at least {}", {shown});
    case Sureness::unknown:
      return "not known";
  }
  return "not known";
}

std::string figure_left(const Figure& figure, const Clock& clock) {
  if (figure.is_unknown()) return "not known";
  const std::string shown = plain(figure, clock, Toward::down);
  return figure.sureness() == Sureness::at_least ? fill("at most {}", {shown}) : shown;
}

std::string unit_text(const Clock& clock, bool one) {
  const auto* hours = std::get_if<reckon::HoursClock>(&clock);
  if (hours == nullptr) return counter_name(std::get<logbook::Counter>(clock), one);
  return hours->meter ? fill("h on the {} meter", {hours->meter->text}) : std::string("h");
}

std::string unit_key(const Side& side) {
  if (side.is_calendar) return "days";
  const auto* hours = std::get_if<reckon::HoursClock>(&side.clock);
  if (hours != nullptr) return hours->meter ? "h " + hours->meter->text : std::string("h");
  return counter_name(std::get<logbook::Counter>(side.clock), false);
}

std::string clock_name(const Clock& clock) {
  const auto* hours = std::get_if<reckon::HoursClock>(&clock);
  if (hours == nullptr) return counter_name(std::get<logbook::Counter>(clock), false);
  return hours->meter ? fill("hours on the {} meter", {hours->meter->text}) : std::string("hours");
}

std::string left_text(const Side& side) {
  if (!side.left || side.left->is_unknown()) return "not known";
  if (side.left->raw() < 0) {
    return fill(side.left_is_at_most ? "over by at least {}" : "over by {}", {over_text(side)});
  }
  const std::string shown = plain(*side.left, side.clock, Toward::down);
  const bool is_at_most = side.left_is_at_most || side.left->sureness() == Sureness::at_least;
  return is_at_most ? fill("at most {}", {shown}) : shown;
}

std::string over_text(const Side& side) {
  return side.left ? plain(-*side.left, side.clock, Toward::up) : "not known";
}

std::string used_text(const Side& side) {
  if (!side.is_calendar) return figure_used(side.used.figure, side.clock);
  if (!side.basis_day) return side.last_legal ? "stated" : "not known";
  return fill("from {}", {quantity::say_long(*side.basis_day)});
}

std::string limit_text(const Side& side) {
  if (side.period) return period_text(*side.period);
  if (!side.limit && side.left) return "stated";
  return side.limit ? plain(*side.limit, side.clock, Toward::down) : "not known";
}

std::string due_text(const Side& side) {
  if (side.is_calendar) return side.last_legal ? quantity::say_long(*side.last_legal) : "not known";
  const bool has_own = side.due_at && !side.due_at->is_unknown();
  const bool has_airframe = side.due_at_airframe && !side.due_at_airframe->is_unknown();
  if (!has_own && !has_airframe) return "not known";
  const std::string own = has_own ? plain(*side.due_at, side.clock, Toward::down) : "";
  if (!has_airframe) return own;
  const std::string airframe = plain(*side.due_at_airframe, reckon::service_clock, Toward::down);
  if (!has_own) return fill("airframe {}", {airframe});
  if (*side.due_at_airframe == *side.due_at) return fill("airframe {}", {airframe});
  return fill("{} (airframe {})", {own, airframe});
}

std::string period_text(const logbook::Period& period) {
  switch (period.unit) {
    case logbook::PeriodUnit::days:
      return counted(period.number, "day", "days");
    case logbook::PeriodUnit::months:
      return counted(period.number, "month", "months");
    case logbook::PeriodUnit::calendar_months:
      return counted(period.number, "calendar month", "calendar months");
    case logbook::PeriodUnit::years:
      return counted(period.number, "year", "years");
  }
  return {};
}

std::string amount_text(const logbook::Amount& amount) {
  if (const auto* hours = std::get_if<logbook::ClockHours>(&amount)) {
    return plain(Figure(quantity::service_hours(hours->hours)), reckon::HoursClock{hours->meter},
                 Toward::down);
  }
  if (const auto* count = std::get_if<logbook::Count>(&amount)) {
    return plain(Figure(count->amount), count->counter, Toward::down);
  }
  return period_text(std::get<logbook::Period>(amount));
}

}  // namespace words
