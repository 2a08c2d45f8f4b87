// command/heads.h: the newest entry of each base with the beginning of its digest, as it stands at
// the foot of printed sheets, and whether a book still holds what an old sheet says.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "command/book_view.h"

namespace command {

// "K7QXM-130 0123456789abcdef" for each base, from entries that are sorted by base and number.
std::vector<std::string> head_texts(const std::vector<logbook::Entry>& entries);
// The sentence at the foot of a sheet; empty without entries.
std::string heads_sentence(const std::vector<logbook::Entry>& entries);

// What came of one head of an old sheet.
struct Compared {
  std::string head;  // "K7QXM-130"
  bool is_held = false;
  std::string sentence;
};
// Reads the foot of a sheet as people type it, "K7QXM-130 0123456789abcdef and M2ABC-88
// fedcba9876543210.", and looks for each in the book.
std::variant<std::vector<Compared>, Unanswerable> compare_heads(
    const std::string& text, const std::vector<logbook::Entry>& entries);

}  // namespace command
