// The copying half of store/book.h.
#include <algorithm>
#include <filesystem>
#include <iterator>
#include <system_error>

#include "sentence/frame.h"
#include "store/arrivals.h"
#include "store/book.h"
#include "store/copied.h"
#include "store/copies.h"
#include "store/file.h"
#include "store/inside.h"
#include "store/place.h"
#include "store/sql.h"

namespace store {
namespace {

using logbook::EntryId;
using logbook::TroubleKind;

struct Arrival {
  std::int64_t place = 0;
  logbook::Digest digest{};
};

Arrival newest_arrival(Database& database) {
  Statement newest =
      database.statement("SELECT place, digest FROM arrived ORDER BY place DESC LIMIT 1");
  if (!newest.next()) return {};
  return {newest.number(0), digest_in(database, newest.blob(1))};
}

bool is_arrival(Database& database, const MadeCopy& copy) {
  return database.number("SELECT count(*) FROM arrived WHERE place = ? AND digest = ?", copy.place,
                         Blob(copy.digest)) == 1;
}

// The newest state of this book that lies elsewhere.
std::optional<MadeCopy> best_copy(BookInside& inside) {
  auto copies = made_copies(inside.surroundings.state_folder, inside.record);
  std::stable_sort(copies.begin(), copies.end(),
                   [](const MadeCopy& a, const MadeCopy& b) { return a.place < b.place; });
  for (auto copy = copies.rbegin(); copy != copies.rend(); ++copy) {
    if (copy->is_elsewhere && is_arrival(inside.database, *copy)) return *copy;
  }
  return std::nullopt;
}

// Such a path means the same from every folder; itself if that cannot be found out.
std::string whole_path(const std::string& path) {
  std::error_code trouble;
  const auto whole = std::filesystem::absolute(path, trouble);
  return trouble ? path : whole.string();
}

// The copy, opened again, holds the same entries, and nothing is wrong with it. A fault that it
// shares with its original is told of that one.
void prove_copy(const std::string& file, const std::string& path,
                const std::vector<EntryId>& entries, const Book& original) {
  const Book copy = Book::open(file, Access::prove, {{}, "", {}, {}});
  const auto against = copy.against_copy();
  if (against.empty() && copy.entry_ids() == entries) return;
  const auto before = original.against_copy();
  if (!before.empty()) throw Trouble({TroubleKind::damaged, original.path(), told(before.front())});
  throw Trouble(
      {TroubleKind::cannot_write, path,
       against.empty() ? "its entries are not those of the book" : told(against.front())});
}

}  // namespace

std::string told(const Finding& finding) {
  const std::string entry = finding.entry ? sentence::say_entry(*finding.entry) + ", " : "";
  return entry + finding.detail;
}

std::vector<Finding> against_copy(const std::vector<Finding>& findings,
                                  const std::vector<logbook::WriterId>& own) {
  const auto is_own = [&](const Finding& one) {
    return one.entry && std::find(own.begin(), own.end(), one.entry->writer) != own.end();
  };
  std::vector<Finding> against;
  std::copy_if(findings.begin(), findings.end(), std::back_inserter(against),
               [&](const Finding& one) {
                 if (one.what == "gap") return is_own(one);
                 return one.what != "fork" && one.what != "form" && one.what != "mark";
               });
  return against;
}

std::vector<Finding> Book::against_copy(Depth depth) const {
  return store::against_copy(check(depth), own_writers(inside_->database));
}

std::vector<EntryId> Book::entry_ids() const {
  Database& database = inside_->database;
  std::vector<EntryId> ids;
  Statement rows = database.statement("SELECT writer, number, digest FROM entry");
  while (rows.next()) ids.push_back(entry_in(database, rows, 0));
  std::sort(ids.begin(), ids.end());
  return ids;
}

Copied Book::copy_to(const std::string& path) const {
  NewFile file(path);
  Copied copied;
  copied.path = path;
  {
    // Others can commit again as soon as the pages are copied; proving takes longer.
    const Look one_state(*this);
    Database target(file.name(), Database::Mode::create);
    inside_->database.copy_to(target);
    copied.held = entry_ids();
    const Arrival newest = newest_arrival(inside_->database);
    copied.place = newest.place;
    copied.digest = newest.digest;
  }
  file.flush();
  prove_copy(file.name(), path, copied.held, *this);
  file.settle();
  copied.entries = static_cast<std::int64_t>(copied.held.size());
  copied.is_passing = lies_on_passing(path);
  copied.is_elsewhere = !copied.is_passing && !is_on_same_device(path, inside_->database.path());
  return copied;
}

void Book::remember_copy(const Copied& copied, quantity::Instant now) const {
  remember(inside_->surroundings.state_folder, inside_->record,
           {now, copied.is_elsewhere, copied.place, copied.digest, whole_path(copied.path)});
}

std::optional<Uncopied> Book::uncopied() const {
  Database& database = inside_->database;
  const std::optional<MadeCopy> best = best_copy(*inside_);
  const std::int64_t place = best ? best->place : 0;
  // Places are counted up, so that neither asks for all arrivals.
  Statement next =
      database.statement("SELECT at FROM arrived WHERE place > ? ORDER BY place LIMIT 1", place);
  if (!next.next()) return std::nullopt;
  Uncopied uncopied{newest_arrival(database).place - place, quantity::Instant::of(next.number(0)),
                    std::nullopt};
  if (best) uncopied.newest_copy = best->made;
  return uncopied;
}

}  // namespace store
