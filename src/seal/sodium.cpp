#include "seal/sodium.h"

#include <sodium.h>

#include <cstdlib>
#include <new>

namespace seal::sodium {
namespace {

using State = crypto_hash_sha256_state;

static_assert(sizeof(State) == hash_state_bytes && alignof(State) <= 8);
static_assert(secret_bytes == crypto_sign_SECRETKEYBYTES);
static_assert(salt_bytes == crypto_pwhash_SALTBYTES);
static_assert(nonce_bytes == crypto_secretbox_NONCEBYTES);
static_assert(box_key_bytes == crypto_secretbox_KEYBYTES);
static_assert(box_tag_bytes == crypto_secretbox_MACBYTES);

// The bytes in which a running digest keeps its state; the header cannot name the library's type.
State* state_in(std::byte* bytes) { return std::launder(reinterpret_cast<State*>(bytes)); }

const unsigned char* bytes_of(std::string_view text) {
  return reinterpret_cast<const unsigned char*>(text.data());
}

// The library must be set up before anything with keys and random bytes is asked for. If it cannot
// be, this machine has no source of randomness and identities could repeat: better to stop at once.
void set_up() {
  static const int outcome = sodium_init();
  if (outcome < 0) std::abort();
}

}  // namespace

void fill_random(Room room) {
  set_up();
  randombytes_buf(room.data(), room.size());
}

void wipe(void* bytes, std::size_t size) { sodium_memzero(bytes, size); }

void begin_hash(std::byte* state) { crypto_hash_sha256_init(new (state) State); }
void add_to_hash(std::byte* state, std::string_view text) {
  crypto_hash_sha256_update(state_in(state), bytes_of(text), text.size());
}
void end_hash(std::byte* state, Room digest) {
  crypto_hash_sha256_final(state_in(state), digest.data());
}

void expand_seed(Bytes seed, Room secret, Room key) {
  set_up();
  crypto_sign_seed_keypair(key.data(), secret.data(), seed.data());
}
void sign(std::string_view text, Bytes secret, Room signature) {
  set_up();
  crypto_sign_detached(signature.data(), nullptr, bytes_of(text), text.size(), secret.data());
}
bool verify(std::string_view text, Bytes signature, Bytes key) {
  set_up();
  return crypto_sign_verify_detached(signature.data(), bytes_of(text), text.size(), key.data()) ==
         0;
}

bool stretch(std::string_view passphrase, Bytes salt, const Cost& cost, Room key) {
  set_up();
  return crypto_pwhash(key.data(), key.size(), passphrase.data(), passphrase.size(), salt.data(),
                       cost.passes, cost.memory, crypto_pwhash_ALG_ARGON2ID13) == 0;
}
void close_box(Bytes inside, const BoxKey& with, Room box) {
  set_up();
  crypto_secretbox_easy(box.data(), inside.data(), inside.size(), with.nonce.data(),
                        with.key.data());
}
bool open_box(Bytes box, const BoxKey& with, Room inside) {
  set_up();
  return crypto_secretbox_open_easy(inside.data(), box.data(), box.size(), with.nonce.data(),
                                    with.key.data()) == 0;
}

}  // namespace seal::sodium
