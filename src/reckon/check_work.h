// reckon/check_work.h: what a work entry states of totals, against what the flights sum to at its
// place. Only here totals are asked for.
#pragma once

#include "reckon/check_fact.h"
#include "reckon/check_uses.h"

namespace reckon {

// Whether the fact states any total, so that histories are needed to check it.
bool states_totals(const logbook::Fact& fact);

// What its totals are compared with; uses: of the aircraft that it is about, if there is one.
struct WorkPast {
  const Histories& histories;
  const UseChecks* uses = nullptr;
};
void check_work(const Placed& placed, const WorkPast& past, Objections& objections);

}  // namespace reckon
