// store/proofs.h: the derived list of which key proved the signature of which entry. Books of an
// older form have no such list, and no signatures. In a book that this machine does not know the
// list is not believed: someone could name another key in it.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "store/sqlite.h"

namespace store {

// The key that proved it, by place among the arrivals.
using Proofs = std::map<std::int64_t, std::string>;
// Nothing if the list has another form than ours.
Proofs proofs_in(Database& database);

bool is_proved(Database& database, std::int64_t place);
void put_proof(Database& database, std::int64_t place, const logbook::PublicKey& key);
// Tells the signed entries among these with which key they were proved: by what was worked out just
// now, or, absent, by the list.
void tell_proofs(Database& database, const std::optional<Proofs>& worked_out,
                 std::vector<logbook::Entry>& entries);

}  // namespace store
