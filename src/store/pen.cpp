// The writing half of store/book.h: one command, from the lock to the commit.
#include <optional>
#include <utility>

#include "quantity/expect.h"
#include "sentence/frame.h"
#include "sentence/sentence.h"
#include "store/arrival_digests.h"
#include "store/arrivals.h"
#include "store/book.h"
#include "store/chain.h"
#include "store/finding_lists.h"
#include "store/inside.h"
#include "store/knowledge.h"
#include "store/known.h"
#include "store/mark.h"
#include "store/origin.h"
#include "store/proofs.h"
#include "store/rows.h"
#include "store/schema_sql.h"
#include "store/signatures.h"
#include "store/use_rows.h"

namespace store {

struct Pen::Inside {
  explicit Inside(BookInside& opened);
  ~Inside();

  // Finds out under which writer this command writes.
  void settle_writer();
  void begin();
  // What the sentence names, together with what the caller says that it replaces; sorted.
  logbook::Frame frame_of(const logbook::Said& said, std::vector<logbook::EntryId> refers);
  Stored stored_of(const logbook::Said& said, std::vector<logbook::EntryId> refers,
                   const seal::SecretKey* key);
  // Reads the entry from the file again, and all of it must be what was meant.
  void prove(const Stored& stored, const logbook::Said& said, const seal::SecretKey* key);
  // Throws not_confirmed instead of what made the commit fail, if the entries are there now.
  void commit();

