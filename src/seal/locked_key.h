// seal/locked_key.h: a secret key locked with a passphrase, as the text of a small file. The seed
// is sealed (XSalsa20 and Poly1305) under a key made from the passphrase by Argon2id (RFC 9106);
// what that costs stands in the file, so that it can be raised without losing older files.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "seal/signing.h"

namespace seal {

// What making one try at a passphrase costs.
struct LockCost {
  std::uint64_t passes = 3;
  std::uint64_t memory = std::uint64_t{64} << 20;  // bytes
};

// The text of the file. Empty if this machine has not the memory for it.
std::string lock(const SecretKey& key, std::string_view passphrase, const LockCost& cost = {});

enum class Unlocking { damaged, other_version, wrong_passphrase, no_memory };
// damaged: the text is not what lock once made, whatever the passphrase.
std::variant<SecretKey, Unlocking> unlock(std::string_view text, std::string_view passphrase);

// Whose file it is, without the passphrase. Absent if the text is damaged.
std::optional<PublicKey> locked_for(std::string_view text);

}  // namespace seal
