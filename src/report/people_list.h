// report/people_list.h: who holds which certificate, with which keys, and what ended.
#pragma once

#include <vector>

#include "reckon/keyholders.h"
#include "report/sheet.h"

namespace report {

// here: the keys that lie on this machine.
Answer people_list(const std::vector<reckon::Holding>& holdings,
                   const std::vector<logbook::PublicKey>& here, const Sheet& sheet);

}  // namespace report
