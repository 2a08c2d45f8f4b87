// reckon/check_spread.h: what is fitted or removed within the days of one entry of use: of its
// hours nobody can tell how many came before, unless the airframe's total is stated there.
#pragma once

#include "reckon/check_fittings.h"
#include "reckon/check_uses.h"

namespace reckon {

// Each is told once, at what was written later.
// A fitting or removal, against the uses of its aircraft that are spread over its day.
void check_move_in_use(const FittingChecks::Move& move, const UseChecks& uses,
                       Objections& objections);
// A use that is spread over several days, against what was moved in them.
void check_use_over_moves(const Placed& placed, const FittingChecks& fittings,
                          const UseChecks& uses, Objections& objections);

}  // namespace reckon
