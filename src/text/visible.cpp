#include "text/visible.h"

#include "text/unicode.h"

namespace text {
namespace {

enum class LineFeed { kept, shown };

std::string upper_hex(char32_t number, std::size_t least_digits) {
  std::string result;
  for (; number != 0 || result.size() < least_digits; number >>= 4) {
    result.insert(result.begin(), hex_digits[number & 0xF]);
  }
  return result;
}

std::string shown(const Character& character, LineFeed line_feed) {
  if (!character.code) {
    const auto byte = static_cast<unsigned char>(character.bytes.front());
    return "<byte " + upper_hex(byte, 2) + ">";
  }
  const bool is_kept = *character.code == U'\n' && line_feed == LineFeed::kept;
  if (is_kept || !is_control(*character.code)) return std::string(character.bytes);
  return "<U+" + upper_hex(*character.code, 4) + ">";
}

std::string made_visible(std::string_view words, LineFeed line_feed) {
  std::string result;
  result.reserve(words.size());
  while (!words.empty()) {
    const Character character = first_character(words);
    result += shown(character, line_feed);
    words.remove_prefix(character.bytes.size());
  }
  return result;
}

bool is_between(char32_t code, char32_t first, char32_t last) {
  return first <= code && code <= last;
}

}  // namespace

bool is_control(char32_t code) {
  if (code < 0x20 || is_between(code, 0x7F, 0x9F)) return true;
  return code == 0x061C || is_between(code, 0x200E, 0x200F) || is_between(code, 0x2028, 0x202E) ||
         is_between(code, 0x2066, 0x2069);
}

bool has_control(std::string_view words) {
  while (!words.empty()) {
    const Character character = first_character(words);
    if (!character.code || is_control(*character.code)) return true;
    words.remove_prefix(character.bytes.size());
  }
  return false;
}

std::string visible(std::string_view words) { return made_visible(words, LineFeed::kept); }

std::string visible_line(std::string_view words) { return made_visible(words, LineFeed::shown); }

}  // namespace text
