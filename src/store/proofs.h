// store/proofs.h: the derived list of which key proved the signature of which entry. Books of an
// older form have no such list, and no signatures.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "store/sqlite.h"

namespace store {

bool is_proved(Database& database, std::int64_t place);
void put_proof(Database& database, std::int64_t place, const logbook::PublicKey& key);
// Tells the signed entries among these with which key they were proved.
void tell_proofs(Database& database, std::vector<logbook::Entry>& entries);
// The key that proved it, by place among the arrivals.
using Proofs = std::map<std::int64_t, std::string>;
Proofs proofs_in(Database& database);

}  // namespace store
