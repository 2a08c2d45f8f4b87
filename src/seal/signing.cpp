#include "seal/signing.h"

#include <sodium.h>

#include <algorithm>
#include <utility>

#include "seal/digest.h"

namespace seal {
namespace {

// The library's secret key: seed and public key together.
struct Expanded {
  explicit Expanded(const Seed& seed) {
    crypto_sign_seed_keypair(key.data(), secret.data(), seed.data());
  }
  ~Expanded() { sodium_memzero(secret.data(), secret.size()); }
  Expanded(const Expanded&) = delete;
  Expanded& operator=(const Expanded&) = delete;

  std::array<std::uint8_t, crypto_sign_SECRETKEYBYTES> secret{};
  PublicKey key{};
};

const unsigned char* bytes_of(std::string_view text) {
  return reinterpret_cast<const unsigned char*>(text.data());
}

}  // namespace

static_assert(std::tuple_size_v<Seed> == crypto_sign_SEEDBYTES);
static_assert(std::tuple_size_v<PublicKey> == crypto_sign_PUBLICKEYBYTES);
static_assert(std::tuple_size_v<Signature> == crypto_sign_BYTES);

void wipe(Seed& seed) { sodium_memzero(seed.data(), seed.size()); }

void wipe(std::string& text) {
  sodium_memzero(text.data(), text.size());
  text.clear();
}

SecretKey::SecretKey(Seed& seed) : seed_(seed) { wipe(seed); }

SecretKey SecretKey::random() {
  Seed seed{};
  fill_random(seed);
  return SecretKey(seed);
}

SecretKey::SecretKey(SecretKey&& other) noexcept : SecretKey(other.seed_) {}

SecretKey& SecretKey::operator=(SecretKey&& other) noexcept {
  if (this == &other) return *this;
  seed_ = other.seed_;
  wipe(other.seed_);
  return *this;
}

SecretKey::~SecretKey() { wipe(seed_); }

PublicKey SecretKey::public_key() const { return Expanded(seed_).key; }

Signature SecretKey::sign(std::string_view text) const {
  const Expanded expanded(seed_);
  Signature signature{};
  crypto_sign_detached(signature.data(), nullptr, bytes_of(text), text.size(),
                       expanded.secret.data());
  return signature;
}

bool is_signed(std::string_view text, const Signature& signature, const PublicKey& key) {
  return crypto_sign_verify_detached(signature.data(), bytes_of(text), text.size(), key.data()) ==
         0;
}

}  // namespace seal
