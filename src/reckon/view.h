// reckon/view.h: all that an item is reckoned from, gathered once for one question.
#pragma once

#include <map>

#include "reckon/forecast.h"
#include "reckon/item.h"
#include "reckon/rules_in_force.h"

namespace reckon {

struct View {
  const Histories& histories;
  const Standing& standing;
  Soon soon;
  RulesInForce rules;
  std::map<logbook::Aircraft, UseRate> rates;  // of every aircraft on record

  Day as_of() const { return histories.as_of(); }
  Mark now() const { return histories.now(); }
  // The use rate of the aircraft that the thing is on; null when it is off.
  const UseRate* rate_of(const logbook::Thing& thing) const;
};

View view_of(const Histories& histories, const Standing& standing, const Soon& soon);

}  // namespace reckon
