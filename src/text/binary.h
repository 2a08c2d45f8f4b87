#pragma once
// Bytes written with letters, for digests, signatures and the names of writers.
// Each form is the only one for its bytes; the readers refuse every other spelling.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace text {

using Bytes = std::vector<std::uint8_t>;

// Two lower-case hexadecimal digits a byte, the higher half first (RFC 4648 section 8).
std::string hex(std::span<const std::uint8_t> bytes);
std::optional<Bytes> from_hex(std::string_view letters);

// RFC 4648 section 5 (- and _), without padding.
std::string base64url(std::span<const std::uint8_t> bytes);
std::optional<Bytes> from_base64url(std::string_view letters);

// Five bits a letter in the order of RFC 4648 section 6 (the first letter carries the highest five
// bits, unused bits of the last are zero), without padding, with the letters 0-9 and A-Z without
// I, L, O and U. 16 bytes make 26 letters: 25 of five bits, then the last three bits and two zeros.
std::string base32(std::span<const std::uint8_t> bytes);
std::optional<Bytes> from_base32(std::string_view letters);

}  // namespace text
