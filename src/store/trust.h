// store/trust.h: how far each base's chain is proved, from what check found.
#pragma once

#include <vector>

#include "logbook/entry.h"
#include "store/finding.h"

namespace store {

struct Trust {
  logbook::WriterId writer;
  std::int64_t newest = 0;
  std::int64_t proved = 0;  // up to this number, by the chain alone; newest if nothing is wrong
  std::int64_t next = 0;    // the first that is not; meaningless if all are
};
// One for each base among the entries, which are sorted. Empty if the file or its tables cannot be
// believed at all.
std::vector<Trust> trust(const std::vector<logbook::EntryId>& entries,
                         const std::vector<Finding>& findings);

}  // namespace store
