#include "store/book.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "quantity/expect.h"
#include "sentence/frame.h"
#include "store/arrivals.h"
#include "store/file.h"
#include "store/inside.h"
#include "store/origin.h"
#include "store/rows.h"
#include "store/schema_proof.h"
#include "store/schema_sql.h"
#include "store/use_rows.h"
#include "store/walk.h"

namespace store {
namespace {

using logbook::TroubleKind;

void lay_out(Database& database, const logbook::RecordId& record) {
  Transaction transaction(database, Transaction::Kind::write);
  database.run("PRAGMA application_id = " + std::to_string(application));
  database.run("PRAGMA user_version = " + std::to_string(schema_version));
  database.run(permanent_sql);
  database.run(local_sql);
  database.run(derived_sql);
  const std::string id = sentence::say_record_id(record);
  database.execute("INSERT INTO record VALUES (1, ?)", id);
  transaction.commit();
}

// Which record the file belongs to; throws what is wrong with it.
logbook::RecordId record_of(Database& database, const std::string& path) {
  if (database.number("PRAGMA application_id") != application) {
    throw Trouble({TroubleKind::not_a_book, path, "another kind of file"});
  }
  if (database.number("PRAGMA user_version") < 1) {
    throw Trouble({TroubleKind::damaged, path, "its tables have no version"});
  }
  expect_tables(database, path);
  Statement found = database.statement("SELECT id FROM record");
  const auto record =
      found.next() ? sentence::read_record_id(found.text(0)) : std::optional<logbook::RecordId>();
  if (!record) throw Trouble({TroubleKind::damaged, path, "the record has no name"});
  return *record;
}

constexpr std::string_view all_entries = "FROM entry AS e ORDER BY e.writer, e.number, e.digest";
constexpr std::string_view to_head =
    "FROM entry AS e WHERE e.writer = ? AND e.number <= ? ORDER BY e.number, e.digest";
constexpr std::string_view about_thing =
    "FROM thing AS t JOIN mention AS m ON m.thing = t.id JOIN arrived AS a ON a.place = m.entry "
    "JOIN entry AS e ON e.writer = a.writer AND e.number = a.number AND e.digest = a.digest "
    "WHERE t.name = ? ORDER BY m.day, m.entry";

std::string select(std::string_view from) {
  return std::string("SELECT ").append(row_columns).append(" ").append(from);
}

}  // namespace

std::optional<logbook::Said> first_said(Database& database) {
  Statement found = database.statement(
      select("FROM arrived AS a JOIN entry AS e ON e.writer = a.writer AND e.number = a.number "
             "AND e.digest = a.digest WHERE a.place = 1"));
  if (!found.next()) return std::nullopt;
  const std::optional<Stored> stored = stored_in(row_in(found));
  return stored ? said_by(*stored) : std::nullopt;
}

Book::Book(std::unique_ptr<BookInside> inside) : inside_(std::move(inside)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

void Book::make(const std::string& path, const logbook::Said& begins,
                const Surroundings& surroundings) {
  EXPECT(std::holds_alternative<logbook::RecordBegins>(begins.fact));
  NewFile file(path);
  {
    const logbook::RecordId record = new_record(origin_of(begins, surroundings));
    auto inside = std::unique_ptr<BookInside>(
        new BookInside{.database = Database(file.name(), Database::Mode::create),
                       .access = Access::write,
                       .surroundings = surroundings,
                       .record = record,
                       .begins = begins});
    lay_out(inside->database, record);
    Book book(std::move(inside));
    Pen pen(book);
    EXPECT(std::holds_alternative<logbook::Entry>(pen.append(begins)));
    pen.commit();
  }
  // The file gets its name only now that it is whole and closed.
  file.settle();
}

Book Book::create(const std::string& path, const logbook::Said& begins,
                  const Surroundings& surroundings) {
  make(path, begins, surroundings);
  return open(path, Access::write, surroundings);
}

Book Book::open(const std::string& path, Access access, const Surroundings& surroundings) {
  const std::string file = existing_file(path, access);
  const auto mode = access == Access::write ? Database::Mode::write : Database::Mode::read;
  auto inside = std::unique_ptr<BookInside>(new BookInside{
      .database = Database(file, mode), .access = access, .surroundings = surroundings});
  inside->record = record_of(inside->database, path);
  inside->is_newer = inside->database.number("PRAGMA user_version") > schema_version;
  if (inside->is_newer && access == Access::write) {
    throw Trouble({TroubleKind::newer_book, path, ""});
  }
  inside->known = known_here(inside->database, inside->record, surroundings.state_folder);
  if (!inside->known.is_here && access != Access::prove) {
    const Transaction one_state(inside->database, Transaction::Kind::look);
    expect_whole(inside->database, inside->is_newer ? Form::newer : Form::ours, path);
    inside->proved = expect_proved(inside->database, inside->record, path);
  }
  if (access == Access::write) {
    inside->must_derive_anew = has_other_derived_form(inside->database) ||
                               (inside->proved && *inside->proved != proofs_in(inside->database));
  }
  return Book(std::move(inside));
}

const std::string& Book::path() const { return inside_->database.path(); }
const logbook::RecordId& Book::record() const { return inside_->record; }
bool Book::began_a_new_writer() const { return inside_->began_a_new_writer; }
bool Book::is_of_newer_version() const { return inside_->is_newer; }

// sqlite.org/pragma.html#pragma_data_version
std::int64_t Book::state() const { return inside_->database.number("PRAGMA data_version"); }

bool Book::has_our_derived_form() const { return !has_other_derived_form(inside_->database); }

bool Book::goes_on_here() const { return inside_->known.is_here; }
std::optional<logbook::EntryId> Book::missing() const { return inside_->known.missing; }

logbook::WriterId Book::writer() const {
  const std::optional<logbook::WriterId> writer = own_writer(inside_->database);
  if (!writer) throw Trouble({TroubleKind::damaged, inside_->database.path(), "no own entries"});
  return *writer;
}

std::vector<logbook::Entry> Book::entries(const std::optional<logbook::Horizon>& horizon) const {
  Database& database = inside_->database;
  if (!horizon)
    return entries_in(database, inside_->proved, database.statement(select(all_entries)));
  std::vector<logbook::Entry> result;
  logbook::Horizon heads = *horizon;
  std::sort(heads.begin(), heads.end());
  for (const logbook::Head& head : heads) {
    const std::string writer = sentence::say_writer(head.writer);
    auto some = entries_in(database, inside_->proved,
                           database.statement(select(to_head), writer, head.number));
    std::move(some.begin(), some.end(), std::back_inserter(result));
  }
  return result;
}

std::vector<logbook::Entry> Book::entries_about(const logbook::About& about) const {
  Database& database = inside_->database;
  const std::string name = sentence::say_about({about});
  return entries_in(database, inside_->proved, database.statement(select(about_thing), name));
}

logbook::Horizon Book::horizon() const {
  logbook::Horizon horizon;
  for (const logbook::WriterId& writer : writers(inside_->database)) {
    const std::optional<logbook::EntryId> newest = newest_of(inside_->database, writer);
    if (!newest) {
      throw Trouble({TroubleKind::damaged, inside_->database.path(), "a writer has no entry"});
    }
    horizon.push_back({writer, newest->number});
  }
  return horizon;
}

logbook::Horizon Book::known_on(quantity::Day day) const {
  return horizon_on(inside_->database, day);
}

std::vector<logbook::UseRow> Book::uses(const std::string& aircraft) const {
  return store::uses(inside_->database, aircraft);
}

std::vector<logbook::RunningTotal> Book::running_totals(const std::string& aircraft) const {
  return store::running_totals(inside_->database, aircraft);
}

std::int64_t Book::summed(const logbook::RunningTotal& key) const {
  return store::summed(inside_->database, key);
}

seal::SecretKey Book::new_key(const std::string& person, std::int64_t ordinal) const {
  const Origin origin = origin_of(first_said(inside_->database), inside_->surroundings);
  return store::new_key(origin, person + " " + std::to_string(ordinal));
}

struct Look::Inside {
  explicit Inside(BookInside& opened) : book(opened) {
    if (book.looks == 0) transaction.emplace(book.database, Transaction::Kind::look);
    ++book.looks;
  }
  ~Inside() { --book.looks; }
  BookInside& book;
  std::optional<Transaction> transaction;
};

Look::Look(const Book& book) : inside_(new Inside(*book.inside_)) {}
Look::~Look() = default;

}  // namespace store
