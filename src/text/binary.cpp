#include "text/binary.h"

namespace text {
namespace {

// An alphabet of 2, 4, 5 or 6 bits a letter; all three forms differ in nothing else.
struct Alphabet {
  std::string_view letters;
  unsigned bits;
};

constexpr Alphabet base16_letters{"0123456789abcdef", 4};
constexpr Alphabet base32_letters{"0123456789ABCDEFGHJKMNPQRSTVWXYZ", 5};
constexpr Alphabet base64_letters{
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_", 6};

std::string written(std::span<const std::uint8_t> bytes, const Alphabet& alphabet) {
  const unsigned mask = (1U << alphabet.bits) - 1;
  std::string result;
  unsigned held = 0;  // bits read and not yet written; at most 5 + 8 of them count
  unsigned count = 0;
  for (const std::uint8_t byte : bytes) {
    held = (held << 8) | byte;
    for (count += 8; count >= alphabet.bits;) {
      count -= alphabet.bits;
      result += alphabet.letters[(held >> count) & mask];
    }
    held &= (1U << count) - 1;
  }
  if (count > 0) result += alphabet.letters[(held << (alphabet.bits - count)) & mask];
  return result;
}

std::optional<Bytes> read(std::string_view letters, const Alphabet& alphabet) {
  Bytes result;
  unsigned held = 0;
  unsigned count = 0;
  for (const char letter : letters) {
    const std::size_t place = alphabet.letters.find(letter);
    if (place == alphabet.letters.npos) return std::nullopt;
    held = (held << alphabet.bits) | static_cast<unsigned>(place);
    count += alphabet.bits;
    if (count < 8) continue;
    count -= 8;
    result.push_back(static_cast<std::uint8_t>(held >> count));
    held &= (1U << count) - 1;
  }
  // A whole letter left over, or a bit set behind the last byte, is another spelling.
  if (count >= alphabet.bits || held != 0) return std::nullopt;
  return result;
}

}  // namespace

std::string hex(std::span<const std::uint8_t> bytes) { return written(bytes, base16_letters); }
std::optional<Bytes> from_hex(std::string_view letters) { return read(letters, base16_letters); }

std::string base64url(std::span<const std::uint8_t> bytes) {
  return written(bytes, base64_letters);
}
std::optional<Bytes> from_base64url(std::string_view letters) {
  return read(letters, base64_letters);
}

std::string base32(std::span<const std::uint8_t> bytes) { return written(bytes, base32_letters); }
std::optional<Bytes> from_base32(std::string_view letters) { return read(letters, base32_letters); }

}  // namespace text
