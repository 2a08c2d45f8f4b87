#include "cases/pieces.h"

#include <algorithm>
#include <cctype>

namespace cases {

namespace {

constexpr std::string_view blanks = " \t\r\n";

}  // namespace

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> lines;
  while (!text.empty()) {
    const auto end = text.find('\n');
    lines.emplace_back(text.substr(0, end));
    if (!lines.back().empty() && lines.back().back() == '\r') lines.back().pop_back();
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
  }
  return lines;
}

std::vector<std::string> pieces_of(std::string_view text, std::string_view separator) {
  std::vector<std::string> pieces;
  std::size_t from = 0;
  bool is_quoted = false;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] == '"') is_quoted = !is_quoted;
    if (is_quoted || text.substr(at, separator.size()) != separator) continue;
    pieces.emplace_back(trimmed(text.substr(from, at - from)));
    from = at + separator.size();
  }
  pieces.emplace_back(trimmed(text.substr(from)));
  return pieces;
}

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words;
  bool is_in_word = false;
  char quote = 0;
  for (const char c : text) {
    if (quote != 0 && c == quote) {
      quote = 0;
    } else if (quote == 0 && (c == '\'' || c == '"')) {
      quote = c;
      if (!is_in_word) words.emplace_back();
      is_in_word = true;
    } else if (quote == 0 && blanks.find(c) != std::string_view::npos) {
      is_in_word = false;
    } else {
      if (!is_in_word) words.emplace_back();
      is_in_word = true;
      words.back() += c;
    }
  }
  return words;
}

std::string unquoted(std::string_view text) {
  text = trimmed(text);
  const bool is_quoted = text.size() >= 2 && text.front() == '"' && text.back() == '"';
  return std::string(is_quoted ? text.substr(1, text.size() - 2) : text);
}

std::string lower(std::string_view text) {
  std::string result(text);
  std::transform(result.begin(), result.end(), result.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return result;
}

bool holds(std::string_view text, std::string_view words) {
  return text.find(words) != std::string_view::npos;
}

}  // namespace cases
