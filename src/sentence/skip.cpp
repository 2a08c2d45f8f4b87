#include "sentence/skip.h"

#include <algorithm>

namespace sentence {
namespace {

// One past the quoted text or the character there.
std::size_t next_place(const Cursor& cursor, std::size_t at) {
  const std::string_view line = cursor.text().substr(0, cursor.end());
  const std::optional<std::size_t> end = end_of_quote(line, at);
  return end ? *end : at + 1;
}

bool starts_word(const Cursor& cursor, std::size_t at) {
  if (at == 0 || cursor.text()[at - 1] == ',') return true;
  const std::string_view before = cursor.text().substr(0, at);
  return before.ends_with(' ') || before.ends_with('\t') || before.ends_with("\xC2\xA0");
}

}  // namespace

void skip_clause(Cursor& cursor) {
  std::size_t at = cursor.at();
  while (at < cursor.end() && !is_clause_comma(cursor.text(), at)) at = next_place(cursor, at);
  cursor.go_to(std::min(at, cursor.end()));
}

std::optional<std::size_t> end_of_words(const Cursor& cursor, std::string_view words) {
  Cursor ahead = cursor;
  ahead.trace_to(nullptr);
  for (std::size_t at = cursor.at(); at < cursor.end(); at = next_place(cursor, at)) {
    ahead.go_to(at);
    if (starts_word(cursor, at) && ahead.take_words(words)) return ahead.at();
  }
  return std::nullopt;
}

}  // namespace sentence
