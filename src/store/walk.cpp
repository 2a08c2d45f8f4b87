#include "store/walk.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "sentence/frame.h"
#include "sentence/sentence.h"
#include "store/arrivals.h"
#include "store/chain.h"
#include "store/copied.h"
#include "store/rows.h"
#include "store/signature_check.h"
#include "store/sql.h"

namespace store {
namespace {

using logbook::EntryId;
using Digests = std::set<std::vector<std::uint8_t>>;

std::optional<EntryId> key_of(const Row& row) {
  EntryId id;
  const std::optional<logbook::WriterId> writer = sentence::read_writer(row.writer);
  if (!writer || row.digest.size() != id.digest.size()) return std::nullopt;
  id.writer = *writer;
  id.number = row.number;
  std::copy(row.digest.begin(), row.digest.end(), id.digest.begin());
  return id;
}

// Walks through all entries, by writer, number and digest.
class Walk {
 public:
  Walk(Database& database, const logbook::RecordId& record, std::vector<Finding>& findings)
      : database_(database), record_(record), findings_(findings) {}

  void run(Depth depth);
  // Arrivals of what is not here any more: the end of a chain that was cut off.
  void find_missing();
  const SignatureCheck& signatures() const { return signatures_; }
  // What the lists should hold, as far as the entries could be read.
  Listed& expected() { return expected_; }

 private:
  void check_row(const Row& row);
  std::optional<std::int64_t> check_arrival(const EntryId& id);
  void check_order(const EntryId& id, const Row& row);
  void check_words(const Stored& stored, const logbook::Entry& entry);
  void check_said(const Stored& stored, const logbook::Said& said);
  void check_refers(const Stored& stored, const logbook::Said& said);
  void check_signed_range(const Stored& stored, const logbook::Said& said);
  void find(std::string what, const EntryId& entry, std::string detail) {
    findings_.push_back({std::move(what), entry, std::move(detail)});
  }

