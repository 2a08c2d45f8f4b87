// Words we do not use, where we do not use them.

#include "house/words.h"

#include <boost/test/unit_test.hpp>

using house::check_leftovers;
using house::check_words;

BOOST_AUTO_TEST_SUITE(words)

BOOST_AUTO_TEST_CASE(a_banned_word_in_a_literal_is_told_with_its_line) {
  const auto findings = check_words({"src/words/a.cpp", "int a;\nf(\"Hours Remaining\");\n"});
  BOOST_REQUIRE(findings.size() == 1U);
  BOOST_TEST(findings[0].line == 2U);
  BOOST_TEST(findings[0].what.find("left") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(code_comments_and_longer_words_are_free) {
  BOOST_TEST(
      check_words({"src/words/a.cpp", "int remaining;  // remaining\nf(\"hubs\");\n"}).empty());
}

BOOST_AUTO_TEST_CASE(quoted_words_are_someone_elses) {
  BOOST_TEST(check_words({"src/words/a.cpp", "f(\"place \\\"hub\\\"\");\n"}).empty());
  BOOST_TEST(check_words({"docs/manual.md", "They wrote \"remaining 12\" in it.\n"}).empty());
}

BOOST_AUTO_TEST_CASE(words_for_insiders_are_free_where_insiders_read) {
  BOOST_TEST(check_words({"src/store/rows.cpp", "f(\"SELECT writer, digest\");\n"}).empty());
  BOOST_TEST(check_words({"src/report/a.cpp", "f(\"writer\"); g(\"digest\");\n"}).size() == 2U);
  BOOST_TEST(check_words({"docs/record.md", "Each writer has a digest.\n"}).empty());
  BOOST_TEST(check_words({"docs/decisions/0001-hub.md", "The hub is PostgreSQL.\n"}).empty());
  BOOST_TEST(check_words({"docs/manual.md", "The hub.\n"}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(the_program_never_says_airworthy) {
  BOOST_TEST(check_words({"src/store/a.cpp", "f(\"It is airworthy.\");\n"}).size() == 1U);
  BOOST_TEST(check_words({"src/words/a.cpp", "f(\"airworthiness directive\");\n"}).empty());
  BOOST_TEST(check_words({"README.md", "It never says what is airworthy.\n"}).empty());
}

BOOST_AUTO_TEST_CASE(leftovers_are_told_anywhere) {
  BOOST_TEST(check_leftovers({"docs/a.md",
                              "TO"
                              "DO: write\n"})
                 .size() == 1U);
  BOOST_TEST(check_leftovers({"src/a.cpp",
                              "// FIX"
                              "ME\n// XX"
                              "X\n"})
                 .size() == 2U);
  BOOST_TEST(check_leftovers({".ci/a",
                              "cd /wo"
                              "rk/main\n"})
                 .size() == 1U);
  BOOST_TEST(check_leftovers({"a.cmake",
                              "set(a /tmp"
                              "/tw)\n"})
                 .size() == 1U);
  BOOST_TEST(check_leftovers({"src/a.cpp", "int stubborn; int framework;\n"}).empty());
}

BOOST_AUTO_TEST_SUITE_END()
