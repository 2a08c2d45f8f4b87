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
  bool is_elsewhere = false;  // on another file system than the book, and on one that stays
  bool is_passing = false;    // on one that passes with the power or the machine
  std::int64_t place = 0;     // the newest arrival in it
  logbook::Digest digest{};   // and the entry that arrived there
  std::vector<logbook::EntryId> held;  // all its entries, sorted
};

// What arrived and lies in no copy elsewhere that this machine remembers.
struct Uncopied {
  std::int64_t entries = 0;
  quantity::Instant since;                       // when the oldest of them arrived
  std::optional<quantity::Instant> newest_copy;  // absent: there is none elsewhere
};

// The findings that speak against a copy. A record may have forks, and gaps in the chains of
// others, while its bases have not met; in a chain that the book itself wrote, a gap is a loss.
// That this machine wrote more speaks against no copy.
std::vector<Finding> against_copy(const std::vector<Finding>& findings,
                                  const std::vector<logbook::WriterId>& own);

}  // namespace store
