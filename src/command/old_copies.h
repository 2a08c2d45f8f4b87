// command/old_copies.h: which older copies of a record a new one replaces, and their removal.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "store/book.h"

namespace command {

// FOLDER/<begins><instant>.db, or with a count if copies of that instant are there: one more than
// the highest, so that names go up with time. instant: 20260304T101112Z.
std::string free_copy_name(const std::string& folder, const std::string& begins,
                           const std::string& instant);

struct RemovedCopies {
  std::int64_t count = 0;
  std::vector<std::string> kept;  // names of those that hold more than the new copy, or are no book
  std::vector<std::string> failed;  // names of those that could not be removed
};
// Leaves the newest copies in the folder of the new one, itself counted, and removes the others:
// only files whose names begin with this and end as ours do, that are copies of the book under the
// writer that it has now, and that hold no entry which the new copy lacks. The book itself may bear
// such a name; neither it nor what other bases copied there is counted or touched. least is at
// least 1.
RemovedCopies remove_older(const store::Book& book, const store::Copied& newest,
                           const std::string& begins, std::size_t least);

}  // namespace command
