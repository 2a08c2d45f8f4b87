// store/use_rows.h: use and its running totals, as reckon works them out.
#pragma once

#include <vector>

#include "logbook/derived.h"
#include "store/arrivals.h"
#include "store/sqlite.h"

namespace store {

// Takes the place of all that stands for the aircraft from that day on.
void replace(Database& database, const logbook::DerivedUse& use, Places& places);

// By place, key, day, order, arrival.
std::vector<logbook::UseRow> uses(Database& database, const std::string& aircraft);
// By place, key, day.
std::vector<logbook::RunningTotal> running_totals(Database& database, const std::string& aircraft);
// The sum of the use rows of that series to the end of that day.
std::int64_t summed(Database& database, const logbook::RunningTotal& key);

}  // namespace store