  BookInside& book;
  Database& database;
  // In this order: who waits for the marks holds no lock on the book.
  std::optional<Marks> marks;
  Transaction transaction;
  Origin origin;
  std::int64_t command;
  Mark newest;                // the newest own entry
  std::int64_t newest_place;  // and where it arrived
  bool is_new_writer = false;
  bool has_appended = false;
  bool is_committed = false;
  Places places;
  std::vector<logbook::EntryId> changed_arrivals;
};

Pen::Inside::Inside(BookInside& opened)
    : book(opened),
      database(opened.database),
      marks(std::in_place, opened.surroundings.state_folder, opened.record),
      transaction(opened.database, Transaction::Kind::write),
      origin(origin_of(opened.begins ? opened.begins : first_said(opened.database),
                       opened.surroundings)),
      command(next_command(opened.database)),
      newest_place(0),
      places(opened.database) {
  settle_writer();
}

Pen::Inside::~Inside() {
  if (is_new_writer && !is_committed) marks->remove(newest.writer);
}

void Pen::Inside::settle_writer() {
  const std::optional<logbook::WriterId> own = own_writer(database);
  const std::optional<Mark> mark = own ? marks->read(*own) : std::nullopt;
  if (!mark || !fits(database, *mark)) return begin();

  newest.writer = *own;
  if (const auto entry = newest_of(database, *own)) {
    newest.number = entry->number;
    newest.digest = entry->digest;
    newest_place = newest_place_of(database, *own);
  }
  // A command that was killed between its commit and its mark is made good before the next one, so
  // that never more than one command is ahead of the mark.
  if (newest != *mark) marks->write(newest);
}

void Pen::Inside::begin() {
  newest = {begin_writer(database, origin), 0, {}};
  is_new_writer = true;
  // Before the commit: a book whose writer has no mark would count as a copy.
  marks->write(newest);
}

logbook::Frame Pen::Inside::frame_of(const logbook::Said& said,
                                     std::vector<logbook::EntryId> refers) {
  logbook::Frame frame;
  frame.writer = newest.writer;
  frame.number = newest.number + 1;
  frame.written = origin.now;
  frame.language = sentence::language;
  frame.about = sentence::about(said);
  frame.knows = learned_since(database, newest.writer, newest_place);
  frame.refers = std::move(refers);
  return frame;
}

Stored Pen::Inside::stored_of(const logbook::Said& said, std::vector<logbook::EntryId> refers,
                              const seal::SecretKey* key) {
  Stored stored;
  stored.frame = frame_of(said, std::move(refers));
  stored.sentence = sentence::say(said);
  stored.previous = newest.digest;
  if (key != nullptr) stored.frame.signature = signature_of(stored, book.record, *key);
  stored.id = {newest.writer, stored.frame.number,
               entry_digest(stored.frame, {book.record, stored.previous, stored.sentence})};
  return stored;
}

void Pen::Inside::prove(const Stored& stored, const logbook::Said& said,
                        const seal::SecretKey* key) {
  const std::string writer = sentence::say_writer(stored.id.writer);
  Statement found = database.statement(
      "SELECT " + std::string(row_columns) +
          " FROM entry AS e WHERE e.writer = ? AND e.number = ? AND e.digest = ?",
      writer, stored.id.number, Blob(stored.id.digest));
  const bool is_found = found.next();
  const Row row = is_found ? row_in(found) : Row();
  if (row != row_of(stored)) {
    throw Trouble({logbook::TroubleKind::damaged, database.path(),
                   "what was written reads back otherwise: " + sentence::say_entry(stored.id)});
  }
  const std::optional<Stored> read = stored_in(row);
  EXPECT(read && read->frame == stored.frame);
  EXPECT(entry_digest(read->frame, {book.record, read->previous, read->sentence}) ==
         stored.id.digest);
  EXPECT(said_by(*read) == said);
  if (key == nullptr) return;
  EXPECT(prover_of(*read, book.record, {{sentence::say_digest(key->public_key())}}));
}

void Pen::Inside::commit() {
  try {
    transaction.commit();
  } catch (const Trouble& trouble) {
    // The journal may be gone while its folder could not be synced: then everyone reads the
    // entries, and "nothing was saved" would have them entered twice.
    const bool is_in_use = trouble.what().kind == logbook::TroubleKind::in_use;
    if (!has_appended || is_in_use) throw;  // in use: not one page was written yet
    transaction.roll_back();
    bool is_known = false;
    try {
      is_known = !is_there(database, {newest.writer, newest.number, newest.digest});
    } catch (const Trouble&) {
    }
    if (is_known) throw;
    is_committed = true;
    throw Trouble(
        {logbook::TroubleKind::not_confirmed, trouble.what().path, trouble.what().detail});
  }
  is_committed = true;
}

Pen::Pen(Book& book) {
  EXPECT(book.inside_->access == Access::write);
  inside_ = std::make_unique<Inside>(*book.inside_);
  if (must_derive_anew()) clear_derived();
}

Pen::~Pen() = default;

std::vector<logbook::Entry> Pen::entries() const {
  Database& database = inside_->database;
  return entries_in(database, {},
                    database.statement("SELECT " + std::string(row_columns) +
                                       " FROM entry AS e ORDER BY e.writer, e.number, "
                                       "e.digest"));
}

Appended Pen::append(const logbook::Said& said, const std::vector<logbook::EntryId>& also_refers,
                     const seal::SecretKey* key) {
  Inside& inside = *inside_;
  EXPECT((key != nullptr) == (signed_with_key(said) != nullptr));
  EXPECT(!inside.is_committed);
  Named named = named_in(inside.database, said, also_refers);
  if (!named.unclear.empty()) return std::move(named.unclear);

  const Stored stored = inside.stored_of(said, std::move(named.entries), key);
  insert(inside.database, stored);
  const std::int64_t place = arrive(inside.database, stored.id, inside.command, inside.origin);
  inside.prove(stored, said, key);
  std::vector<logbook::Entry> entry{{stored.id, stored.frame, stored.sentence, said, {}}};
  list(inside.database, entry.front(), place);
  put_arrival_digest(inside.database, place);
  prove_after(inside.database, inside.book.record, entry.front());
  tell_proofs(inside.database, {}, entry);
  inside.places.add(stored.id, place);
  inside.newest = {stored.id.writer, stored.id.number, stored.id.digest};
  inside.newest_place = place;
  inside.has_appended = true;
  return std::move(entry.front());
}

void Pen::replace(const logbook::DerivedUse& use) {
  EXPECT(!inside_->is_committed);
  store::replace(inside_->database, use, inside_->places);
}

bool Pen::must_derive_anew() const { return inside_->book.must_derive_anew; }

void Pen::clear_derived() {
  EXPECT(!inside_->is_committed);
  const auto changed = store::changed_arrivals(inside_->database);
  auto& all_changed = inside_->changed_arrivals;
  all_changed.insert(all_changed.end(), changed.begin(), changed.end());
  inside_->database.run(derived_sql);
  const std::vector<logbook::Entry> all = entries();
  for (const logbook::Entry& entry : all) {
    const std::int64_t place = inside_->places.of(entry.id);
    list(inside_->database, entry, place);
    put_arrival_digest(inside_->database, place);
  }
  prove_all(inside_->database, inside_->book.record, all);
}

const std::vector<logbook::EntryId>& Pen::changed_arrivals() const {
  return inside_->changed_arrivals;
}

void Pen::commit() {
  Inside& inside = *inside_;
  EXPECT(!inside.is_committed);
  // Asked before the commit: after it nothing may fail any more.
  const bool was_a_copy = inside.is_new_writer && own_writer_count(inside.database) > 1;
  inside.commit();
  inside.book.must_derive_anew = false;
  inside.book.proved.reset();
  if (was_a_copy) inside.book.began_a_new_writer = true;
  inside.book.known = {true, {}};
  // The entries are saved whatever becomes of the mark: one command may be ahead of it.
  try {
    inside.marks->write(inside.newest);
  } catch (const Trouble&) {
  }
  inside.marks.reset();
}

}  // namespace store
