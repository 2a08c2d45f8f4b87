#include "store/knowledge.h"

#include <algorithm>

#include "sentence/frame.h"
#include "sentence/sentence.h"
#include "store/rows.h"
#include "store/sql.h"

namespace store {
namespace {

template <class Item>
void sort_once(std::vector<Item>& items) {
  std::sort(items.begin(), items.end());
  items.erase(std::unique(items.begin(), items.end()), items.end());
}

// Steps over all writers' names that begin so, without looking at their entries.
std::vector<logbook::WriterId> writers_named(Database& database, const std::string& start) {
  std::vector<logbook::WriterId> result;
  Statement first = database.statement(
      "SELECT writer FROM entry WHERE writer >= ? ORDER BY writer LIMIT 1", start);
  bool has_next = first.next();
  std::string name(has_next ? first.text(0) : std::string_view());
  while (has_next && name.starts_with(start)) {
    result.push_back(writer_in(database, name));
    Statement next = database.statement(
        "SELECT writer FROM entry WHERE writer > ? ORDER BY writer LIMIT 1", name);
    has_next = next.next();
    const std::string following(has_next ? next.text(0) : std::string_view());
    name = following;
  }
  return result;
}

logbook::Knows known(const logbook::EntryId& entry) {
  logbook::Knows knows{entry.writer, entry.number, {}};
  std::copy_n(entry.digest.begin(), knows.digest_start.size(), knows.digest_start.begin());
  return knows;
}

}  // namespace

std::vector<logbook::EntryId> meant_by(Database& database, const logbook::EntryName& name) {
  std::vector<logbook::EntryId> result;
  for (const logbook::WriterId& writer : writers_named(database, name.writer)) {
    const auto entries = entries_numbered(database, writer, name.number);
    result.insert(result.end(), entries.begin(), entries.end());
  }
  return result;
}

Named named_in(Database& database, const logbook::Said& said,
               const std::vector<logbook::EntryId>& also) {
  Named named{also, {}};
  for (const logbook::EntryName& name : sentence::named_entries(said)) {
    std::vector<logbook::EntryId> meant = meant_by(database, name);
    if (meant.size() == 1) {
      named.entries.push_back(meant.front());
    } else {
      named.unclear.push_back({name, std::move(meant)});
    }
  }
  sort_once(named.entries);
  return named;
}

std::vector<logbook::Knows> learned_since(Database& database, const logbook::WriterId& own,
                                          std::int64_t place) {
  std::vector<logbook::Knows> result;
  const std::string own_name = sentence::say_writer(own);
  Statement arrived = database.statement(
      "SELECT writer, number, digest FROM arrived AS a WHERE place > ? AND writer <> ? "
      "AND NOT EXISTS (SELECT 1 FROM entry AS e WHERE e.writer = a.writer "
      "AND e.number = a.number + 1 AND e.previous = a.digest)",
      place, own_name);
  while (arrived.next()) result.push_back(known(entry_in(database, arrived, 0)));
  sort_once(result);
  return result;
}

}  // namespace store
