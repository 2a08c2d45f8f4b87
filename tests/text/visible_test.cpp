#include "text/visible.h"

#include <boost/test/unit_test.hpp>

#include "text/random_words.h"
#include "text/unicode.h"

namespace {

// Every code point that must not reach a terminal, written out one range after the other:
// ECMA-48 C0 and C1 with DEL; Unicode's Bidi_Control property and its two line separators.
const std::vector<char32_t>& dangerous() {
  static const std::vector<char32_t> all = [] {
    std::vector<char32_t> codes;
    for (char32_t code = 0x00; code <= 0x1F; ++code) codes.push_back(code);
    for (char32_t code = 0x7F; code <= 0x9F; ++code) codes.push_back(code);
    const std::u32string others =
        U"\u061C\u200E\u200F\u2028\u2029\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";
    codes.insert(codes.end(), others.begin(), others.end());
    return codes;
  }();
  return all;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(visible)

BOOST_AUTO_TEST_CASE(exactly_the_listed_characters_are_controls) {
  std::vector<char32_t> found;
  for (char32_t code = 0; code < 0x110000; ++code) {
    if (text::is_control(code)) found.push_back(code);
  }
  BOOST_TEST((found == dangerous()));
}

BOOST_AUTO_TEST_CASE(a_name_with_any_control_or_broken_byte_is_found) {
  for (const char32_t code : dangerous()) {
    BOOST_TEST(text::has_control("ab" + text_test::utf8(code) + "c"));
  }
  BOOST_TEST(
      text::has_control("a\x9B"
                        "2J"));  // a bare C1 byte, as old terminals obey it
  BOOST_TEST(text::has_control("two\nlines"));
  BOOST_TEST(
      !text::has_control("M. Tansley, caf\xC3\xA9 24 \xC2\xB0"
                         "C"));
  BOOST_TEST(!text::has_control(""));
}

// Escape sequences of ECMA-48 and of xterm that set titles, clear the screen or fill the clipboard.
BOOST_AUTO_TEST_CASE(escape_sequences_are_shown_instead_of_obeyed) {
  BOOST_TEST(text::visible("\x1B]0;title\x07") == "<U+001B>]0;title<U+0007>");
  BOOST_TEST(text::visible("\x1B[2J") == "<U+001B>[2J");
  BOOST_TEST(text::visible("\xC2\x9B"
                           "2J") == "<U+009B>2J");
  BOOST_TEST(text::visible("\x9B"
                           "2J") == "<byte 9B>2J");
  BOOST_TEST(text::visible("a\xE2\x80\xAE"
                           "b") == "a<U+202E>b");
  BOOST_TEST(text::visible("a\x7F\tb\r") == "a<U+007F><U+0009>b<U+000D>");
  BOOST_TEST(text::visible(std::string_view("a\0b", 3)) == "a<U+0000>b");
}

BOOST_AUTO_TEST_CASE(a_line_feed_is_kept_or_shown) {
  BOOST_TEST(text::visible("a\nb") == "a\nb");
  BOOST_TEST(text::visible_line("a\nb") == "a<U+000A>b");
}

BOOST_AUTO_TEST_CASE(ordinary_words_stay_as_they_are) {
  const std::string words =
      "Stra\xC3\x9F"
      "e \xE6\x97\xA5 \xF0\x9F\x9A\x80 <U+001B> \"q\"";
  BOOST_TEST(text::visible(words) == words);
}

BOOST_AUTO_TEST_CASE(nothing_dangerous_is_left_of_any_bytes) {
  text_test::RandomWords random(text_test::printed_seed("nothing dangerous is left"));
  for (int round = 0; round < 5000; ++round) {
    const std::vector<std::uint8_t> bytes = random.bytes(12);
    const std::string words = random.words(12) + std::string(bytes.begin(), bytes.end());
    BOOST_REQUIRE(!text::has_control(text::visible_line(words)));
    BOOST_REQUIRE(text::is_valid_utf8(text::visible(words)));
  }
}

BOOST_AUTO_TEST_SUITE_END()
