// store/known.h: whether a book is the one that this machine wrote last, by the mark that it keeps.
#pragma once

#include <optional>
#include <string>

#include "logbook/entry.h"
#include "store/mark.h"
#include "store/sqlite.h"

namespace store {

// True if the mark's entry is there and at most the own entries of one command follow it.
bool fits(Database& database, const Mark& mark);

struct Known {
  // This machine holds a mark of the book's newest writer that fits. A book that is not known is a
  // copy, was restored from an older copy, or comes from another machine.
  bool is_here = false;
  // The marked entry, if the book lacks it: its newest entries were cut off, or it is an older
  // copy.
  std::optional<logbook::EntryId> missing;
};
// Outside of a transaction: the mark is read first, so that what it names was committed before the
// book is asked for it.
Known known_here(Database& database, const logbook::RecordId& record,
                 const std::string& state_folder);

}  // namespace store
