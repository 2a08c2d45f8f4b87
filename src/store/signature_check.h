// store/signature_check.h: every signature of a book verified again, and what is signed compared
// with what stands in the book.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "store/finding.h"
#include "store/proofs.h"
#include "store/rows.h"
#include "store/signatures.h"

namespace store {

// Takes the entries in any order, then tells what is wrong.
class SignatureCheck {
 public:
  // place: where it arrived, if that is on record.
  void take(const Stored& stored, const logbook::Entry& entry, std::optional<std::int64_t> place);
  // Verifies everything, and gives what the list of proofs should hold.
  Proofs run(const logbook::RecordId& record, std::vector<Finding>& findings) const;

 private:
  struct Signed {
    Stored stored;
    logbook::PersonName by;
    std::optional<std::int64_t> place;
  };
  // The key that proves it, or why none does.
  std::optional<logbook::PublicKey> verify(const Signed& signed_, const logbook::RecordId& record,
                                           std::vector<Finding>& findings) const;
  void check_signed_words(const Stored& stored, std::vector<Finding>& findings) const;

  Keys keys_;
  std::vector<Signed> with_key_;
  std::vector<Stored> on_paper_;
  std::vector<Finding> found_;
  std::set<logbook::EntryId> entries_;
  std::set<std::pair<logbook::WriterId, std::int64_t>> numbers_;
};

}  // namespace store
