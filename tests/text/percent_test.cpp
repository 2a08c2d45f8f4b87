#include "text/percent.h"

#include <boost/test/unit_test.hpp>
#include <set>

#include "text/random_words.h"
#include "text/unicode.h"
#include "text/visible.h"

BOOST_AUTO_TEST_SUITE(percent)

// RFC 3986 section 2.1: a byte is written as % and two upper-case digits.
BOOST_AUTO_TEST_CASE(what_has_a_meaning_in_a_record_line_is_encoded) {
  BOOST_TEST(text::percent_encoded("Marrow Point") == "Marrow%20Point");
  BOOST_TEST(text::percent_encoded("a,b:c|d%e") == "a%2Cb%3Ac%7Cd%25e");
  BOOST_TEST(text::percent_encoded("B. Quill") == "B.%20Quill");
  BOOST_TEST(text::percent_encoded("PN-4411/2") == "PN-4411/2");
  BOOST_TEST(text::percent_encoded("\t\x7F") == "%09%7F");
  BOOST_TEST(text::percent_encoded("") == "");
}

BOOST_AUTO_TEST_CASE(other_letters_stay_readable) {
  const std::string words =
      "Stra\xC3\x9F"
      "e-\xE6\x97\xA5";
  BOOST_TEST(text::percent_encoded(words) == words);
}

// RFC 3986 section 2.5: characters beyond ASCII are encoded as the bytes of their UTF-8.
BOOST_AUTO_TEST_CASE(what_cannot_be_seen_is_encoded_byte_by_byte) {
  BOOST_TEST(text::percent_encoded("\xC2\x9B") == "%C2%9B");
  BOOST_TEST(text::percent_encoded("a\xE2\x80\xAE"
                                   "b") == "a%E2%80%AEb");
  BOOST_TEST(text::percent_encoded("a\xE2\x80\x8B"
                                   "b") == "a%E2%80%8Bb");
  BOOST_TEST(text::percent_encoded("\xEF\xBB\xBF") == "%EF%BB%BF");
}

BOOST_AUTO_TEST_CASE(another_spelling_of_a_name_is_refused) {
  for (const char* bad :
       {"%", "%2", "a%", "%2c", "%c2%9B", "%41", "%2D", "%C3%A9", "a b", "a,b", "a:b", "a|b", "%GG",
        "% 2", "%FF", "%C2", "\xFF", "\xE2\x80\xAE", "%%20"}) {
    BOOST_TEST(!text::percent_decoded(bad), bad);
  }
  BOOST_TEST(text::percent_decoded("%2C").value() == ",");
  BOOST_TEST(text::percent_decoded("").value() == "");
}

// The list is part of what is digested for ever: of all ASCII, exactly these are encoded.
BOOST_AUTO_TEST_CASE(exactly_these_ascii_characters_are_encoded) {
  std::set<char> encoded;
  for (char byte = 0x21; byte < 0x7F; ++byte) {
    if (text::percent_encoded(std::string(1, byte)).size() == 3) encoded.insert(byte);
  }
  BOOST_TEST((encoded == std::set<char>{'%', ',', ':', '|'}));
  for (char byte = 0x00; byte <= 0x20; ++byte) {
    BOOST_TEST(text::percent_encoded(std::string(1, byte)).size() == 3U);
  }
}

BOOST_AUTO_TEST_CASE(names_come_back_and_leave_no_mark_of_the_frame) {
  text_test::RandomWords random(text_test::printed_seed("names come back"));
  for (int round = 0; round < 10000; ++round) {
    const std::string name = random.words(20);
    const std::string encoded = text::percent_encoded(name);
    BOOST_REQUIRE(encoded.find_first_of(" ,:|\n") == encoded.npos);
    BOOST_REQUIRE(!text::has_control(encoded));
    BOOST_REQUIRE(text::percent_decoded(encoded) == name);
  }
}

BOOST_AUTO_TEST_CASE(what_is_decoded_is_encoded_the_same_way) {
  text_test::RandomWords random(text_test::printed_seed("one spelling"));
  constexpr std::string_view letters = "%%%02CDAEaf9:, \xC3\xA9";
  for (int round = 0; round < 50000; ++round) {
    std::string words;
    for (std::size_t left = random.below(8); left > 0; --left) {
      words += letters[random.below(letters.size())];
    }
    const auto decoded = text::percent_decoded(words);
    if (decoded) BOOST_REQUIRE_EQUAL(text::percent_encoded(*decoded), words);
    if (decoded) BOOST_REQUIRE(text::is_valid_utf8(*decoded));
  }
}

BOOST_AUTO_TEST_SUITE_END()
