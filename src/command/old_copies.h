// command/old_copies.h: which older copies of a record a new one replaces, and their removal.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace command {

// FOLDER/<begins><instant>.db, or with a count if copies of that instant are there: one more than
// the highest, so that names go up with time. instant: 20260304T101112Z.
std::string free_copy_name(const std::string& folder, const std::string& begins,
                           const std::string& instant);

struct RemovedCopies {
  std::int64_t count = 0;
  std::vector<std::string> kept;  // names of those that hold more than the new copy, or are no book
};
// Leaves the newest copies in the folder of the new one, itself counted, and removes the others:
// only files whose names begin with this and end as ours do, that are books of the same record, and
// that hold no entry which the new copy lacks. least is at least 1.
RemovedCopies remove_older(const std::string& newest, const std::string& begins, std::size_t least);

}  // namespace command
