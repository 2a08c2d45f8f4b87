// store/layout.h: whether the file's tables, guards and views are still those that it was made
// with.
#pragma once

#include <vector>

#include "store/finding.h"
#include "store/sqlite.h"

namespace store {

// Each one that is missing, was changed or does not belong to a book of this version. Someone who
// means to change a book drops its guards first; this is seen even before anything else is done.
void check_layout(Database& database, std::vector<Finding>& findings);

}  // namespace store
