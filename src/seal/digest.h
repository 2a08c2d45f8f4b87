// seal/digest.h: SHA-256 digests (FIPS 180-4) and random bytes. This folder is the only door to the
// library that makes them.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>

namespace seal {

using Digest = std::array<std::uint8_t, 32>;

// A digest of text that arrives in pieces; how it is cut into pieces makes no difference.
class Sha256 {
 public:
  Sha256();
  void update(std::string_view text);
  // The digest of all the text so far; the next update begins a new one.
  Digest finish();

 private:
  static constexpr std::size_t state_bytes = 104;
  alignas(8) std::array<std::byte, state_bytes> state_{};
};

Digest digest(std::string_view text);

// Fills with bytes that nobody can foretell: identities of records and writers.
void fill_random(std::span<std::uint8_t> bytes);

}  // namespace seal
