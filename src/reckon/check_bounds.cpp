#include "reckon/check_bounds.h"

namespace reckon {
namespace {

using quantity::Decimal;

void check_range(const std::optional<Decimal>& stated, Decimal most, const char* slot,
                 Objections& objections) {
  if (!stated || (!stated->is_negative() && *stated <= most)) return;
  Objection objection = refusal(CheckKind::out_of_bounds, slot);
  objection.names = {quantity::say(*stated), "it goes from 0 to " + quantity::say(most)};
  objections.push_back(std::move(objection));
}

}  // namespace

void check_bounds(const logbook::Fact& fact, Objections& objections) {
  if (const auto* trend = std::get_if<logbook::TrendSettings>(&fact)) {
    const Decimal most_exponent = Decimal::of(3000);
    check_range(trend->serial_correlation, Decimal::of(950), "serial_correlation", objections);
    check_range(trend->temperature_exponent, most_exponent, "temperature_exponent", objections);
    check_range(trend->speed_exponent, most_exponent, "speed_exponent", objections);
    check_range(trend->fuel_exponent, most_exponent, "fuel_exponent", objections);
  }
  const auto* check = std::get_if<logbook::StartCheck>(&fact);
  if (check != nullptr && check->generator && check->generator->high < check->generator->low) {
    Objection objection = refusal(CheckKind::out_of_bounds, "generator");
    objection.names = {quantity::say(check->generator->low) + " to " +
                           quantity::say(check->generator->high) + " V",
                       "a range begins at its lower end"};
    objections.push_back(std::move(objection));
  }
}

}  // namespace reckon
