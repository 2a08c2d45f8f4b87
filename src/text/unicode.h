#pragma once
// What a piece of UTF-8 is made of: characters, clusters, columns. The one door to utf8proc.
// Every function takes any bytes; what it does with bytes that are not UTF-8 is said at each.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace text {

// One code point with its bytes. A byte that belongs to no valid UTF-8 sequence (RFC 3629)
// stands alone and has no code.
struct Character {
  std::string_view bytes;
  std::optional<char32_t> code;
};

// The first character. `words` must not be empty.
Character first_character(std::string_view words);

// All characters in order; their bytes put together are `words` again.
std::vector<Character> characters(std::string_view words);

// True if all bytes are well-formed UTF-8: no overlong form, no surrogate, nothing above U+10FFFF.
bool is_valid_utf8(std::string_view words);

// Normalization form C (Unicode Standard Annex 15). Bytes that are not UTF-8 come back unchanged.
std::string nfc(std::string_view words);

// For comparing names without regard to case: Unicode's full case folding, then form C.
// Bytes that are not UTF-8 come back unchanged.
std::string fold(std::string_view words);

// What a reader sees as single characters: extended grapheme clusters (Annex 29).
// Put together they are `words` again; a byte that is not UTF-8 is a cluster of its own.
std::vector<std::string_view> clusters(std::string_view words);

// How many columns of a terminal the words take: a cluster takes what its characters take
// together, but never more than two. A byte that is not UTF-8 counts as one.
// Control characters count as none, so make them visible first (text/visible.h).
std::size_t columns(std::string_view words);

}  // namespace text
