#include "document/wrap.h"

#include <algorithm>

#include "document/number.h"
#include "text/pieces.h"
#include "text/unicode.h"
#include "text/visible.h"

namespace document {
namespace {

// Units and the like; a longer word may stand on a line of its own.
constexpr std::size_t longest_unit = 8;

bool is_bound_to(std::string_view before, std::string_view word) {
  return is_plain_number(before) && text::columns(word) <= longest_unit;
}

// What must stay on one line: words, and numbers with what they count.
std::vector<std::string_view> unbroken_pieces(std::string_view words) {
  std::vector<std::string_view> pieces;
  std::string_view before;
  for (const std::string_view word : text::split(words, ' ')) {
    if (!pieces.empty() && is_bound_to(before, word)) {
      // Both lie in the same words with one blank between, so the piece only grows.
      pieces.back() = {pieces.back().data(), pieces.back().size() + 1 + word.size()};
    } else {
      pieces.push_back(word);
    }
    before = word;
  }
  return pieces;
}

}  // namespace

std::vector<std::string> wrapped(std::string_view words, std::size_t columns, Measure measure) {
  const std::string shown = text::visible_line(words);
  std::vector<std::string> lines;
  const std::size_t blank = measure(" ");
  std::size_t used = 0;
  for (const std::string_view piece : unbroken_pieces(shown)) {
    const std::size_t wide = measure(piece);
    if (lines.empty() || used + blank + wide > columns) {
      lines.emplace_back(piece);
      used = wide;
    } else {
      lines.back() += ' ';
      lines.back() += piece;
      used += blank + wide;
    }
  }
  return lines;
}

std::string padded(std::string_view words, std::size_t columns, Align align) {
  const std::size_t wide = text::columns(words);
  const std::string blanks(columns > wide ? columns - wide : 0, ' ');
  return align == Align::left ? std::string(words) + blanks : blanks + std::string(words);
}

std::string without_end_blanks(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

std::size_t widest_piece(std::string_view words) {
  std::size_t widest = 0;
  for (const std::string_view piece : unbroken_pieces(words)) {
    widest = std::max(widest, text::columns(piece));
  }
  return widest;
}

}  // namespace document
