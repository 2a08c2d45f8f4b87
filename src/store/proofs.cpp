#include "store/proofs.h"

#include "store/schema_proof.h"
#include "store/sql.h"

namespace store {

bool is_proved(Database& database, std::int64_t place) {
  return database.number("SELECT 1 FROM proof WHERE entry = ?", place) == 1;
}

void put_proof(Database& database, std::int64_t place, const logbook::PublicKey& key) {
  database.execute("INSERT INTO proof VALUES (?, ?)", place, key.text);
}

Proofs proofs_in(Database& database) {
  Proofs proofs;
  if (!has_our_table(database, "proof")) return proofs;
  Statement found = database.statement("SELECT entry, key FROM proof");
  while (found.next()) proofs.emplace(found.number(0), found.text(1));
  return proofs;
}

void tell_proofs(Database& database, const std::optional<Proofs>& worked_out,
                 std::vector<logbook::Entry>& entries) {
  std::map<logbook::EntryId, logbook::Entry*> signed_;
  for (logbook::Entry& entry : entries) {
    if (!entry.frame.signature.empty()) signed_.emplace(entry.id, &entry);
  }
  if (signed_.empty()) return;
  for (const auto& [place, key] : worked_out ? *worked_out : proofs_in(database)) {
    Statement arrived =
        database.statement("SELECT writer, number, digest FROM arrived WHERE place = ?", place);
    if (!arrived.next()) continue;
    const auto entry = signed_.find(entry_in(database, arrived, 0));
    if (entry != signed_.end()) entry->second->proved_with = logbook::PublicKey{key};
  }
}

}  // namespace store
