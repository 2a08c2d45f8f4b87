#include "store/proofs.h"

#include "store/sql.h"

namespace store {
namespace {

bool has_table(Database& database) {
  return database.number("SELECT 1 FROM sqlite_schema WHERE name = 'proof'") == 1;
}

}  // namespace

bool is_proved(Database& database, std::int64_t place) {
  return database.number("SELECT 1 FROM proof WHERE entry = ?", place) == 1;
}

void put_proof(Database& database, std::int64_t place, const logbook::PublicKey& key) {
  database.execute("INSERT INTO proof VALUES (?, ?)", place, key.text);
}

Proofs proofs_in(Database& database) {
  Proofs proofs;
  if (!has_table(database)) return proofs;
  Statement found = database.statement("SELECT entry, key FROM proof");
  while (found.next()) proofs.emplace(found.number(0), found.text(1));
  return proofs;
}

void tell_proofs(Database& database, std::vector<logbook::Entry>& entries) {
  std::map<logbook::EntryId, logbook::Entry*> signed_;
  for (logbook::Entry& entry : entries) {
    if (!entry.frame.signature.empty()) signed_.emplace(entry.id, &entry);
  }
  if (signed_.empty() || !has_table(database)) return;
  Statement found = database.statement(
      "SELECT a.writer, a.number, a.digest, p.key FROM proof AS p "
      "JOIN arrived AS a ON a.place = p.entry");
  while (found.next()) {
    const auto entry = signed_.find(entry_in(database, found, 0));
    if (entry != signed_.end())
      entry->second->proved_with = logbook::PublicKey{std::string(found.text(3))};
  }
}

}  // namespace store
