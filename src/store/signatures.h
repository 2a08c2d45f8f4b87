// store/signatures.h: which signature an entry carries, and with which key on record it is proved.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "logbook/entry.h"
#include "seal/signing.h"
#include "store/rows.h"
#include "store/sqlite.h"

namespace store {

// What is said to be signed with a key; null for every other entry. Only such entries carry a
// signature: a correction of one cannot carry it on.
const logbook::Signed* signed_with_key(const std::optional<logbook::Said>& said);

// The frame's field for an entry signed with this key.
std::string signature_of(const Stored& stored, const logbook::RecordId& record,
                         const seal::SecretKey& key);

// All keys that sentences about people give to a name, whether they ended or not.
using Keys = std::map<logbook::PersonName, std::vector<logbook::PublicKey>>;
void add_keys(const logbook::Entry& entry, Keys& keys);
// The key by which the entry's signature is proved; absent: by none of them.
std::optional<logbook::PublicKey> prover_of(const Stored& stored, const logbook::RecordId& record,
                                            const std::vector<logbook::PublicKey>& keys);

// Proves what can be proved now: the entry itself, or what waited for a key that it brings. The
// lists already hold the entry.
void prove_after(Database& database, const logbook::RecordId& record, const logbook::Entry& entry);
// The same for all entries, after the derived tables were made anew.
void prove_all(Database& database, const logbook::RecordId& record,
               const std::vector<logbook::Entry>& entries);

}  // namespace store
