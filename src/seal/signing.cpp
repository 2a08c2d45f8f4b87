#include "seal/signing.h"

#include <utility>

#include "seal/digest.h"
#include "seal/sodium.h"

namespace seal {
namespace {

// The library's secret key: seed and public key together.
struct Expanded {
  explicit Expanded(const Seed& seed) { sodium::expand_seed(seed, secret, key); }
  ~Expanded() { sodium::wipe(secret.data(), secret.size()); }
  Expanded(const Expanded&) = delete;
  Expanded& operator=(const Expanded&) = delete;

  std::array<std::uint8_t, sodium::secret_bytes> secret{};
  PublicKey key{};
};

}  // namespace

void wipe(Seed& seed) { sodium::wipe(seed.data(), seed.size()); }

void wipe(std::string& text) {
  sodium::wipe(text.data(), text.size());
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
  sodium::sign(text, expanded.secret, signature);
  return signature;
}

bool is_signed(std::string_view text, const Signature& signature, const PublicKey& key) {
  return sodium::verify(text, signature, key);
}

}  // namespace seal
