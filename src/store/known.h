// store/known.h: whether a book is the one that this machine wrote last, by the mark that it keeps.
#pragma once

#include <string>

#include "logbook/entry.h"
#include "store/mark.h"
#include "store/sqlite.h"

namespace store {

// True if the mark's entry is there and at most the own entries of one command follow it.
bool fits(Database& database, const Mark& mark);
// True if this machine holds a mark of the book's newest writer that fits. A book that is not known
// is a copy, was restored from an older copy, or comes from another machine.
bool is_known_here(Database& database, const logbook::RecordId& record,
                   const std::string& state_folder);

}  // namespace store
