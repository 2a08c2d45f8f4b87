// store/finding_lists.h: the derived lists by which entries are found without reading all of them:
// readings in typed columns, every other kind but use under each thing that it is about.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "logbook/entry.h"
#include "store/sqlite.h"

namespace store {

// One row of one of these tables: its table, what it stands under, and its figures. Empty figures
// are NULL.
struct ListRow {
  std::string table;
  std::string thing;
  std::string words;  // the kind of a mention, the place of a reading
  std::vector<std::optional<std::int64_t>> figures;
  auto operator<=>(const ListRow&) const = default;
  bool operator==(const ListRow&) const = default;
};

// What an entry brings to the lists; nothing if it cannot be read.
std::vector<ListRow> list_rows(const logbook::Entry& entry);
void list(Database& database, const logbook::Entry& entry, std::int64_t place);
// All that the lists hold, with the place of its entry, sorted.
using Listed = std::vector<std::pair<std::int64_t, ListRow>>;
Listed listed(Database& database);

}  // namespace store
