#include "text/unicode.h"

#include <utf8proc.h>

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <memory>
#include <new>

namespace text {
namespace {

bool is_ascii(std::string_view words) {
  return std::all_of(words.begin(), words.end(),
                     [](char byte) { return static_cast<unsigned char>(byte) < 0x80; });
}

const std::uint8_t* bytes_of(std::string_view words) {
  return reinterpret_cast<const std::uint8_t*>(words.data());
}

struct Released {
  void operator()(std::uint8_t* memory) const { std::free(memory); }
};

// Lengths are handed over, so a NUL inside the words is a character like any other.
std::string mapped(std::string_view words, int options) {
  if (!is_valid_utf8(words)) return std::string(words);
  std::uint8_t* raw = nullptr;
  const auto length = utf8proc_map(bytes_of(words), static_cast<utf8proc_ssize_t>(words.size()),
                                   &raw, static_cast<utf8proc_option_t>(options));
  const std::unique_ptr<std::uint8_t, Released> result(raw);
  // Of valid UTF-8 nothing but want of memory is left to fail.
  if (length < 0) throw std::bad_alloc();
  return std::string(reinterpret_cast<const char*>(result.get()), static_cast<std::size_t>(length));
}

utf8proc_int32_t number_of(char32_t code) { return static_cast<utf8proc_int32_t>(code); }

bool is_broken_between(const Character& before, const Character& after, std::int32_t& state) {
  if (!before.code || !after.code) {
    state = 0;
    return true;
  }
  return utf8proc_grapheme_break_stateful(number_of(*before.code), number_of(*after.code), &state);
}

std::size_t columns_of_character(const Character& character) {
  if (!character.code) return 1;
  return static_cast<std::size_t>(std::max(0, utf8proc_charwidth(number_of(*character.code))));
}

// A family of four joined people is drawn as one picture two columns wide; a flag is two
// letters drawn as one picture.
std::size_t columns_of_cluster(std::string_view cluster) {
  std::size_t sum = 0;
  for (const Character& character : characters(cluster)) sum += columns_of_character(character);
  return std::min<std::size_t>(sum, 2);
}

std::size_t printable_ascii(std::string_view words) {
  return static_cast<std::size_t>(std::count_if(
      words.begin(), words.end(), [](char byte) { return byte >= ' ' && byte <= '~'; }));
}

}  // namespace

Character first_character(std::string_view words) {
  utf8proc_int32_t code = -1;
  const auto length =
      utf8proc_iterate(bytes_of(words), static_cast<utf8proc_ssize_t>(words.size()), &code);
  if (length <= 0) return {words.substr(0, 1), std::nullopt};
  return {words.substr(0, static_cast<std::size_t>(length)), static_cast<char32_t>(code)};
}

std::vector<Character> characters(std::string_view words) {
  std::vector<Character> result;
  result.reserve(words.size());
  while (!words.empty()) {
    result.push_back(first_character(words));
    words.remove_prefix(result.back().bytes.size());
  }
  return result;
}

bool is_valid_utf8(std::string_view words) {
  while (!words.empty()) {
    const Character character = first_character(words);
    if (!character.code) return false;
    words.remove_prefix(character.bytes.size());
  }
  return true;
}

std::string nfc(std::string_view words) {
  if (is_ascii(words)) return std::string(words);
  return mapped(words, UTF8PROC_STABLE | UTF8PROC_COMPOSE);
}

std::string fold(std::string_view words) {
  return mapped(words, UTF8PROC_STABLE | UTF8PROC_COMPOSE | UTF8PROC_CASEFOLD);
}

std::vector<std::string_view> clusters(std::string_view words) {
  std::vector<std::string_view> result;
  const std::vector<Character> all = characters(words);
  std::int32_t state = 0;
  std::size_t start = 0;
  std::size_t end = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    end += all[i].bytes.size();
    const bool is_last = i + 1 == all.size();
    if (!is_last && !is_broken_between(all[i], all[i + 1], state)) continue;
    result.push_back(words.substr(start, end - start));
    start = end;
  }
  return result;
}

std::size_t columns(std::string_view words) {
  if (is_ascii(words)) return printable_ascii(words);
  std::size_t sum = 0;
  for (const std::string_view cluster : clusters(words)) sum += columns_of_cluster(cluster);
  return sum;
}

}  // namespace text
