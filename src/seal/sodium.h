// seal/sodium.h: the one door to libsodium: what this floor needs of it, on plain bytes.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>

namespace seal::sodium {

using Bytes = std::span<const std::uint8_t>;
using Room = std::span<std::uint8_t>;

inline constexpr std::size_t hash_state_bytes = 104;
inline constexpr std::size_t secret_bytes = 64;  // seed and public key together
inline constexpr std::size_t salt_bytes = 16;
inline constexpr std::size_t nonce_bytes = 24;
inline constexpr std::size_t box_key_bytes = 32;
inline constexpr std::size_t box_tag_bytes = 16;  // by which a box is longer than what is in it

// Bytes that nobody can foretell. Stops the program on a machine without a source of them.
void fill_random(Room room);
// Overwrites in a way that no compiler leaves out.
void wipe(void* bytes, std::size_t size);

// SHA-256 (FIPS 180-4). The state is hash_state_bytes long and aligned to 8.
void begin_hash(std::byte* state);
void add_to_hash(std::byte* state, std::string_view text);
void end_hash(std::byte* state, Room digest);

// Ed25519 (RFC 8032).
void expand_seed(Bytes seed, Room secret, Room key);
void sign(std::string_view text, Bytes secret, Room signature);
bool verify(std::string_view text, Bytes signature, Bytes key);

// Argon2id (RFC 9106); false without the memory for it.
struct Cost {
  std::uint64_t passes;
  std::uint64_t memory;  // bytes
};
bool stretch(std::string_view passphrase, Bytes salt, const Cost& cost, Room key);
// XSalsa20 and Poly1305. Open is false if the key is another or a byte was changed.
struct BoxKey {
  Bytes nonce;
  Bytes key;
};
void close_box(Bytes inside, const BoxKey& with, Room box);
bool open_box(Bytes box, const BoxKey& with, Room inside);

}  // namespace seal::sodium
