#include "store/rows.h"

#include <algorithm>
#include <utility>

#include "quantity/expect.h"
#include "sentence/frame.h"
#include "sentence/sentence.h"
#include "store/proofs.h"
#include "store/sql.h"
#include "store/trouble.h"

namespace store {
namespace {

std::string or_dash(const std::string& text) { return text.empty() ? "-" : text; }

template <class Array>
bool fill(Array& array, const std::vector<std::uint8_t>& bytes) {
  if (bytes.size() != array.size()) return false;
  std::copy(bytes.begin(), bytes.end(), array.begin());
  return true;
}

[[noreturn]] void damaged(const Database& database, const Row& row) {
  throw Trouble({logbook::TroubleKind::damaged, database.path(),
                 row.writer.substr(0, 5) + '-' + std::to_string(row.number)});
}

}  // namespace

Row row_of(const Stored& stored) {
  const logbook::Frame& frame = stored.frame;
  return {sentence::say_writer(frame.writer),
          frame.number,
          {stored.id.digest.begin(), stored.id.digest.end()},
          {stored.previous.begin(), stored.previous.end()},
          frame.written.count(),
          frame.language,
          sentence::say_about(frame.about),
          sentence::say_knows(frame.knows),
          sentence::say_refers(frame.refers),
          or_dash(frame.signature),
          stored.sentence};
}

std::optional<Stored> stored_in(const Row& row) {
  Stored stored;
  const bool has_digests =
      fill(stored.id.digest, row.digest) && fill(stored.previous, row.previous);
  if (!has_digests) return std::nullopt;
  // The line's reader is the judge of all other columns.
  const std::string line = row.writer + '-' + std::to_string(row.number) + ' ' +
                           say(quantity::Instant::of(row.written)) + ' ' +
                           std::to_string(row.language) + ' ' + row.about + ' ' + row.knows + ' ' +
                           row.refers + ' ' + row.signature + " | " + row.sentence;
  auto read = sentence::read_line(line);
  auto* const good = std::get_if<sentence::ReadLine>(&read);
  if (good == nullptr) return std::nullopt;
  stored.frame = std::move(good->frame);
  stored.sentence = row.sentence;
  stored.id.writer = stored.frame.writer;
  stored.id.number = stored.frame.number;
  return stored;
}

std::optional<logbook::Said> said_by(const Stored& stored) {
  if (sentence::read_withheld(stored.sentence)) return std::nullopt;
  return sentence::read(stored.sentence, {}).said;
}

logbook::Entry entry_of(Stored stored) {
  logbook::Entry entry;
  entry.said = said_by(stored);
  entry.id = stored.id;
  entry.frame = std::move(stored.frame);
  entry.sentence = std::move(stored.sentence);
  return entry;
}

void insert(Database& database, const Stored& stored) {
  const Row row = row_of(stored);
  database.execute("INSERT INTO entry VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", row.writer,
                   row.number, Blob(row.digest), Blob(row.previous), row.written, row.language,
                   row.about, row.knows, row.refers, row.signature, row.sentence);
}

Row row_in(const Statement& statement) {
  const Blob digest = statement.blob(2);
  const Blob previous = statement.blob(3);
  return {std::string(statement.text(0)),
          statement.number(1),
          {digest.begin(), digest.end()},
          {previous.begin(), previous.end()},
          statement.number(4),
          statement.number(5),
          std::string(statement.text(6)),
          std::string(statement.text(7)),
          std::string(statement.text(8)),
          std::string(statement.text(9)),
          std::string(statement.text(10))};
}

std::vector<logbook::Entry> entries_in(Database& database, const std::optional<Proofs>& worked_out,
                                       Statement statement) {
  std::vector<logbook::Entry> entries;
  while (statement.next()) {
    const Row row = row_in(statement);
    std::optional<Stored> stored = stored_in(row);
    if (!stored) damaged(database, row);
    entries.push_back(entry_of(*std::move(stored)));
  }
  tell_proofs(database, worked_out, entries);
  return entries;
}

std::vector<logbook::WriterId> writers(Database& database) {
  std::vector<logbook::WriterId> result;
  for (std::string last;;) {
    Statement next = database.statement(
        "SELECT writer FROM entry WHERE writer > ? ORDER BY writer LIMIT 1", last);
    if (!next.next()) return result;
    last = std::string(next.text(0));
    result.push_back(writer_in(database, last));
  }
}

std::vector<logbook::EntryId> entries_numbered(Database& database, const logbook::WriterId& writer,
                                               std::int64_t number) {
  std::vector<logbook::EntryId> result;
  const std::string name = sentence::say_writer(writer);
  Statement found = database.statement(
      "SELECT digest FROM entry WHERE writer = ? AND number = ? ORDER BY digest", name, number);
  while (found.next()) result.push_back({writer, number, digest_in(database, found.blob(0))});
  return result;
}

std::optional<logbook::EntryId> newest_of(Database& database, const logbook::WriterId& writer) {
  const std::string name = sentence::say_writer(writer);
  Statement newest = database.statement(
      "SELECT number, digest FROM entry WHERE writer = ? ORDER BY number DESC, digest DESC LIMIT 1",
      name);
  if (!newest.next()) return std::nullopt;
  return logbook::EntryId{writer, newest.number(0), digest_in(database, newest.blob(1))};
}

bool is_there(Database& database, const logbook::EntryId& entry) {
  const std::string name = sentence::say_writer(entry.writer);
  return database.number("SELECT 1 FROM entry WHERE writer = ? AND number = ? AND digest = ?", name,
                         entry.number, Blob(entry.digest)) == 1;
}

}  // namespace store
