// What is wrong with the book on disk, and that nothing was lost; and its exit code.
#include <array>

#include "quantity/expect.h"
#include "text/visible.h"
#include "words/grammar.h"
#include "words/words.h"

namespace words {

namespace {

using logbook::Trouble;
using logbook::TroubleKind;

struct TroubleWords {
  TroubleKind kind;
  int exit_code;
  std::string_view text;
};

constexpr std::array trouble_words = {
    TroubleWords{TroubleKind::no_such_book, 66,
                 "There is no book at {path}. Make one with timeworn new, or name another."},
    TroubleWords{TroubleKind::not_a_book, 66,
                 "{path} is no book of Timeworn, so it was left alone. Name another file."},
    TroubleWords{TroubleKind::newer_book, 77,
                 "{path} was written by a newer Timeworn, so {undone}. Use that version."},
    TroubleWords{TroubleKind::already_there, 73,
                 "{path} is there already and was left as it is. Choose another name."},
    TroubleWords{TroubleKind::cannot_create, 73,
                 "{path} cannot be made. Check that its folder is there and may be written."},
    TroubleWords{TroubleKind::cannot_read, 74,
                 "{path} cannot be read; it was not changed. Check the file and its disk."},
    TroubleWords{TroubleKind::cannot_write, 74,
                 "{path} cannot be written, so {undone}. Check the disk's free space and your "
                 "rights."},
    TroubleWords{
        TroubleKind::not_confirmed, 74,
        "The disk failed at the end of writing {path}, so the entry may be there or not. Look "
        "with timeworn history before you say it again."},
    TroubleWords{TroubleKind::in_use, 75,
                 "{path} is in use by another command, so {undone}. Try again in a moment."},
    TroubleWords{TroubleKind::not_allowed, 77, "This is not allowed with {path}, so {undone}."},
    TroubleWords{TroubleKind::damaged, 74,
                 "{path} is damaged, so {undone}. Keep the file as it is; timeworn check shows "
                 "the place."},
    TroubleWords{TroubleKind::not_proved, 74,
                 "{path} is not the book that this machine wrote last. It does not prove whole, so "
                 "it was left alone. Take another copy; timeworn check shows what is wrong."},
    TroubleWords{TroubleKind::no_place_for_mark, 78,
                 "The state folder {path} cannot be used, so {undone}. Check that it may be "
                 "written."},
};

const TroubleWords& sentences_of(TroubleKind kind) {
  for (const TroubleWords& each : trouble_words) {
    if (each.kind == kind) return each;
  }
  EXPECT(!"every trouble has its sentence");
  return trouble_words.front();
}

std::string path_text(const Trouble& trouble) {
  return trouble.path.empty() ? std::string("The book") : text::visible_line(trouble.path);
}

}  // namespace

std::string trouble_text(const Trouble& trouble, std::string_view undone) {
  std::string told = fill_named(sentences_of(trouble.kind).text, [&](std::string_view name) {
    return name == "undone" ? std::string(undone) : path_text(trouble);
  });
  if (!trouble.detail.empty()) told += " (" + text::visible_line(trouble.detail) + ")";
  return told;
}

int trouble_exit_code(const Trouble& trouble) { return sentences_of(trouble.kind).exit_code; }

std::string_view unheard_text() {
  return "The answer could not be written, but what you asked for was done and stands. Look with "
         "timeworn history before you say it again.";
}

std::string_view unfinished_text() {
  return "What you asked for was done and stands, but what comes after it failed.";
}

std::string unknown_trouble_text(std::string_view what) {
  return fill(
      "The command was ended by trouble that it does not know. Please report it, and look with "
      "timeworn history what was saved. ({})",
      {text::visible_line(what)});
}

std::string_view no_memory_text() {
  return "The machine has no memory left for this command. Close other programs, and look with "
         "timeworn history what was saved.";
}

}  // namespace words
