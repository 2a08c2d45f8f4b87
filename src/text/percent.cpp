#include "text/percent.h"

#include "text/unicode.h"
#include "text/visible.h"

namespace text {
namespace {

bool is_without_width(char32_t code) {
  return code == 0xAD || (code >= 0x200B && code <= 0x200D) || (code >= 0x2060 && code <= 0x2064) ||
         code == 0xFEFF || (code >= 0xFFF9 && code <= 0xFFFB) ||
         (code >= 0xE0000 && code <= 0xE007F);
}

bool is_encoded(const Character& character) {
  if (!character.code) return true;
  constexpr std::u32string_view marks = U" ,:|%";
  const char32_t code = *character.code;
  return marks.find(code) != marks.npos || is_control(code) || is_without_width(code);
}

std::string encoded_bytes(std::string_view bytes) {
  std::string result;
  for (const char byte : bytes) {
    const auto number = static_cast<unsigned char>(byte);
    result += '%';
    result += hex_digits[number >> 4];
    result += hex_digits[number & 0xF];
  }
  return result;
}

// The byte that two hexadecimal digits stand for.
std::optional<char> byte_from(std::string_view pair) {
  if (pair.size() != 2) return std::nullopt;
  const std::size_t high = hex_digits.find(pair[0]);
  const std::size_t low = hex_digits.find(pair[1]);
  if (high == hex_digits.npos || low == hex_digits.npos) return std::nullopt;
  return static_cast<char>(static_cast<unsigned char>(high * 16 + low));
}

}  // namespace

std::string percent_encoded(std::string_view name) {
  std::string result;
  for (const Character& character : characters(name)) {
    if (is_encoded(character)) {
      result += encoded_bytes(character.bytes);
    } else {
      result += character.bytes;
    }
  }
  return result;
}

std::optional<std::string> percent_decoded(std::string_view encoded) {
  std::string name;
  for (std::size_t i = 0; i < encoded.size(); ++i) {
    if (encoded[i] != '%') {
      name += encoded[i];
      continue;
    }
    const std::optional<char> byte = byte_from(encoded.substr(i + 1, 2));
    if (!byte) return std::nullopt;
    name += *byte;
    i += 2;
  }
  if (!is_valid_utf8(name) || percent_encoded(name) != encoded) return std::nullopt;
  return name;
}

}  // namespace text
