// reckon/merge.h: one order for a day of the whole fleet, so that marks compare everywhere. Each
// aircraft's own order is kept; what moves from one to another moves in the order in which it was
// told.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "logbook/names.h"

namespace reckon {

struct DayItem {
  std::size_t index = 0;  // for the caller
  std::int64_t told = 0;
  std::vector<logbook::Thing> moved;  // engines and parts that the entry is about
};
// Each row is the day of one aircraft in its order, or of what lies off any. The result holds the
// items of all rows.
std::vector<DayItem> merged(const std::vector<std::vector<DayItem>>& rows);

}  // namespace reckon
