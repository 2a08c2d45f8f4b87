// store/copied.h: a copy of a book, made while others may use it, and proved before it counts.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "store/finding.h"

namespace store {

struct Copied {
  std::string path;
  std::int64_t entries = 0;
  bool is_elsewhere = false;  // on another file system than the book
};

// What arrived and lies in no copy elsewhere that this machine remembers.
struct Uncopied {
  std::int64_t entries = 0;
  quantity::Instant since;                       // when the oldest of them arrived
  std::optional<quantity::Instant> newest_copy;  // absent: there is none elsewhere
};

// The findings that speak against a copy: all but forks and gaps, which a record may have while its
// bases have not met.
std::vector<Finding> against_copy(const std::vector<Finding>& findings);

}  // namespace store
