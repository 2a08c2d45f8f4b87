// report/life_parts.h: the working of lives that several models or counters use up together: each
// part of the life, their sum, and what is left.
#pragma once

#include <string>

#include "reckon/lives.h"
#include "report/sheet.h"

namespace report {

// Of one side that is shared by fractions.
document::Table parts_table(const reckon::Side& side, std::string key);
// Of a mixed limit, all its counters together.
document::Table mix_table(const reckon::Item& item, std::string key);
// [{"amount","of","subtract","what"}]: the parts that count on this side's clock.
document::Json parts_json(const reckon::Item& item, const reckon::Side& side);

}  // namespace report
