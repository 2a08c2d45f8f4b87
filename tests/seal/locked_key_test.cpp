#include "seal/locked_key.h"

#include <boost/test/unit_test.hpp>
#include <string>

#include "seal/hex.h"

namespace {

// The least that the library takes: these tests are about the file, not about its cost.
constexpr seal::LockCost cheap{1, 8192};

seal::SecretKey a_key() { return seal::SecretKey(seal::Seed{1, 2, 3}); }

seal::Unlocking trouble(const std::string& text, const std::string& passphrase) {
  const auto unlocked = seal::unlock(text, passphrase);
  const auto* trouble = std::get_if<seal::Unlocking>(&unlocked);
  BOOST_REQUIRE(trouble != nullptr);
  return *trouble;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(locked_keys)

BOOST_AUTO_TEST_CASE(the_passphrase_gives_the_key_back) {
  const seal::SecretKey key = a_key();
  const std::string text = seal::lock(key, "over the hills", cheap);
  const auto unlocked = seal::unlock(text, "over the hills");
  BOOST_REQUIRE(std::holds_alternative<seal::SecretKey>(unlocked));
  BOOST_TEST((std::get<seal::SecretKey>(unlocked).seed() == key.seed()));
  BOOST_TEST((seal::locked_for(text) == key.public_key()));
}

// RFC 9106 section 4: the costs of its second choice are the ordinary ones.
BOOST_AUTO_TEST_CASE(the_cost_stands_in_the_file) {
  const std::string text = seal::lock(a_key(), "over the hills");
  BOOST_TEST(text.find("argon2id passes 3\nargon2id memory 67108864\n") != text.npos);
  BOOST_TEST(std::holds_alternative<seal::SecretKey>(seal::unlock(text, "over the hills")));
}

BOOST_AUTO_TEST_CASE(no_secret_stands_in_the_file) {
  const seal::SecretKey key = a_key();
  BOOST_TEST(seal::lock(key, "over the hills", cheap).find(hex(key.seed())) == std::string::npos);
  BOOST_TEST(seal::lock(key, "over the hills", cheap) != seal::lock(key, "over the hills", cheap));
}

BOOST_AUTO_TEST_CASE(another_passphrase_is_told_as_such) {
  const std::string text = seal::lock(a_key(), "over the hills", cheap);
  for (const char* other : {"", "over the hill", "Over the hills", "over the hills "}) {
    BOOST_TEST((trouble(text, other) == seal::Unlocking::wrong_passphrase), other);
  }
}

// Every character changed, and every cut: damaged, and never taken for a wrong passphrase.
BOOST_AUTO_TEST_CASE(a_damaged_file_is_told_as_such) {
  const std::string text = seal::lock(a_key(), "over the hills", cheap);
  for (std::size_t i = 0; i < text.size(); ++i) {
    std::string changed = text;
    changed[i] = changed[i] == '0' ? '1' : '0';
    const seal::Unlocking found = trouble(changed, "over the hills");
    const bool is_version = i == text.find('\n') - 1;
    BOOST_TEST((found == (is_version ? seal::Unlocking::other_version : seal::Unlocking::damaged)),
               i);
    BOOST_TEST((trouble(text.substr(0, i), "over the hills") == seal::Unlocking::damaged), i);
  }
  BOOST_TEST((trouble(text + "\n", "over the hills") == seal::Unlocking::damaged));
  BOOST_TEST(!seal::locked_for(text.substr(1)));
}

BOOST_AUTO_TEST_SUITE_END()