  Depth depth_ = Depth::whole;
  Database& database_;
  const logbook::RecordId& record_;
  std::vector<Finding>& findings_;
  SignatureCheck signatures_;
  Listed expected_;
  std::map<EntryId, std::int64_t> arrivals_;  // not yet met among the entries
  // The entries of the writer's current number and of the number before it that is here.
  EntryId current_;
  Digests current_digests_;
  Digests previous_digests_;
};

void Walk::run(Depth depth) {
  depth_ = depth;
  Statement arrived = database_.statement("SELECT place, writer, number, digest FROM arrived");
  while (arrived.next()) {
    const EntryId id = entry_in(database_, arrived, 1);
    const bool is_first = arrivals_.emplace(id, arrived.number(0)).second;
    if (!is_first) find("arrived", id, "it arrived twice");
  }
  Statement rows = database_.statement("SELECT " + std::string(row_columns) +
                                       " FROM entry AS e ORDER BY e.writer, e.number, e.digest");
  while (rows.next()) check_row(row_in(rows));
}

void Walk::check_row(const Row& row) {
  const std::optional<EntryId> id = key_of(row);
  if (!id) return findings_.push_back({"frame", {}, "the key of " + row.writer + " is none"});
  const std::optional<std::int64_t> place = check_arrival(*id);
  check_order(*id, row);
  const std::optional<Stored> stored = stored_in(row);
  if (!stored) return find("frame", *id, "its fields are not those of a record line");
  if (entry_digest(stored->frame, {record_, stored->previous, stored->sentence}) != id->digest) {
    find("chain", *id, "its digest does not follow from what it says");
  }
  if (depth_ == Depth::quick) return;
  const logbook::Entry entry = entry_of(*stored);
  signatures_.take(*stored, entry, place);
  if (depth_ != Depth::whole) return;
  check_words(*stored, entry);
  if (!place) return;
  for (ListRow& listed : list_rows(entry)) expected_.emplace_back(*place, std::move(listed));
}

// The entry before it is there, and no other of its number.
void Walk::check_order(const EntryId& id, const Row& row) {
  if (id.writer != current_.writer || current_digests_.empty()) {
    current_ = {id.writer, 0, {}};
    current_digests_ = {std::vector<std::uint8_t>(id.digest.size(), 0)};
  }
  if (id.number == current_.number) {
    find("fork", id, "another entry has this number");
  } else {
    const bool is_next = id.number == current_.number + 1;
    if (!is_next) find("gap", id, "the entries before it are missing");
    previous_digests_ = is_next ? std::move(current_digests_) : Digests();
    current_digests_.clear();
    current_ = id;
  }
  current_digests_.insert(row.digest);
  if (!previous_digests_.empty() && !previous_digests_.contains(row.previous)) {
    find("chain", id, "it does not follow the entry before it");
  }
}

void Walk::check_words(const Stored& stored, const logbook::Entry& entry) {
  if (entry.said) return check_said(stored, *entry.said);
  const bool may_be_unread = sentence::read_withheld(stored.sentence).has_value() ||
                             stored.frame.language > sentence::language;
  if (!may_be_unread) find("sentence", stored.id, "the sentence cannot be read");
}

void Walk::check_said(const Stored& stored, const logbook::Said& said) {
  const bool is_ours = stored.frame.language <= sentence::language;
  if (is_ours && sentence::say(said) != stored.sentence) {
    find("sentence", stored.id, "said again it becomes: " + sentence::say(said));
  }
  if (is_ours && sentence::about(said) != stored.frame.about) {
    find("about", stored.id, "the sentence is about " + sentence::say_about(sentence::about(said)));
  }
  check_refers(stored, said);
}

// Every entry that the sentence names is meant by the frame, once.
void Walk::check_refers(const Stored& stored, const logbook::Said& said) {
  for (const logbook::EntryName& name : sentence::named_entries(said)) {
    const auto is_meant = [&](const EntryId& entry) {
      return entry.number == name.number &&
             sentence::say_writer(entry.writer).starts_with(name.writer);
    };
    const auto& refers = stored.frame.refers;
    if (std::count_if(refers.begin(), refers.end(), is_meant) == 1) continue;
    find("refers", stored.id,
         "it does not say which entry is " + name.writer + '-' + std::to_string(name.number));
  }
  check_signed_range(stored, said);
}

// A signature is over what its sentence names, and nothing else.
void Walk::check_signed_range(const Stored& stored, const logbook::Said& said) {
  if (!std::holds_alternative<logbook::Signed>(said.fact)) return;
  const auto names = sentence::named_entries(said);
  const std::set<logbook::EntryName> once(names.begin(), names.end());
  if (stored.frame.refers.size() > once.size()) {
    find("refers", stored.id, "it signs more entries than its sentence names");
  }
}

std::optional<std::int64_t> Walk::check_arrival(const EntryId& id) {
  const auto arrival = arrivals_.find(id);
  if (arrival == arrivals_.end()) {
    find("arrived", id, "when it came is not on record");
    return std::nullopt;
  }
  const std::int64_t place = arrival->second;
  arrivals_.erase(arrival);
  return place;
}

void Walk::find_missing() {
  for (const auto& [entry, place] : arrivals_) find("arrived", entry, "it is missing");
}

}  // namespace

Walked walk(Database& database, const logbook::RecordId& record, Depth depth,
            std::vector<Finding>& findings) {
  Walk walking(database, record, findings);
  walking.run(depth);
  walking.find_missing();
  if (depth == Depth::quick) return {};
  Proofs proved = walking.signatures().run(record, findings);
  return {std::move(walking.expected()), std::move(proved)};
}

Proofs expect_proved(Database& database, const logbook::RecordId& record, const std::string& path) {
  std::vector<Finding> findings;
  Walked walked = walk(database, record, Depth::signatures, findings);
  const auto against = against_copy(findings, own_writers(database));
  if (against.empty()) return std::move(walked.proved);
  throw Trouble({logbook::TroubleKind::not_proved, path, told(against.front())});
}

}  // namespace store
