// report/lives_list.h: limit, used and left of every limited thing, on one aircraft or of one
// thing.
#pragma once

#include <vector>

#include "reckon/lives.h"
#include "report/sheet.h"

namespace report {

// title_of: "aircraft ZZ-KIT", "part PN-4411 B-88" or "the whole record".
Answer lives_list(const reckon::Histories& histories, const std::string& title_of,
                  const std::vector<reckon::Item>& items, const Sheet& sheet);

}  // namespace report
