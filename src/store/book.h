// store/book.h: the book on disk. Readers load, end the transaction, then answer; a Pen holds the
// write lock from the reading on which the check rests until the commit.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "logbook/derived.h"
#include "logbook/entry.h"
#include "logbook/trouble.h"
#include "seal/signing.h"
#include "store/copied.h"
#include "store/finding.h"
#include "store/surroundings.h"
#include "store/trouble.h"

namespace store {

// A name of an entry that means none on record, or more than one.
struct UnclearName {
  logbook::EntryName name;
  std::vector<logbook::EntryId> meant;  // empty, or two and more
};
using Appended = std::variant<logbook::Entry, std::vector<UnclearName>>;

class Pen;
struct BookInside;  // what an open book holds

class Book {
 public:
  // Makes a new book with its first entry; refuses to overwrite.
  static void make(const std::string& path, const logbook::Said& begins,
                   const Surroundings& surroundings);
  // The same, and opens it for writing.
  static Book create(const std::string& path, const logbook::Said& begins,
                     const Surroundings& surroundings);
  static Book open(const std::string& path, Access access, const Surroundings& surroundings);
  Book(Book&&) noexcept;
  Book& operator=(Book&&) noexcept;
  ~Book();

  const std::string& path() const;
  const logbook::RecordId& record() const;
  // Every entry inside the horizon (all, if absent), by writer and number, read from its sentence.
  std::vector<logbook::Entry> entries(const std::optional<logbook::Horizon>& horizon) const;
  // The newest number per writer now, and at the end of a local day by this book's own arrivals.
  logbook::Horizon horizon() const;
  logbook::Horizon known_on(quantity::Day day) const;
  // True once a command written through this opening was committed under a new writer, because the
  // book turned out to be a copy or to be restored from an older one (said visibly).
  bool began_a_new_writer() const;
  // The writer under which this book was last written.
  logbook::WriterId writer() const;
  // True if a newer version made or changed the file; then it opens for reading only.
  bool is_of_newer_version() const;
  // Every entry that is about the thing and is neither use nor a reading, by day and arrival, from
  // the derived tables: what one aircraft's answers need does not grow with the fleet.
  std::vector<logbook::Entry> entries_about(const logbook::About& about) const;
  std::vector<logbook::UseRow> uses(const std::string& aircraft) const;
  std::vector<logbook::RunningTotal> running_totals(const std::string& aircraft) const;
  // Second way to a total: SUM() in SQL over the use rows, at the end of the day.
  std::int64_t summed(const logbook::RunningTotal& key) const;

  // A new key for a person's signatures; in a record for tests always the same one of that ordinal.
  seal::SecretKey new_key(const std::string& person, std::int64_t ordinal) const;

  // Chain, digests, read and said again, about, local tables, integrity of the file, and what this
  // machine knows to have written in it. quick: without what the entries say. Of a newer version
  // what we do not know is passed over.
  std::vector<Finding> check(Depth depth = Depth::whole) const;
  // What check finds and what speaks against taking the book for a whole copy.
  std::vector<Finding> against_copy(Depth depth = Depth::whole) const;
  // Another number once another command has written since it was last asked.
  std::int64_t state() const;
  // False if the derived tables are of another version of this program: they cannot be asked, and
  // the next writing makes them anew.
  bool has_our_derived_form() const;
  // True if the next writing goes on under the same writer: this machine wrote the book last. As of
  // the opening, like the next one.
  bool goes_on_here() const;
  // The entry that this machine wrote last under the book's writer, if the book lacks it: it is an
  // older copy, or its newest entries were cut off.
  std::optional<logbook::EntryId> missing() const;

  // All entries by writer, number and digest, without reading what they say.
  std::vector<logbook::EntryId> entry_ids() const;
  // Makes a copy and proves it: same entries, nothing wrong with them. Never over another file;
  // nothing is left behind if it cannot be proved. Throws already_there, cannot_create, damaged if
  // the book itself has a fault, cannot_write if the copy came out otherwise than the book.
  Copied copy_to(const std::string& path) const;
  // Lets this machine remember the copy that was made, so that uncopied counts with it.
  void remember_copy(const Copied& copied, quantity::Instant now) const;
  // Absent if a copy elsewhere holds all entries.
  std::optional<Uncopied> uncopied() const;

 private:
  friend class Look;
  friend class Pen;
  std::unique_ptr<BookInside> inside_;
  explicit Book(std::unique_ptr<BookInside> inside);
};

// While it lives, everything read from the book is of one state. Short: a writer waits for it. One
// inside another is of the same state.
class Look {
 public:
  explicit Look(const Book& book);
  ~Look();
  Look(const Look&) = delete;
  Look& operator=(const Look&) = delete;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

// One writing command: BEGIN IMMEDIATE … commit. Without commit everything is rolled back.
class Pen {
 public:
  explicit Pen(Book& book);
  ~Pen();
  Pen(const Pen&) = delete;
  Pen& operator=(const Pen&) = delete;

  // The entries as they are under the lock.
  std::vector<logbook::Entry> entries() const;
  // Numbers, frames and digests the fact, inserts it, reads it back and digests it again. The
  // entries that the sentence names are looked up; if a name is unclear, nothing is written and all
  // unclear names come back. also_refers: the further ends that a correction or decision replaces.
  // key: signs the entry; given exactly with what is signed with a key. One try at the key proves
  // the signature again after it was written.
  Appended append(const logbook::Said& said, const std::vector<logbook::EntryId>& also_refers = {},
                  const seal::SecretKey* key = nullptr);
  void replace(const logbook::DerivedUse& use);
  // True if the derived tables had another form: they were made anew, and every use has yet to be
  // replaced in this command.
  bool must_derive_anew() const;
  // Drops and makes anew every derived table from the entries; uses come through replace.
  void clear_derived();
  // The entries whose arrival was not as it had been noted when the derived tables were made anew:
  // the new digests are of what stands now.
  const std::vector<logbook::EntryId>& changed_arrivals() const;
  // Durable when it returns: only then may "Saved" be said.
  void commit();

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace store
