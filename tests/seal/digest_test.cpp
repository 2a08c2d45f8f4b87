#include "seal/digest.h"

#include <array>
#include <boost/test/unit_test.hpp>
#include <set>
#include <string>

namespace {

std::string hex(const seal::Digest& digest) {
  static constexpr char digits[] = "0123456789abcdef";
  std::string text;
  for (const std::uint8_t byte : digest) {
    text += digits[byte >> 4];
    text += digits[byte & 15];
  }
  return text;
}

struct Vector {
  std::string message;
  std::string digest;
};

// NIST, "Descriptions of SHA-256" examples to FIPS 180-4 (abc, 448 bits) and the vectors to FIPS
// 180-2 appendix B.3 (a million a); the empty message from NIST's SHA-256 short message vectors
// (Len = 0).
const std::array<Vector, 4> vectors{{
    {"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
    {"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
    {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
     "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
    {std::string(1'000'000, 'a'),
     "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"},
}};

}  // namespace

BOOST_AUTO_TEST_SUITE(digests)

BOOST_AUTO_TEST_CASE(digests_agree_with_the_published_examples) {
  for (const Vector& vector : vectors) {
    BOOST_TEST(hex(seal::digest(vector.message)) == vector.digest);
  }
}

BOOST_AUTO_TEST_CASE(a_message_in_pieces_has_the_digest_of_the_whole) {
  for (const Vector& vector : vectors) {
    for (const std::size_t piece :
         {std::size_t{1}, std::size_t{63}, std::size_t{64}, std::size_t{65}, std::size_t{4096}}) {
      seal::Sha256 running;
      for (std::size_t at = 0; at < vector.message.size(); at += piece) {
        running.update(std::string_view(vector.message).substr(at, piece));
      }
      BOOST_TEST(hex(running.finish()) == vector.digest);
    }
  }
}

BOOST_AUTO_TEST_CASE(after_finish_a_new_digest_begins) {
  seal::Sha256 running;
  running.update("abc");
  running.finish();
  BOOST_TEST(hex(running.finish()) == vectors[0].digest);
  running.update("abc");
  BOOST_TEST(hex(running.finish()) == vectors[1].digest);
}

BOOST_AUTO_TEST_CASE(a_copy_goes_on_from_where_it_was_taken) {
  seal::Sha256 running;
  running.update("a");
  seal::Sha256 copy = running;
  running.update("xyz");
  copy.update("bc");
  BOOST_TEST(hex(copy.finish()) == vectors[1].digest);
  BOOST_TEST((running.finish() == seal::digest("axyz")));
}

BOOST_AUTO_TEST_CASE(nul_bytes_count) {
  using namespace std::string_view_literals;
  BOOST_TEST((seal::digest("a\0b"sv) != seal::digest("a"sv)));
}

BOOST_AUTO_TEST_CASE(random_bytes_do_not_repeat) {
  std::set<std::array<std::uint8_t, 16>> seen;
  for (int i = 0; i < 1000; ++i) {
    std::array<std::uint8_t, 16> identity{};
    seal::fill_random(identity);
    BOOST_REQUIRE(seen.insert(identity).second);
  }
}

BOOST_AUTO_TEST_CASE(random_bytes_fill_the_whole_span_and_nothing_beside_it) {
  std::array<std::uint8_t, 34> bytes{};
  std::array<bool, 34> has_changed{};
  for (int i = 0; i < 20; ++i) {
    seal::fill_random(std::span(bytes).subspan(1, 32));
    for (std::size_t at = 0; at < bytes.size(); ++at) {
      if (bytes.at(at) != 0) has_changed.at(at) = true;
    }
  }
  for (std::size_t at = 0; at < bytes.size(); ++at) {
    BOOST_TEST(has_changed.at(at) == (at != 0 && at != 33));
  }
}

BOOST_AUTO_TEST_SUITE_END()
