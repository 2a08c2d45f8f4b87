// report/saved.h: what an entering command saved, as values.
#pragma once

#include <algorithm>
#include <map>
#include <optional>
#include <vector>

#include "reckon/due.h"
#include "report/sheet.h"

namespace report {

// Work by its first entry, and whether it counts.
using CountedWork = std::map<logbook::EntryId, bool>;

struct Saved {
  std::vector<logbook::Entry> entries;
  quantity::Day today;
  bool day_was_left_out = false;     // then "(today)" is said
  std::vector<std::string> notices;  // sentences: a new writer, an accepted doubt …
  // Work that stood before these entries; absent if they can change nothing in it.
  std::optional<CountedWork> counted_before;
};

inline bool is_saved(const logbook::EntryId& id, const Saved& saved) {
  return std::any_of(saved.entries.begin(), saved.entries.end(),
                     [&](const logbook::Entry& entry) { return entry.id == id; });
}

}  // namespace report
