#include "store/signatures.h"

#include <algorithm>
#include <utility>

#include "quantity/expect.h"
#include "sentence/frame.h"
#include "store/chain.h"
#include "store/proofs.h"

namespace store {
namespace {

using logbook::PublicKey;

std::string signed_text(const Stored& stored, const logbook::RecordId& record) {
  return sentence::signature_preimage(stored.frame, record,
                                      body_digest(stored.frame, stored.sentence));
}

const logbook::PersonHolds* person_in(const logbook::Entry& entry) {
  if (!entry.said) return nullptr;
  const logbook::Fact* fact = &entry.said->fact;
  if (const auto* corrected = std::get_if<logbook::Corrected>(fact)) {
    fact = &(*corrected->instead).fact;
  }
  return std::get_if<logbook::PersonHolds>(fact);
}

struct Placed {
  std::int64_t place = 0;
  Stored stored;
  logbook::Entry entry;
};

// What the record says about a person, with its places among the arrivals.
std::vector<Placed> about_person(Database& database, const logbook::PersonName& name) {
  const std::string thing = sentence::say_about({{"person", {name.text}}});
  Statement found = database.statement(
      "SELECT " + std::string(row_columns) +
          ", m.entry FROM thing AS t JOIN mention AS m ON m.thing = t.id "
          "JOIN arrived AS a ON a.place = m.entry JOIN entry AS e ON e.writer = a.writer "
          "AND e.number = a.number AND e.digest = a.digest WHERE t.name = ? "
          "AND m.kind IN ('person-holds', 'corrected', 'signed') ORDER BY m.entry",
      thing);
  constexpr int place_column = 11;
  std::vector<Placed> result;
  while (found.next()) {
    const std::optional<Stored> stored = stored_in(row_in(found));
    if (stored) result.push_back({found.number(place_column), *stored, entry_of(*stored)});
  }
  return result;
}

void prove_about(Database& database, const logbook::RecordId& record,
                 const logbook::PersonName& name) {
  const std::vector<Placed> all = about_person(database, name);
  Keys keys;
  for (const Placed& one : all) add_keys(one.entry, keys);
  for (const Placed& one : all) {
    const logbook::Signed* const signed_ = signed_with_key(one.entry.said);
    if (signed_ == nullptr || signed_->by != name || is_proved(database, one.place)) continue;
    const auto prover = prover_of(one.stored, record, keys[name]);
    if (prover) put_proof(database, one.place, *prover);
  }
}

}  // namespace

const logbook::Signed* signed_with_key(const std::optional<logbook::Said>& said) {
  const auto* signed_ = said ? std::get_if<logbook::Signed>(&said->fact) : nullptr;
  const bool is_meant = signed_ != nullptr && signed_->how == logbook::SignedHow::with_key;
  return is_meant ? signed_ : nullptr;
}

std::string signature_of(const Stored& stored, const logbook::RecordId& record,
                         const seal::SecretKey& key) {
  return sentence::say_signature(key.sign(signed_text(stored, record)));
}

void add_keys(const logbook::Entry& entry, Keys& keys) {
  const logbook::PersonHolds* const person = person_in(entry);
  if (person == nullptr) return;
  std::vector<PublicKey>& known = keys[person->name];
  for (const PublicKey& key : person->keys) {
    if (std::find(known.begin(), known.end(), key) == known.end()) known.push_back(key);
  }
}

std::optional<PublicKey> prover_of(const Stored& stored, const logbook::RecordId& record,
                                   const std::vector<PublicKey>& keys) {
  const auto signature = sentence::read_signature(stored.frame.signature);
  if (!signature) return std::nullopt;
  const std::string signed_ = signed_text(stored, record);
  const auto found = std::find_if(keys.begin(), keys.end(), [&](const PublicKey& key) {
    const auto bytes = sentence::read_digest(key.text);
    return bytes && seal::is_signed(signed_, *signature, *bytes);
  });
  return found == keys.end() ? std::nullopt : std::optional(*found);
}

void prove_after(Database& database, const logbook::RecordId& record, const logbook::Entry& entry) {
  const logbook::Signed* const signed_ = signed_with_key(entry.said);
  const logbook::PersonHolds* const person = person_in(entry);
  if (signed_ == nullptr && (person == nullptr || person->keys.empty())) return;
  prove_about(database, record, signed_ != nullptr ? signed_->by : person->name);
}

void prove_all(Database& database, const logbook::RecordId& record,
               const std::vector<logbook::Entry>& entries) {
  Keys keys;
  for (const logbook::Entry& entry : entries) add_keys(entry, keys);
  for (const auto& [name, all] : keys) {
    if (!all.empty()) prove_about(database, record, name);
  }
}

}  // namespace store
