// store/arrival_digests.h: when an entry came is part of no chain, so a digest of each arrival is
// kept beside it, which tells of a bit that turned over. It does not tell of someone who works it
// out anew.
#pragma once

#include <vector>

#include "logbook/entry.h"
#include "store/sqlite.h"

namespace store {

// For the arrival at this place.
void put_arrival_digest(Database& database, std::int64_t place);

// The entries whose arrival is not as it was when its digest was made; none if the table of digests
// is not ours.
std::vector<logbook::EntryId> changed_arrivals(Database& database);

}  // namespace store
