#include "text/binary.h"

#include <boost/test/unit_test.hpp>

#include "text/random_words.h"

namespace {

text::Bytes bytes_of(std::string_view words) { return text::Bytes(words.begin(), words.end()); }

struct Vector {
  std::string_view bytes, base64, base32, base16;
};

// RFC 4648 section 10, without the padding and with base 16 in lower case.
constexpr Vector published[] = {
    {"", "", "", ""},
    {"f", "Zg", "MY", "66"},
    {"fo", "Zm8", "MZXQ", "666f"},
    {"foo", "Zm9v", "MZXW6", "666f6f"},
    {"foob", "Zm9vYg", "MZXW6YQ", "666f6f62"},
    {"fooba", "Zm9vYmE", "MZXW6YTB", "666f6f6261"},
    {"foobar", "Zm9vYmFy", "MZXW6YTBOI", "666f6f626172"},
};

// From the letters of RFC 4648 table 3 to ours with the same value.
std::string in_our_letters(std::string_view letters) {
  constexpr std::string_view theirs = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
  constexpr std::string_view ours = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  std::string result;
  for (const char letter : letters) result += ours[theirs.find(letter)];
  return result;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(binary)

BOOST_AUTO_TEST_CASE(the_published_vectors_are_written_and_read) {
  for (const Vector& each : published) {
    const text::Bytes bytes = bytes_of(each.bytes);
    const std::string base32 = in_our_letters(each.base32);
    BOOST_TEST(text::hex(bytes) == each.base16);
    BOOST_TEST(text::base64url(bytes) == each.base64);
    BOOST_TEST(text::base32(bytes) == base32);
    BOOST_TEST((text::from_hex(each.base16) == bytes));
    BOOST_TEST((text::from_base64url(each.base64) == bytes));
    BOOST_TEST((text::from_base32(base32) == bytes));
  }
}

// RFC 4648 table 2: values 62 and 63 are - and _.
BOOST_AUTO_TEST_CASE(the_letters_of_base64url_are_safe_in_names) {
  BOOST_TEST(text::base64url(text::Bytes{0xFB, 0xEF, 0xBE}) == "----");
  BOOST_TEST(text::base64url(text::Bytes{0xFF, 0xFF, 0xFF}) == "____");
  BOOST_TEST(!text::from_base64url("++++"));
  BOOST_TEST(!text::from_base64url("////"));
}

// 128 bits are 25 times five and three more, which fill the last letter with two zeros.
BOOST_AUTO_TEST_CASE(sixteen_bytes_make_twenty_six_letters) {
  const text::Bytes nothing(16, 0x00);
  const text::Bytes everything(16, 0xFF);
  text::Bytes last_bit(16, 0x00);
  last_bit.back() = 1;
  text::Bytes first_bit(16, 0x00);
  first_bit.front() = 0x80;
  BOOST_TEST(text::base32(nothing) == std::string(26, '0'));
  BOOST_TEST(text::base32(everything) == std::string(25, 'Z') + "W");
  BOOST_TEST(text::base32(last_bit) == std::string(25, '0') + "4");
  BOOST_TEST(text::base32(first_bit) == "G" + std::string(25, '0'));
}

// So that the first five letters of a writer may be any of the thirty-two, such as K7QXM.
BOOST_AUTO_TEST_CASE(the_first_letter_carries_the_five_highest_bits) {
  constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  for (std::size_t value = 0; value < letters.size(); ++value) {
    text::Bytes bytes(16, 0);
    bytes.front() = static_cast<std::uint8_t>(value << 3);
    BOOST_TEST(text::base32(bytes).front() == letters[value]);
  }
}

BOOST_AUTO_TEST_CASE(other_spellings_of_the_same_bytes_are_refused) {
  for (const char* bad : {"6", "6G", "6F", "0x66", " 66", "666", "66 "}) {
    BOOST_TEST(!text::from_hex(bad), bad);
  }
  for (const char* bad : {"Z", "Zg==", "Zh", "Zm9", "Zm9vY", "Z g", "Zg\n"}) {
    BOOST_TEST(!text::from_base64url(bad), bad);
  }
  for (const char* bad : {"0", "000", "000000", "01", "0i", "0O", "0L", "0U", "0I", "0-", "0g"}) {
    BOOST_TEST(!text::from_base32(bad), bad);
  }
  BOOST_TEST(!text::from_base32(std::string(25, 'Z') + "Z"));
  BOOST_TEST(!text::from_base32(std::string(25, 'Z') + "X"));
}

// Every two letters of each form: either refused or the only spelling of what was read.
BOOST_AUTO_TEST_CASE(what_is_read_is_written_the_same_way) {
  std::size_t wrong = 0;
  for (int pair = 0; pair < 256 * 256; ++pair) {
    const std::string letters{static_cast<char>(pair / 256), static_cast<char>(pair % 256)};
    const auto from_hex = text::from_hex(letters);
    const auto from_base32 = text::from_base32(letters);
    const auto from_base64url = text::from_base64url(letters);
    if (from_hex && text::hex(*from_hex) != letters) ++wrong;
    if (from_base32 && text::base32(*from_base32) != letters) ++wrong;
    if (from_base64url && text::base64url(*from_base64url) != letters) ++wrong;
  }
  BOOST_TEST(wrong == 0U);
}

BOOST_AUTO_TEST_CASE(random_bytes_come_back_from_each_form) {
  text_test::RandomWords random(text_test::printed_seed("bytes come back"));
  for (int round = 0; round < 5000; ++round) {
    const text::Bytes bytes = random.bytes(40);
    BOOST_REQUIRE((text::from_hex(text::hex(bytes)) == bytes));
    BOOST_REQUIRE((text::from_base32(text::base32(bytes)) == bytes));
    BOOST_REQUIRE((text::from_base64url(text::base64url(bytes)) == bytes));
    BOOST_REQUIRE_EQUAL(text::base32(bytes).size(), (bytes.size() * 8 + 4) / 5);
  }
}

BOOST_AUTO_TEST_SUITE_END()
