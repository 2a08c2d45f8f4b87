// store/knowledge.h: what an entry's frame says about other entries: which ones its sentence names,
// and what its writer had learned when it was written.
#pragma once

#include <vector>

#include "logbook/entry.h"
#include "store/book.h"
#include "store/sqlite.h"

namespace store {

// The entries whose writer's name begins so and whose number this is: one, if the name is clear.
std::vector<logbook::EntryId> meant_by(Database& database, const logbook::EntryName& name);

struct Named {
  std::vector<logbook::EntryId> entries;  // sorted, without doubles
  std::vector<UnclearName> unclear;
};
// also: entries that are referred to without being named.
Named named_in(Database& database, const logbook::Said& said,
               const std::vector<logbook::EntryId>& also);

// What arrived behind a place from other writers and is not continued by a further entry here:
// the newest of each writer, and both ends of a fork. Sorted.
std::vector<logbook::Knows> learned_since(Database& database, const logbook::WriterId& own,
                                          std::int64_t place);

}  // namespace store
