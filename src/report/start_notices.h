// report/start_notices.h: what a receipt must say of saved starts and exceedances.
#pragma once

#include <string>
#include <vector>

#include "reckon/histories.h"
#include "report/saved.h"

namespace report {

// A sentence for each saved start that is not plainly normal and for each saved exceedance.
std::vector<std::string> start_notices(const reckon::Histories& histories,
                                       const reckon::Standing& standing, const Saved& saved);

}  // namespace report
