// What is told about faulty lines: every fault, its place, what was wanted, the nearest word.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <string>

#include "sentence/sentence.h"

using namespace sentence;

namespace {

Reading at_the_terminal() { return {quantity::make_day({2026, 3, 5}), nullptr}; }

std::vector<Misreading> faults(const std::string& text) {
  return sentence::read(text, at_the_terminal()).wrong;
}

bool wants(const Misreading& misreading, const std::string& word) {
  return std::find(misreading.expected.begin(), misreading.expected.end(), word) !=
         misreading.expected.end();
}

// The one fault of a line stands at these words.
Misreading only_fault(const std::string& text, const std::string& words, Fault fault) {
  const std::vector<Misreading> wrong = faults(text);
  BOOST_TEST_REQUIRE(wrong.size() == 1U, text);
  BOOST_TEST((wrong[0].fault == fault), text);
  BOOST_TEST(wrong[0].read == words);
  BOOST_TEST(text.substr(wrong[0].from, std::size_t{wrong[0].to} - wrong[0].from) == words);
  return wrong[0];
}

const std::string flew = "aircraft ZZ-KIT flew ";

}  // namespace

BOOST_AUTO_TEST_SUITE(misreadings)

BOOST_AUTO_TEST_CASE(all_faults_of_a_line_are_told_at_once) {
  const std::string text =
      flew + "1,234 h, 3 landigns, pilto \"A. Fenwick\", took off 25:10Z, 1.5 starts";
  const std::vector<Misreading> wrong = faults(text);
  BOOST_TEST_REQUIRE(wrong.size() == 5U);
  BOOST_TEST((wrong[0].fault == Fault::two_readings));
  BOOST_TEST(wrong[0].first == "1.234");
  BOOST_TEST(wrong[0].second == "1234");
  BOOST_TEST(wrong[0].from == 21U);
  BOOST_TEST(wrong[0].to == 26U);
  BOOST_TEST(wrong[1].nearest == "landings");
  BOOST_TEST(wrong[2].read == "pilto");
  BOOST_TEST(wrong[2].nearest == "pilot");
  BOOST_TEST((wrong[3].fault == Fault::out_of_range));
  BOOST_TEST((wrong[4].fault == Fault::not_whole));
}

BOOST_AUTO_TEST_CASE(a_verb_that_is_mistyped_does_not_hide_the_clauses) {
  const std::vector<Misreading> wrong = faults("aircraft ZZ-KIT flwe 1.7 h, 1.5 landings");
  BOOST_TEST_REQUIRE(wrong.size() == 2U);
  BOOST_TEST(wrong[0].nearest == "flew");
  BOOST_TEST((wrong[1].fault == Fault::not_whole));
}

BOOST_AUTO_TEST_CASE(faults_of_words_point_at_the_word) {
  only_fault("hello world", "hello", Fault::unknown_kind);
  only_fault(flew + "1.7 h, 1 start, 1 start", "1 start", Fault::said_twice);
  only_fault(flew + "1.7 h 3 landings", "3", Fault::unknown_word);
  only_fault(flew + "1.7 h; 3 landings", ";", Fault::unknown_word);
  only_fault(flew + "1.7 h. aircraft ZZ-KIT flew 2.0 h", ".", Fault::two_sentences);
  BOOST_TEST(
      only_fault("person \"B. Quill\" holds certificat \"x\"", "certificat", Fault::unknown_word)
          .nearest == "certificate");
}

BOOST_AUTO_TEST_CASE(what_is_missing_is_named) {
  BOOST_TEST(wants(only_fault(flew + "1 start", "", Fault::missing), "hours such as 1.7 h"));
  BOOST_TEST(wants(only_fault(flew + "1.7", "", Fault::missing), "h"));
  BOOST_TEST(wants(only_fault("part number PN-1 retires at 5 h", "", Fault::missing), "since"));
  BOOST_TEST(
      wants(only_fault("aircraft ZZ-KIT is serial 5012", "", Fault::missing), "model TS-40"));
  only_fault("engine TS-40 E-1001 is", "", Fault::missing);
  only_fault(flew + "1.7 h, took off 09:11", "09:11", Fault::missing);
  only_fault(flew + "1.7 h, remark \"\"", "\"\"", Fault::missing);
}

