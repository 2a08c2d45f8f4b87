// reckon/check_had.h: what a thing is said to have when it is fitted, removed, overhauled or
// brought forward, against what the record gives it there.
#pragma once

#include <optional>

#include "reckon/check_stated.h"

namespace reckon {

// The thing of which a fitting, removal or overhaul may say what it has.
std::optional<logbook::Thing> thing_with_had(const logbook::Fact& fact);
// Whether the fact says of any thing what it has.
bool states_had(const logbook::Fact& fact);

void check_had(const StatedAt& at, const logbook::Thing& thing, Objections& objections);
// What is brought forward: a thing that has its figures has them for good.
void check_forward(const Placed& placed, const Histories& histories, Objections& objections);

}  // namespace reckon
