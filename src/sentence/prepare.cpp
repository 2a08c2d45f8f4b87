#include "sentence/prepare.h"

#include <algorithm>
#include <optional>
#include <string>

#include "sentence/cursor.h"
#include "text/unicode.h"
#include "text/visible.h"

namespace sentence {
namespace {

// Misreadings hold places in 16 bits; of a longer text the start is enough.
constexpr std::size_t most_shown = 60;

Misreading fault_at(Fault fault, std::string_view text, std::size_t from, std::size_t to) {
  Misreading misreading;
  misreading.fault = fault;
  misreading.from = static_cast<std::uint16_t>(from);
  misreading.to = static_cast<std::uint16_t>(to);
  misreading.read = std::string(text.substr(from, to - from));
  return misreading;
}

bool is_seen(char c) { return c >= ' ' && c <= '~'; }

std::vector<Misreading> bad_characters(std::string_view text) {
  std::vector<Misreading> wrong;
  if (std::all_of(text.begin(), text.end(), is_seen)) return wrong;
  std::size_t at = 0;
  for (const text::Character& character : text::characters(text)) {
    const std::size_t next = at + character.bytes.size();
    const bool is_tab = character.bytes == "\t";
    const bool is_bad = !character.code || (text::is_control(*character.code) && !is_tab);
    if (is_bad) wrong.push_back(fault_at(Fault::bad_character, text, at, next));
    at = next;
  }
  return wrong;
}

std::optional<Misreading> open_quote(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    if (!opens_quote(text, at)) {
      ++at;
      continue;
    }
    const std::optional<std::size_t> end = end_of_quote(text, at);
    if (!end) return fault_at(Fault::bad_quote, text, at, text.size());
    at = *end;
  }
  return std::nullopt;
}

bool ends_in_blank(std::string_view text) {
  return text.ends_with(' ') || text.ends_with('\t') || text.ends_with(no_break_space);
}

std::string_view without_blanks(std::string_view text) {
  while (ends_in_blank(text)) text.remove_suffix(text.back() == '\xA0' ? 2 : 1);
  return text;
}

}  // namespace

std::vector<Misreading> faults_of_bytes(std::string_view text) {
  if (text.size() > most_bytes) {
    Misreading misreading = fault_at(Fault::too_long, text, most_bytes, most_bytes);
    misreading.read = std::string(text.substr(0, most_shown));
    return {misreading};
  }
  std::vector<Misreading> wrong = bad_characters(text);
  if (!wrong.empty()) return wrong;
  if (const std::optional<Misreading> quote = open_quote(text)) wrong.push_back(*quote);
  return wrong;
}

std::size_t end_of_language(std::string_view text) {
  std::string_view line = without_blanks(text);
  if (line.ends_with('.')) line = without_blanks(line.substr(0, line.size() - 1));
  return line.size();
}

}  // namespace sentence
