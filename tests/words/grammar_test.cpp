#include "words/grammar.h"

#include <boost/test/unit_test.hpp>

#include "quantity/expect.h"
#include "text/unicode.h"

BOOST_AUTO_TEST_SUITE(grammar)

BOOST_AUTO_TEST_CASE(gaps_are_filled_in_order_and_never_looked_through) {
  BOOST_TEST(words::fill("{} by {}.", {"a {} b", "2.8 h"}) == "a {} b by 2.8 h.");
}

BOOST_AUTO_TEST_CASE(another_number_of_gaps_is_a_broken_promise) {
  BOOST_CHECK_THROW(words::fill("{} and {}", {"a"}), quantity::BrokenPromise);
  BOOST_CHECK_THROW(words::fill("{}", {"a", "b"}), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_CASE(one_is_singular_and_nothing_else) {
  BOOST_TEST(words::counted(1, "cycle", "cycles") == "1 cycle");
  BOOST_TEST(words::counted(0, "cycle", "cycles") == "0 cycles");
  BOOST_TEST(words::counted(2, "cycle", "cycles") == "2 cycles");
}

BOOST_AUTO_TEST_CASE(lists_have_commas_and_one_joining_word) {
  BOOST_TEST(words::listed({}, "and").empty());
  BOOST_TEST(words::listed({"a"}, "and") == "a");
  BOOST_TEST(words::listed({"a", "b"}, "or") == "a or b");
  BOOST_TEST(words::listed({"a", "b", "c"}, "and") == "a, b and c");
}

BOOST_AUTO_TEST_CASE(the_first_that_fits_is_taken_and_the_last_is_cut) {
  BOOST_TEST(words::that_fits({"much too long", "short"}, 6) == "short");
  const std::string cut = words::that_fits({"äöüäöüäöü"}, 5);
  BOOST_TEST(cut == "äöüä…");
  BOOST_TEST(text::columns(cut) == 5u);
}

BOOST_AUTO_TEST_SUITE_END()
