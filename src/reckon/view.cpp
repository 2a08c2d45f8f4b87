#include "reckon/view.h"

namespace reckon {

const UseRate* View::rate_of(const logbook::Thing& thing) const {
  const auto aircraft = histories.aircraft_now(thing);
  if (!aircraft) return nullptr;
  const auto found = rates.find(*aircraft);
  return found == rates.end() ? nullptr : &found->second;
}

View view_of(const Histories& histories, const Standing& standing, const Soon& soon) {
  View view{histories, standing, soon, rules_in_force(standing), {}};
  for (const logbook::Thing& thing : histories.things()) {
    const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
    if (aircraft != nullptr) {
      view.rates.emplace(*aircraft, use_rate(histories, standing, *aircraft));
    }
  }
  return view;
}

}  // namespace reckon
