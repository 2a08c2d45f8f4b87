#include "seal/signing.h"

#include <boost/test/unit_test.hpp>
#include <string>
#include <utility>
#include <vector>

#include "seal/hex.h"

namespace {

struct Vector {
  std::string secret;
  std::string key;
  std::string message;
  std::string signature;
};

// RFC 8032 section 7.1: TEST 1, TEST 2, TEST 3 and TEST SHA(abc).
const std::vector<Vector> vectors = {
    {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9"
     "b46bd25bf5f0595bbe24655141438e7a100b"},
    {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f1"
     "1d8c387b2eaeb4302aeeb00d291612bb0c00"},
    {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
     "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
     "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984d"
     "c6594a7c15e9716ed28dc027beceea1ec40a"},
    {"833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42",
     "ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf",
     "ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3fe"
     "ebbd454d4423643ce80e2a9ac94fa54ca49f",
     "dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431"
     "e0303dca179c138ac17ad9bef1177331a704"},
};

seal::SecretKey key_of(const Vector& vector) {
  return seal::SecretKey(bytes_of<seal::Seed>(vector.secret));
}

}  // namespace

BOOST_AUTO_TEST_SUITE(signing)

BOOST_AUTO_TEST_CASE(published_keys_and_signatures) {
  for (const Vector& vector : vectors) {
    const seal::SecretKey key = key_of(vector);
    const std::string message = text_of(vector.message);
    BOOST_TEST(hex(key.public_key()) == vector.key);
    BOOST_TEST(hex(key.sign(message)) == vector.signature);
    BOOST_TEST(seal::is_signed(message, bytes_of<seal::Signature>(vector.signature),
                               bytes_of<seal::PublicKey>(vector.key)));
  }
}

// RFC 8032 section 5.1.7: whatever is changed, the signature is none.
BOOST_AUTO_TEST_CASE(every_changed_bit_is_seen) {
  const Vector& vector = vectors[2];
  const std::string message = text_of(vector.message);
  const auto key = bytes_of<seal::PublicKey>(vector.key);
  const auto signature = bytes_of<seal::Signature>(vector.signature);
  for (std::size_t bit = 0; bit < message.size() * 8; ++bit) {
    std::string changed = message;
    changed[bit / 8] = static_cast<char>(changed[bit / 8] ^ (1 << (bit % 8)));
    BOOST_TEST(!seal::is_signed(changed, signature, key), bit);
  }
  for (std::size_t bit = 0; bit < signature.size() * 8; ++bit) {
    BOOST_TEST(!seal::is_signed(message, with_bit_changed(signature, bit), key), bit);
  }
  for (std::size_t bit = 0; bit < key.size() * 8; ++bit) {
    BOOST_TEST(!seal::is_signed(message, signature, with_bit_changed(key, bit)), bit);
  }
  BOOST_TEST(!seal::is_signed(message + '\0', signature, key));
  BOOST_TEST(!seal::is_signed(message, signature, bytes_of<seal::PublicKey>(vectors[0].key)));
}

// A key that everyone can sign for (the neutral element, RFC 8032 section 5.1: small order) signs
// nothing.
BOOST_AUTO_TEST_CASE(a_key_of_small_order_is_no_key) {
  seal::PublicKey neutral{};
  neutral[0] = 1;
  seal::Signature signature{};
  signature[0] = 1;
  BOOST_TEST(!seal::is_signed("anything", signature, neutral));
}

// Common practice, no source: a secret does not stay where it was.
BOOST_AUTO_TEST_CASE(a_secret_leaves_nothing_behind) {
  auto seed = bytes_of<seal::Seed>(vectors[0].secret);
  seal::SecretKey key(seed);
  BOOST_TEST((seed == seal::Seed{}));
  const seal::SecretKey moved = std::move(key);
  BOOST_TEST((key.seed() == seal::Seed{}));
  BOOST_TEST(hex(moved.public_key()) == vectors[0].key);
  std::string passphrase = "a long enough passphrase";
  seal::wipe(passphrase);
  BOOST_TEST(passphrase.empty());
}

BOOST_AUTO_TEST_CASE(random_keys_differ) {
  BOOST_TEST((seal::SecretKey::random().seed() != seal::SecretKey::random().seed()));
}

BOOST_AUTO_TEST_SUITE_END()
