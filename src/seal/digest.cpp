#include "seal/digest.h"

#include <sodium.h>

#include <cstdlib>
#include <new>

namespace seal {
namespace {

using State = crypto_hash_sha256_state;

// The bytes in which a running digest keeps its state; the header cannot name the library's type.
State* state_in(std::byte* bytes) { return std::launder(reinterpret_cast<State*>(bytes)); }

const unsigned char* bytes_of(std::string_view text) {
  return reinterpret_cast<const unsigned char*>(text.data());
}

// The library must be set up before random bytes are asked for. If it cannot be, this machine has
// no source of randomness and identities could repeat: better to stop at once.
void set_up() {
  static const int outcome = sodium_init();
  if (outcome < 0) std::abort();
}

}  // namespace

Sha256::Sha256() {
  static_assert(sizeof(State) == state_bytes && alignof(State) <= 8);
  static_assert(std::tuple_size_v<Digest> == crypto_hash_sha256_BYTES);
  crypto_hash_sha256_init(new (state_.data()) State);
}

void Sha256::update(std::string_view text) {
  crypto_hash_sha256_update(state_in(state_.data()), bytes_of(text), text.size());
}

Digest Sha256::finish() {
  Digest digest{};
  crypto_hash_sha256_final(state_in(state_.data()), digest.data());
  crypto_hash_sha256_init(state_in(state_.data()));
  return digest;
}

Digest digest(std::string_view text) {
  Digest digest{};
  crypto_hash_sha256(digest.data(), bytes_of(text), text.size());
  return digest;
}

void fill_random(std::span<std::uint8_t> bytes) {
  set_up();
  randombytes_buf(bytes.data(), bytes.size());
}

}  // namespace seal
