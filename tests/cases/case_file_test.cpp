#include "cases/case_file.h"

#include <boost/test/unit_test.hpp>

#include "cases/pieces.h"

BOOST_AUTO_TEST_SUITE(case_files)

BOOST_AUTO_TEST_CASE(hold_a_head_and_steps_with_their_lines) {
  const auto file = cases::read_case("x.case",
                                     "source: rules.md 63\n"
                                     "today: 2026-01-31\n"
                                     "# a note\n"
                                     "say:\n"
                                     "  a = 2026-01-01 aircraft ZZ-KIT flew 1.0 h.\n"
                                     "ask: due ZZ-KIT\n"
                                     "  item \"blade\" | left 2.0 h\n");
  BOOST_TEST(file.wrong.empty());
  BOOST_TEST(file.source == "rules.md 63");
  BOOST_TEST(file.today == "2026-01-31");
  BOOST_REQUIRE_EQUAL(file.steps.size(), 2U);
  BOOST_REQUIRE_EQUAL(file.steps[0].lines.size(), 1U);
  BOOST_TEST(file.steps[1].what.text == "due ZZ-KIT");
  BOOST_TEST(file.steps[1].lines[0].number == 7U);
}

BOOST_AUTO_TEST_CASE(without_a_source_or_with_an_unknown_word_are_wrong) {
  BOOST_TEST(!cases::read_case("x.case", "today: 2026-01-31\nask: due\n").wrong.empty());
  BOOST_TEST(!cases::read_case("x.case", "source: s\nsays:\n  a\nask: due\n").wrong.empty());
  BOOST_TEST(!cases::read_case("x.case", "source: s\n  a\nask: due\n").wrong.empty());
  BOOST_TEST(!cases::read_case("x.case", "source: s\n").wrong.empty());
}

BOOST_AUTO_TEST_CASE(give_labels_to_entries) {
  std::string text = "a1 = 2026-01-01 aircraft ZZ-KIT flew 1.0 h.";
  BOOST_TEST(cases::take_label(text) == "a1");
  BOOST_TEST(text == "2026-01-01 aircraft ZZ-KIT flew 1.0 h.");
  std::string other = "2026-01-01 part number PN-1 on condition, source \"a = b\".";
  BOOST_TEST(cases::take_label(other) == "");
}

BOOST_AUTO_TEST_CASE(cut_lines_like_a_shell_and_like_a_table) {
  const auto words = cases::words_of("why 'disc T1-77' --as-of 2026-03-04 \"\"");
  BOOST_REQUIRE_EQUAL(words.size(), 5U);
  BOOST_TEST(words[1] == "disc T1-77");
  BOOST_TEST(words[4] == "");
  const auto pieces = cases::pieces_of("\"a | b\" | left 2.0 h", " | ");
  BOOST_REQUIRE_EQUAL(pieces.size(), 2U);
  BOOST_TEST(cases::unquoted(pieces[0]) == "a | b");
}

BOOST_AUTO_TEST_SUITE_END()
