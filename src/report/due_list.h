// report/due_list.h: what falls due next on one aircraft and all that is fitted to it, in one
// order.
#pragma once

#include <vector>

#include "reckon/due.h"
#include "report/sheet.h"

namespace report {

// Items as reckon::due orders them. A recent-use rate is named with the dates it gives.
Answer due_list(const reckon::Histories& histories, const logbook::Aircraft& aircraft,
                const std::vector<reckon::Item>& items, const Sheet& sheet);

}  // namespace report
