// report/counting_notices.h: which work counts now, and which no more, after entries that changed
// who may sign, how work was signed, or what the record asks for.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "reckon/standing.h"
#include "report/saved.h"

namespace report {

// Work that stands, by its first entry, and whether it counts.
CountedWork counted_work(const reckon::Standing& standing);
std::vector<std::string> counting_notices(const reckon::Standing& standing, const Saved& saved);

}  // namespace report
