#include "seal/digest.h"

#include "seal/sodium.h"

namespace seal {

Sha256::Sha256() {
  static_assert(state_bytes == sodium::hash_state_bytes);
  sodium::begin_hash(state_.data());
}

void Sha256::update(std::string_view text) { sodium::add_to_hash(state_.data(), text); }

Digest Sha256::finish() {
  Digest digest{};
  sodium::end_hash(state_.data(), digest);
  sodium::begin_hash(state_.data());
  return digest;
}

Digest digest(std::string_view text) {
  Sha256 all;
  all.update(text);
  return all.finish();
}

void fill_random(std::span<std::uint8_t> bytes) { sodium::fill_random(bytes); }

}  // namespace seal
