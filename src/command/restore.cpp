#include <algorithm>
#include <filesystem>
#include <iterator>
#include <ostream>
#include <system_error>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/the_book.h"
#include "store/book.h"
#include "store/place.h"
#include "text/visible.h"
#include "words/grammar.h"
#include "words/words.h"

namespace command {

namespace {

namespace files = std::filesystem;

std::string shown(const std::string& path) { return text::visible_line(path); }

std::string entries_text(std::size_t count) {
  return words::counted(static_cast<std::int64_t>(count), "entry", "entries");
}

std::optional<quantity::Day> last_flight_day(const reckon::Standing& standing) {
  std::optional<quantity::Day> last;
  for (const reckon::StandingFact& fact : standing.facts) {
    if (!std::holds_alternative<logbook::Flew>(fact.said->fact)) continue;
    last = std::max(last.value_or(fact.said->day), fact.said->day);
  }
  return last;
}

// "It holds 12 entries of the record "Marrow Point" up to K7QXM-12; last flight 4 March 2026."
std::string contents(const store::Book& copy, World& world) {
  const auto entries = copy.entries(std::nullopt);
  take_the_record_clock(entries, world);
  const auto last = last_flight_day(reckon::standing(entries, world.today));
  return "It holds " + entries_text(entries.size()) + " of the record \"" +
         settings_of(entries).record_name + "\" up to " + words::horizon_text(copy.horizon()) +
         (last ? "; last flight " + quantity::say_long(*last) : "; no flight") + ".\n";
}

// What the book that stands there has and the copy has not.
std::string compared(const store::Book& standing, const store::Book& copy) {
  if (standing.record() != copy.record()) return "It is the book of another record.\n";
  const auto there = standing.entry_ids();
  const auto here = copy.entry_ids();
  std::vector<logbook::EntryId> more;
  std::set_difference(there.begin(), there.end(), here.begin(), here.end(),
                      std::back_inserter(more));
  if (more.empty()) return "It holds nothing that the copy lacks.\n";
  return "It holds " + entries_text(more.size()) +
         " that the copy lacks: " + words::entry_name(more.front()) +
         (more.size() > 1 ? " to " + words::entry_name(more.back()) : "") + ".\n";
}

std::string about_standing(const std::string& path, const store::Book& copy, World& world) {
  const std::string head = "There is a book at " + shown(path) + "; it was not touched.\n";
  try {
    return head +
           compared(store::Book::open(path, store::Access::prove, surroundings(world)), copy);
  } catch (const store::Trouble& trouble) {
    return head + words::trouble_text(trouble.what()) + "\n";
  }
}

bool is_there(const std::string& path) {
  std::error_code unknown;
  return files::exists(files::symlink_status(path, unknown));
}

std::string what_writing_will_do(const store::Book& restored) {
  return restored.goes_on_here()
             ? "The next entry goes on where it ends.\n"
             : "The next entry begins a base of its own: this machine wrote more than the copy "
               "holds, or never wrote in this book.\n";
}

// The first thing that speaks against the copy is thrown.
void expect_sound(const store::Book& copy, const std::string& from) {
  const auto against = copy.against_copy();
  if (against.empty()) return;
  throw store::Trouble({logbook::TroubleKind::damaged, from, store::told(against.front())});
}

// Under its name and with whatever lies beside it, the new book must be what the copy is.
ExitCode say_restored(const store::Book& copy, const std::string& to, World& world) {
  const auto restored = store::Book::open(to, store::Access::prove, surroundings(world));
  if (restored.record() != copy.record() || restored.entry_ids() != copy.entry_ids()) {
    return say_unanswerable({"The new book " + shown(to) +
                                 " does not hold what the copy holds. Leave both as they are, and "
                                 "restore to another place with --to FILE.",
                             cannot_read_or_write},
                            world);
  }
  tell(*world.out, "Restored to " + shown(to) + ".\n" + what_writing_will_do(restored));
  warn_of_place(to, world);
  return done;
}

ExitCode restore(const std::string& from, const std::string& to, World& world) {
  const auto copy = store::Book::open(from, store::Access::prove, surroundings(world));
  expect_sound(copy, from);
  tell(*world.out, "The copy " + shown(from) + " is proved.\n" + contents(copy, world));
  if (is_there(world.book_path)) tell(*world.out, about_standing(world.book_path, copy, world));
  if (is_there(to)) {
    return say_unanswerable({"Nothing was restored, since " + shown(to) +
                                 " is there already. Move it away, or choose another place with "
                                 "--to FILE.",
                             cannot_create},
                            world);
  }
  copy.copy_to(to);
  world.has_saved = true;
  return say_restored(copy, to, world);
}

ExitCode run_restore(const Typed& typed, World& world) {
  if (typed.operands.size() != 1) {
    return say_unanswerable(
        {"Which copy? Say for example: timeworn restore /media/stick/copy.db", typed_wrongly},
        world);
  }
  world.undone = "nothing was restored";
  return restore(typed.operands.front(), typed.text("--to").value_or(world.book_path), world);
}

}  // namespace

const Command restore_command{
    "restore",
    "make a book from a copy, after proving it",
    "COPY",
    "  timeworn restore /media/stick/copy.db\n"
    "  timeworn restore copy.db --to looked-at.db\n"
    "\nIt never overwrites: move a book that stands there away first.\n",
    {{"--to", "FILE", "where the book goes (else where the book of this command is)"}},
    run_restore};

}  // namespace command
