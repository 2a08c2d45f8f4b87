#include "store/arrivals.h"

#include "sentence/frame.h"
#include "store/sql.h"
#include "store/trouble.h"

namespace store {
namespace {

constexpr std::int64_t places_at_once = 256;

std::string key_of(Blob digest) {
  return {reinterpret_cast<const char*>(digest.data()), digest.size()};
}

}  // namespace

std::optional<logbook::WriterId> own_writer(Database& database) {
  Statement newest =
      database.statement("SELECT writer FROM own_writer ORDER BY ordinal DESC LIMIT 1");
  if (!newest.next()) return std::nullopt;
  return writer_in(database, newest.text(0));
}

std::vector<logbook::WriterId> own_writers(Database& database) {
  std::vector<logbook::WriterId> result;
  Statement all = database.statement("SELECT writer FROM own_writer ORDER BY ordinal");
  while (all.next()) result.push_back(writer_in(database, all.text(0)));
  return result;
}

std::int64_t own_writer_count(Database& database) {
  return database.number("SELECT count(*) FROM own_writer");
}

logbook::WriterId begin_writer(Database& database, const Origin& origin) {
  const std::int64_t ordinal = own_writer_count(database) + 1;
  const logbook::WriterId writer = new_writer(origin, ordinal);
  const std::string name = sentence::say_writer(writer);
  database.execute("INSERT INTO own_writer VALUES (?, ?, ?)", ordinal, name, origin.now.count());
  return writer;
}

std::int64_t arrive(Database& database, const logbook::EntryId& entry, std::int64_t command,
                    const Origin& origin) {
  const std::int64_t place = 1 + database.number("SELECT max(place) FROM arrived");
  const std::string name = sentence::say_writer(entry.writer);
  database.execute("INSERT INTO arrived VALUES (?, ?, ?, ?, ?, ?, ?)", place, command,
                   origin.now.count(), origin.today.count(), name, entry.number,
                   Blob(entry.digest));
  return place;
}

std::int64_t next_command(Database& database) {
  return 1 + database.number("SELECT command FROM arrived ORDER BY place DESC LIMIT 1");
}

std::int64_t newest_place_of(Database& database, const logbook::WriterId& writer) {
  const std::string name = sentence::say_writer(writer);
  return database.number("SELECT place FROM arrived WHERE writer = ? ORDER BY place DESC LIMIT 1",
                         name);
}

bool is_one_command_after(Database& database, const logbook::WriterId& writer,
                          std::int64_t number) {
  const std::string name = sentence::say_writer(writer);
  Statement arrived = database.statement(
      "SELECT command, number FROM arrived WHERE writer = ? ORDER BY place DESC", name);
  std::optional<std::int64_t> command;
  while (arrived.next() && arrived.number(1) > number) {
    if (command.value_or(arrived.number(0)) != arrived.number(0)) return false;
    command = arrived.number(0);
  }
  return true;
}

logbook::Horizon horizon_on(Database& database, quantity::Day day) {
  logbook::Horizon horizon;
  Statement heads = database.statement(
      "SELECT writer, max(number) FROM arrived WHERE day <= ? GROUP BY writer ORDER BY writer",
      day.count());
  while (heads.next()) {
    horizon.push_back({writer_in(database, heads.text(0)), heads.number(1)});
  }
  return horizon;
}

Places::Places(Database& database)
    : database_(database), next_(database.number("SELECT max(place) FROM arrived")) {}

std::int64_t Places::of(const logbook::EntryId& entry) {
  const std::string key = key_of(entry.digest);
  for (;;) {
    if (const auto found = known_.find(key); found != known_.end()) return found->second;
    if (!read_further_back()) {
      throw Trouble({logbook::TroubleKind::damaged, database_.path(),
                     sentence::say_entry(entry) + " is not among the arrivals"});
    }
  }
}

void Places::add(const logbook::EntryId& entry, std::int64_t place) {
  known_.emplace(key_of(entry.digest), place);
}

bool Places::read_further_back() {
  Statement arrived = database_.statement(
      "SELECT place, digest FROM arrived WHERE place <= ? ORDER BY place DESC LIMIT ?", next_,
      places_at_once);
  bool has_read = false;
  while (arrived.next()) {
    known_.emplace(key_of(arrived.blob(1)), arrived.number(0));
    next_ = arrived.number(0) - 1;
    has_read = true;
  }
  return has_read;
}

}  // namespace store
