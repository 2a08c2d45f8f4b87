#include "store/origin.h"

#include <algorithm>
#include <array>
#include <span>

#include "seal/digest.h"

namespace store {
namespace {

const logbook::RecordBegins* begins_for_tests(const std::optional<logbook::Said>& first) {
  const auto* begins = first ? std::get_if<logbook::RecordBegins>(&first->fact) : nullptr;
  return begins != nullptr && begins->for_tests ? begins : nullptr;
}

std::string seed_text(std::optional<std::int64_t> seed) {
  return seed ? " " + std::to_string(*seed) : " -";
}

std::array<std::uint8_t, 16> identity(const Origin& origin, const std::string& of) {
  std::array<std::uint8_t, 16> bytes{};
  if (origin.seed.empty()) {
    seal::fill_random(bytes);
    return bytes;
  }
  const seal::Digest digest = seal::digest("for tests" + origin.seed + " " + of);
  std::copy_n(digest.begin(), bytes.size(), bytes.begin());
  return bytes;
}

}  // namespace

Origin origin_of(const std::optional<logbook::Said>& first, const Surroundings& surroundings) {
  Origin origin{surroundings.now, {}, {}};
  origin.today = surroundings.today.value_or(quantity::utc_day(surroundings.now));
  const logbook::RecordBegins* const begins = begins_for_tests(first);
  if (begins == nullptr) return origin;
  if (begins->clock) {
    origin.now = *begins->clock;
    origin.today = quantity::utc_day(origin.now);
  }
  if (begins->seed || surroundings.seed) {
    origin.seed = seed_text(begins->seed) + seed_text(surroundings.seed);
  }
  return origin;
}

seal::SecretKey new_key(const Origin& origin, const std::string& name) {
  if (origin.seed.empty()) return seal::SecretKey::random();
  return seal::SecretKey(seal::digest("for tests" + origin.seed + " key " + name));
}

logbook::RecordId new_record(const Origin& origin) { return identity(origin, "record"); }

logbook::WriterId new_writer(const Origin& origin, std::int64_t ordinal) {
  return {identity(origin, "writer " + std::to_string(ordinal))};
}

}  // namespace store
