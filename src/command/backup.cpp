#include <filesystem>
#include <ostream>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/old_copies.h"
#include "command/the_book.h"
#include "sentence/frame.h"
#include "store/copies.h"
#include "store/file.h"
#include "store/place.h"
#include "text/visible.h"
#include "words/grammar.h"
#include "words/words.h"

namespace command {

namespace {

namespace files = std::filesystem;

// Where the copy goes, or why not.
struct Destination {
  std::string folder;
  std::string file;  // empty: a name is made
  std::string refusal;
};

// "timeworn-<record>-": what all names that we give to copies of this record begin with.
std::string stem(const store::Book& book) {
  return "timeworn-" + sentence::say_record_id(book.record()) + "-";
}

// "20260304T101112Z".
std::string compact(quantity::Instant instant) {
  std::string text = quantity::say(instant);
  std::erase_if(text, [](char c) { return c == '-' || c == ':'; });
  return text;
}

bool is_folder(const std::string& path) {
  std::error_code error;
  return files::is_directory(path, error);
}

Destination no_folder(const std::string& folder) {
  return {"", "",
          "There is no folder " + text::visible_line(folder) +
              ". Make it first, or say where the copy goes. Nothing was copied."};
}

// Without a word: where the last copy of this record went, else a folder beside the book.
Destination usual_place(const store::Book& book, const World& world) {
  const auto copies = store::made_copies(world.state_folder, book.record());
  if (!copies.empty() && !copies.back().path.empty()) {
    const std::string folder = store::folder_of(copies.back().path);
    return is_folder(folder) ? Destination{folder, "", ""} : no_folder(folder);
  }
  const std::string folder = store::folder_of(world.book_path) + "/copies";
  store::make_folder(folder);
  return {folder, "", ""};
}

// No folder is made for a path that was typed: where a disk that is not plugged in should be, the
// copy would land on the disk of the book.
Destination destination(const store::Book& book, const Typed& typed, const World& world) {
  if (typed.operands.empty()) return usual_place(book, world);
  if (typed.operands.size() > 1) {
    return {"", "", "One copy goes to one place. Name one folder or file. Nothing was copied."};
  }
  const std::string& path = typed.operands.front();
  if (path.empty()) {
    return {"", "",
            "The place for the copy is empty. Name a folder or a file. Nothing was copied."};
  }
  if (is_folder(path)) return {path, "", ""};
  if (path.ends_with('/')) return no_folder(path);
  const std::string folder = store::folder_of(path);
  return is_folder(folder) ? Destination{folder, path, ""} : no_folder(folder);
}

// Another backup of the same second may take a name between its making and its use.
store::Copied copy(const store::Book& book, const Destination& to, const World& world) {
  if (!to.file.empty()) return book.copy_to(to.file);
  constexpr int tries = 5;
  for (int i = 1;; ++i) {
    try {
      return book.copy_to(free_copy_name(to.folder, stem(book), compact(world.now)));
    } catch (const store::Trouble& trouble) {
      if (i == tries || trouble.what().kind != logbook::TroubleKind::already_there) throw;
    }
  }
}

void say_removed(const RemovedCopies& removed, World& world) {
  for (const std::string& name : removed.kept) {
    tell(*world.out, "Kept " + text::visible_line(name) +
                         ": it holds what the new copy lacks, or cannot be read.\n");
  }
  for (const std::string& name : removed.failed) {
    tell(*world.out, text::visible_line(name) + " could not be removed.\n");
  }
  if (removed.count == 0) return;
  tell(*world.out,
       "Removed " + words::counted(removed.count, "older copy", "older copies") + ".\n");
}

void say_copied(const store::Copied& copied, const logbook::Horizon& newest, World& world) {
  tell(*world.out, "Copied and proved: " + text::visible_line(copied.path) + ", " +
                       words::counted(copied.entries, "entry", "entries") + " up to " +
                       words::horizon_text(newest) + ".\n");
  if (copied.is_elsewhere) return;
  tell(*world.out,
       copied.is_passing
           ? "It lies where files pass with the power or with the machine, so it does not count as "
             "a copy elsewhere.\n"
           : "It lies on the same disk as the book, so it does not count as a copy elsewhere.\n");
}

// A copy that cannot be remembered is a copy all the same.
bool is_remembered(const store::Book& book, const store::Copied& copied, World& world) {
  try {
    book.remember_copy(copied, world.now);
    return true;
  } catch (const store::Trouble& trouble) {
    if (trouble.what().kind != logbook::TroubleKind::no_place_for_mark) throw;
    tell(*world.err, "The copy stands, but this machine cannot remember it: " +
                         text::visible_line(trouble.what().path) + " cannot be written (" +
                         text::visible_line(trouble.what().detail) + ").\n");
    return false;
  }
}

// How many copies to leave; absent: all. Zero: what was typed is no such number.
std::optional<std::size_t> copies_to_keep(const Typed& typed) {
  const auto text = typed.text("--keep");
  if (!text) return std::nullopt;
  const auto number = quantity::read_whole(*text);
  return number.is_read() && number.value() > 0 ? static_cast<std::size_t>(number.value()) : 0;
}

ExitCode run_backup(const Typed& typed, World& world) {
  world.undone = "no copy was made";
  const auto keep = copies_to_keep(typed);
  if (keep && *keep == 0) {
    return say_unanswerable(
        {"\"" + *typed.text("--keep") + "\" is no number of copies. Write for example --keep 5.",
         typed_wrongly},
        world);
  }
  const store::Book book = open_to_read(world);
  take_the_record_clock(book.entries(std::nullopt), world);
  const Destination to = destination(book, typed, world);
  if (!to.refusal.empty()) return say_unanswerable({to.refusal, cannot_create}, world);
  const store::Copied copied = copy(book, to, world);
  world.has_saved = true;
  say_copied(copied, book.horizon(), world);
  if (!is_remembered(book, copied, world)) return bad_settings;
  if (keep) say_removed(remove_older(book, copied, stem(book), *keep), world);
  return done;
}

}  // namespace

const Command backup_command{
    "backup",
    "make a copy of the book, and prove it",
    "[FOLDER|FILE]",
    "  timeworn backup /media/stick\n"
    "  timeworn backup --keep 5\n"
    "\nWithout a place: where the last copy went, else the folder copies beside the book.\n",
    {{"--keep", "N", "then leave only the N newest copies of this record in that folder"}},
    run_backup};

}  // namespace command
