#include "store/signature_check.h"

#include "sentence/frame.h"

namespace store {
namespace {

constexpr const char* of_signature = "signature";

bool says_signed(const logbook::Entry& entry) {
  return entry.said && std::holds_alternative<logbook::Signed>(entry.said->fact);
}

// Whose key fits, if it is another person's.
std::optional<logbook::PersonName> other_signer(const Stored& stored,
                                                const logbook::RecordId& record, const Keys& keys) {
  for (const auto& [name, all] : keys) {
    if (prover_of(stored, record, all)) return name;
  }
  return std::nullopt;
}

}  // namespace

void SignatureCheck::take(const Stored& stored, const logbook::Entry& entry,
                          std::optional<std::int64_t> place) {
  entries_.insert(stored.id);
  numbers_.emplace(stored.id.writer, stored.id.number);
  add_keys(entry, keys_);
  const logbook::Signed* const with_key = signed_with_key(entry.said);
  const bool has_signature = !stored.frame.signature.empty();
  if (with_key != nullptr && has_signature) {
    with_key_.push_back({stored, with_key->by, place});
  } else if (with_key != nullptr) {
    found_.push_back(
        {of_signature, stored.id, "it says that it is signed and carries no signature"});
  } else if (has_signature && entry.said) {
    found_.push_back(
        {of_signature, stored.id, "it carries a signature and is no sentence of that kind"});
  } else if (says_signed(entry)) {
    on_paper_.push_back(stored);
  }
}

std::optional<logbook::PublicKey> SignatureCheck::verify(const Signed& signed_,
                                                         const logbook::RecordId& record,
                                                         std::vector<Finding>& findings) const {
  const auto keys = keys_.find(signed_.by);
  if (keys != keys_.end()) {
    if (auto key = prover_of(signed_.stored, record, keys->second)) return key;
  }
  const auto other = other_signer(signed_.stored, record, keys_);
  const std::string detail =
      other ? "it was signed with a key of " + other->text + ", not of " + signed_.by.text
            : "the signature fits no key of " + signed_.by.text + " and what is signed";
  findings.push_back({of_signature, signed_.stored.id, detail});
  return std::nullopt;
}

// An entry that was changed after it was signed has another digest than the signature holds.
void SignatureCheck::check_signed_words(const Stored& stored,
                                        std::vector<Finding>& findings) const {
  for (const logbook::EntryId& entry : stored.frame.refers) {
    if (entries_.contains(entry) || !numbers_.contains({entry.writer, entry.number})) continue;
    findings.push_back({of_signature, stored.id,
                        sentence::say_entry(entry) + " was signed with other words than it has"});
  }
}

Proofs SignatureCheck::run(const logbook::RecordId& record, std::vector<Finding>& findings) const {
  findings.insert(findings.end(), found_.begin(), found_.end());
  Proofs proved;
  for (const Signed& one : with_key_) {
    const auto key = verify(one, record, findings);
    if (key && one.place) proved.emplace(*one.place, key->text);
    check_signed_words(one.stored, findings);
  }
  for (const Stored& one : on_paper_) check_signed_words(one, findings);
  return proved;
}

}  // namespace store
