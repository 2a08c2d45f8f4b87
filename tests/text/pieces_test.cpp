#include "text/pieces.h"

#include <boost/test/unit_test.hpp>

#include "text/random_words.h"

BOOST_AUTO_TEST_SUITE(pieces)

BOOST_AUTO_TEST_CASE(n_separators_make_one_piece_more) {
  using Pieces = std::vector<std::string_view>;
  BOOST_TEST((text::split("a,b,c", ',') == Pieces{"a", "b", "c"}));
  BOOST_TEST((text::split("", ',') == Pieces{""}));
  BOOST_TEST((text::split(",", ',') == Pieces{"", ""}));
  BOOST_TEST((text::split("a,,b,", ',') == Pieces{"a", "", "b", ""}));
}

BOOST_AUTO_TEST_CASE(joining_puts_something_between_and_nowhere_else) {
  BOOST_TEST(text::join({}, ", ") == "");
  BOOST_TEST(text::join({"a"}, ", ") == "a");
  BOOST_TEST(text::join({"", "b", ""}, ", ") == ", b, ");
}

BOOST_AUTO_TEST_CASE(what_was_split_is_joined_again) {
  text_test::RandomWords random(text_test::printed_seed("split and joined"));
  for (int round = 0; round < 5000; ++round) {
    const std::string words = random.words(20);
    const std::vector<std::string_view> views = text::split(words, ' ');
    BOOST_REQUIRE_EQUAL(text::join({views.begin(), views.end()}, " "), words);
  }
}

BOOST_AUTO_TEST_CASE(trimming_takes_blanks_off_the_ends_only) {
  BOOST_TEST(text::trim(" \t a b \r\n") == "a b");
  BOOST_TEST(text::trim(" \t\r\n") == "");
  BOOST_TEST(text::trim("") == "");
  BOOST_TEST(text::trim("\xC2\xA0x") == "\xC2\xA0x");  // a no-break space is no blank of ours
}

BOOST_AUTO_TEST_CASE(upper_case_touches_ascii_letters_only) {
  BOOST_TEST(text::upper("zz-kit azAZ`{@[ 5") == "ZZ-KIT AZAZ`{@[ 5");
  BOOST_TEST(text::upper("\xC3\xA9i\xC4\xB1") == "\xC3\xA9I\xC4\xB1");
}

BOOST_AUTO_TEST_SUITE_END()
