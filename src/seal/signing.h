// seal/signing.h: Ed25519 signatures (RFC 8032). A secret key is a value that cannot be copied and
// leaves nothing behind when it ends.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace seal {

using Seed = std::array<std::uint8_t, 32>;  // the secret of RFC 8032 section 5.1.5
using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;

// Overwrites what must not stay in memory.
void wipe(Seed& seed);
void wipe(std::string& text);

class SecretKey {
 public:
  // Takes the seed over: the caller's copy is wiped.
  explicit SecretKey(Seed& seed);
  explicit SecretKey(Seed&& seed) : SecretKey(seed) {}
  static SecretKey random();
  SecretKey(SecretKey&& other) noexcept;
  SecretKey& operator=(SecretKey&& other) noexcept;
  SecretKey(const SecretKey&) = delete;
  SecretKey& operator=(const SecretKey&) = delete;
  ~SecretKey();

  const Seed& seed() const { return seed_; }
  PublicKey public_key() const;
  Signature sign(std::string_view text) const;

 private:
  Seed seed_{};
};

// True exactly if the owner of the key signed this text. Keys and signatures of small order or in
// another spelling than their only one are refused.
bool is_signed(std::string_view text, const Signature& signature, const PublicKey& key);

}  // namespace seal
