#include "seal/locked_key.h"

#include <array>
#include <charconv>
#include <span>

#include "seal/digest.h"
#include "seal/sodium.h"

namespace seal {
namespace {

constexpr std::string_view first_line = "timeworn key 1";
constexpr std::string_view any_version = "timeworn key ";
// A file that asks for more is damaged or hostile.
constexpr std::uint64_t most_passes = 64;
constexpr std::uint64_t most_memory = std::uint64_t{1} << 31;

using Box = std::array<std::uint8_t, sizeof(Seed) + sodium::box_tag_bytes>;
using Salt = std::array<std::uint8_t, sodium::salt_bytes>;
using Nonce = std::array<std::uint8_t, sodium::nonce_bytes>;

struct Locked {
  PublicKey key{};
  LockCost cost;
  Salt salt{};
  Nonce nonce{};
  Box box{};
};

constexpr std::string_view digits = "0123456789abcdef";

std::string hex(std::span<const std::uint8_t> bytes) {
  std::string letters;
  for (const std::uint8_t byte : bytes) {
    letters += digits[byte >> 4];
    letters += digits[byte & 15];
  }
  return letters;
}

// Exactly as many bytes, in lower case.
bool from_hex(std::string_view letters, std::span<std::uint8_t> bytes) {
  if (letters.size() != 2 * bytes.size()) return false;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    const std::size_t high = digits.find(letters[2 * i]);
    const std::size_t low = digits.find(letters[2 * i + 1]);
    if (high == digits.npos || low == digits.npos) return false;
    bytes[i] = static_cast<std::uint8_t>(high * 16 + low);
  }
  return true;
}

bool from_digits(std::string_view text, std::uint64_t& number) {
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  return error == std::errc() && end == text.data() + text.size() && std::to_string(number) == text;
}

std::string lines_of(const Locked& locked) {
  std::string text = std::string(first_line) + '\n';
  text += "public " + hex(locked.key) + '\n';
  text += "argon2id passes " + std::to_string(locked.cost.passes) + '\n';
  text += "argon2id memory " + std::to_string(locked.cost.memory) + '\n';
  text += "salt " + hex(locked.salt) + '\n';
  text += "nonce " + hex(locked.nonce) + '\n';
  text += "locked " + hex(locked.box) + '\n';
  return text;
}

// What stands behind a word at the start of the text's next line; the line is taken off.
std::optional<std::string_view> take_line(std::string_view& text, std::string_view word) {
  const std::size_t end = text.find('\n');
  if (end == text.npos || !text.starts_with(word)) return std::nullopt;
  const std::string_view rest = text.substr(word.size(), end - word.size());
  text.remove_prefix(end + 1);
  return rest;
}

std::optional<Locked> read(std::string_view text) {
  const std::string_view whole = text;
  Locked locked;
  const auto take = [&](std::string_view word, auto into) {
    const auto rest = take_line(text, word);
    return rest && into(*rest);
  };
  const auto to = [](std::span<std::uint8_t> bytes) {
    return [bytes](std::string_view rest) { return from_hex(rest, bytes); };
  };
  const auto number = [](std::uint64_t& value, std::uint64_t most) {
    return [&value, most](std::string_view rest) {
      return from_digits(rest, value) && value > 0 && value <= most;
    };
  };
  const bool is_read = take(first_line, [](std::string_view rest) { return rest.empty(); }) &&
                       take("public ", to(locked.key)) &&
                       take("argon2id passes ", number(locked.cost.passes, most_passes)) &&
                       take("argon2id memory ", number(locked.cost.memory, most_memory)) &&
                       take("salt ", to(locked.salt)) && take("nonce ", to(locked.nonce)) &&
                       take("locked ", to(locked.box));
  if (!is_read) return std::nullopt;
  const std::string_view lines = whole.substr(0, whole.size() - text.size());
  const auto check = take_line(text, "check ");
  const bool is_whole = check && text.empty() && *check == hex(digest(lines));
  return is_whole ? std::optional(locked) : std::nullopt;
}

// The key of the box; wiped when it ends.
class BoxKey {
 public:
  BoxKey() = default;
  ~BoxKey() { sodium::wipe(bytes_.data(), bytes_.size()); }
  BoxKey(const BoxKey&) = delete;
  BoxKey& operator=(const BoxKey&) = delete;

  bool make(std::string_view passphrase, const Locked& locked) {
    return sodium::stretch(passphrase, locked.salt, {locked.cost.passes, locked.cost.memory},
                           bytes_);
  }
  sodium::BoxKey with(const Nonce& nonce) const { return {nonce, bytes_}; }

 private:
  std::array<std::uint8_t, sodium::box_key_bytes> bytes_{};
};

}  // namespace

std::string lock(const SecretKey& key, std::string_view passphrase, const LockCost& cost) {
  Locked locked;
  locked.key = key.public_key();
  locked.cost = cost;
  fill_random(locked.salt);
  fill_random(locked.nonce);
  BoxKey box_key;
  if (!box_key.make(passphrase, locked)) return {};
  sodium::close_box(key.seed(), box_key.with(locked.nonce), locked.box);
  const std::string lines = lines_of(locked);
  return lines + "check " + hex(digest(lines)) + '\n';
}

std::variant<SecretKey, Unlocking> unlock(std::string_view text, std::string_view passphrase) {
  const std::optional<Locked> locked = read(text);
  if (!locked) {
    const bool is_other = text.starts_with(any_version) && !text.starts_with(first_line) &&
                          text.find('\n') != text.npos;
    return is_other ? Unlocking::other_version : Unlocking::damaged;
  }
  BoxKey box_key;
  if (!box_key.make(passphrase, *locked)) return Unlocking::no_memory;
  Seed seed{};
  if (!sodium::open_box(locked->box, box_key.with(locked->nonce), seed)) {
    return Unlocking::wrong_passphrase;
  }
  SecretKey key(seed);
  if (key.public_key() != locked->key) return Unlocking::damaged;
  return key;
}

std::optional<PublicKey> locked_for(std::string_view text) {
  const std::optional<Locked> locked = read(text);
  return locked ? std::optional(locked->key) : std::nullopt;
}

}  // namespace seal