BOOST_AUTO_TEST_CASE(figures_with_two_readings_or_none_are_refused) {
  only_fault(flew + "1.700 h", "1.700", Fault::two_readings);
  only_fault(flew + "0.705 h", "0.705", Fault::not_exact);
  only_fault(flew + "1:75 h", "1:75", Fault::out_of_range);
  only_fault(flew + "1h75", "1h75", Fault::out_of_range);
  only_fault(flew + "1234567890 h", "1234567890", Fault::out_of_range);
  only_fault("30 Feb 2026 " + flew + "1.7 h", "30 Feb 2026", Fault::no_such_day);
  only_fault("03/04/2026 " + flew + "1.7 h", "03/04/2026", Fault::ambiguous_day);
}

BOOST_AUTO_TEST_CASE(a_day_may_be_left_out_only_where_today_is_known) {
  const Read read = sentence::read("aircraft ZZ-KIT flew 1,700 h", {});
  BOOST_TEST_REQUIRE(read.wrong.size() == 2U);
  BOOST_TEST((read.wrong[0].fault == Fault::day_missing));
  BOOST_TEST((read.wrong[1].fault == Fault::two_readings));
  only_fault("entry K7QXM-1 corrected because \"x\": aircraft ZZ-KIT flew 1.7 h", "",
             Fault::day_missing);
}

BOOST_AUTO_TEST_CASE(a_correction_holds_no_correction) {
  const std::string inner = "2026-03-04 entry K7QXM-2 struck because \"y\"";
  only_fault("entry K7QXM-1 corrected because \"x\": " + inner, inner, Fault::unknown_kind);
}

BOOST_AUTO_TEST_CASE(bytes_that_are_no_language_are_refused_before_all_else) {
  only_fault(flew + "1.7 h, remark \"a\x1B[2Jb\"", "\x1B", Fault::bad_character);
  only_fault(flew + "1.7 h, remark \"\xFF\"", "\xFF", Fault::bad_character);
  only_fault(flew + "1.7 h, remark \"\xE2\x80\xAE\"", "\xE2\x80\xAE", Fault::bad_character);
  only_fault(flew + "1.7 h, remark \"open", "\"open", Fault::bad_quote);
  const std::vector<Misreading> wrong = faults(std::string(4097, 'a'));
  BOOST_TEST_REQUIRE(wrong.size() == 1U);
  BOOST_TEST((wrong[0].fault == Fault::too_long));
}

BOOST_AUTO_TEST_CASE(an_unknown_name_is_told_with_the_nearest_known_one) {
  Known known;
  known.things = {logbook::Aircraft{{"ZZ-KIT"}}, logbook::Aircraft{{"ZZ-MOB"}}};
  const Read read = sentence::read("ZZ-KTI flew 1.7 h", {quantity::make_day({2026, 3, 5}), &known});
  BOOST_TEST_REQUIRE(read.wrong.size() == 1U);
  BOOST_TEST(read.wrong[0].read == "ZZ-KTI");
  BOOST_TEST(read.wrong[0].nearest == "ZZ-KIT");
}

BOOST_AUTO_TEST_CASE(each_clause_read_is_told_with_its_place) {
  const std::string text = flew + "1.7 h, 1 start, landed 10:53Z";
  const Read read = sentence::read(text, at_the_terminal());
  BOOST_TEST_REQUIRE(read.spans.size() == 4U);
  BOOST_TEST(read.spans[0].slot == "aircraft");
  BOOST_TEST(read.spans[1].slot == "hours");
  BOOST_TEST(text.substr(read.spans[1].from, read.spans[1].to - read.spans[1].from) == "1.7 h");
  BOOST_TEST(read.spans[3].slot == "landed");
}

BOOST_AUTO_TEST_SUITE_END()
