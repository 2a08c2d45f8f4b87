// store/rows.h: entries as rows of the permanent table, and back.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "store/proofs.h"
#include "store/sqlite.h"

namespace store {

// The columns of an entry as they stand, read by nobody yet.
struct Row {
  std::string writer;
  std::int64_t number = 0;
  std::vector<std::uint8_t> digest;
  std::vector<std::uint8_t> previous;
  std::int64_t written = 0;
  std::int64_t language = 0;
  std::string about;
  std::string knows;
  std::string refers;
  std::string signature;
  std::string sentence;
  bool operator==(const Row&) const = default;
};

// An entry with what its digest rests on.
struct Stored {
  logbook::EntryId id;
  logbook::Digest previous{};
  logbook::Frame frame;
  std::string sentence;  // as in the record line: maybe the mark of a withheld body
};

Row row_of(const Stored& stored);
// Absent if a column does not hold what the frame asks for.
std::optional<Stored> stored_in(const Row& row);
// What the sentence says; absent if this version cannot read it or its body is withheld.
std::optional<logbook::Said> said_by(const Stored& stored);
logbook::Entry entry_of(Stored stored);

void insert(Database& database, const Stored& stored);
// The rows of a statement that begins with row_columns, in its order.
inline constexpr std::string_view row_columns =
    "e.writer, e.number, e.digest, e.previous, e.written, e.language, e.about, e.knows, e.refers, "
    "e.signature, e.sentence";
Row row_in(const Statement& statement);
// The same as entries; damaged if a row is none.
std::vector<logbook::Entry> entries_in(Database& database, const std::optional<Proofs>& worked_out,
                                       Statement statement);

// All writers of the book, sorted. Steps from one to the next, not through all entries.
std::vector<logbook::WriterId> writers(Database& database);
// All entries with this key, more than one after a fork.
std::vector<logbook::EntryId> entries_numbered(Database& database, const logbook::WriterId& writer,
                                               std::int64_t number);
// The newest entry of a writer; after a fork the last by digest, as the trigger has it.
std::optional<logbook::EntryId> newest_of(Database& database, const logbook::WriterId& writer);
bool is_there(Database& database, const logbook::EntryId& entry);

}  // namespace store
