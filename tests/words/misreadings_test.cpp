#include <boost/test/unit_test.hpp>
#include <random>

#include "text/pieces.h"
#include "text/unicode.h"
#include "words/told.h"
#include "words/words.h"

namespace {

using logbook::Fault;
using logbook::Misreading;

constexpr int last_fault = static_cast<int>(Fault::two_things);

Misreading misreading(Fault fault, std::string_view line, std::string_view read) {
  Misreading wrong;
  wrong.fault = fault;
  wrong.from = static_cast<std::uint16_t>(line.find(read));
  wrong.to = static_cast<std::uint16_t>(wrong.from + read.size());
  wrong.read = read;
  return wrong;
}

// What stands above the marks, by columns.
std::string pointed_at(const std::string& told) {
  const auto lines = text::split(told, '\n');
  const std::string_view line = lines[lines.size() - 2];
  const std::string_view marks = lines.back();
  const std::size_t from = marks.find('^');
  std::string above;
  std::size_t column = 0;
  for (const std::string_view cluster : text::clusters(line)) {
    if (column >= from && column < marks.size()) above += cluster;
    column += text::columns(cluster);
  }
  return above;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(misreadings)

BOOST_AUTO_TEST_CASE(two_readings_are_both_shown) {
  const std::string_view line = "ZZ-KIT flew 1,230 h";
  Misreading wrong = misreading(Fault::two_readings, line, "1,230 h");
  wrong.first = "1.23";
  wrong.second = "1230";
  BOOST_TEST(words::misreadings_text(line, {wrong}) ==
             "\"1,230 h\" can mean 1.23 or 1230. Write 1.23 or 1230.\n"
             "  ZZ-KIT flew 1,230 h\n"
             "              ^^^^^^^");
}

// 54 F is (54 - 32) 5 / 9 = 12.22 C.
BOOST_AUTO_TEST_CASE(degrees_fahrenheit_are_shown_in_celsius_and_not_taken) {
  const std::string_view line = "outside air 54 F";
  Misreading wrong = misreading(Fault::fahrenheit, line, "54");
  wrong.first = "12.2";
  BOOST_TEST(words::misreadings_text(line, {wrong})
                 .starts_with("\"54 F\" is 12.2 C to tenths. Write degrees C.\n"));
}

BOOST_AUTO_TEST_CASE(an_unknown_word_gets_the_nearest_known_one) {
  const std::string_view line = "ZZ-KIT flwe 1.2 h";
  Misreading wrong = misreading(Fault::unknown_word, line, "flwe");
  wrong.nearest = "flew";
  BOOST_TEST(words::misreadings_text(line, {wrong})
                 .starts_with("\"flwe\" is not understood here. Did you mean \"flew\"?\n"));
}

BOOST_AUTO_TEST_CASE(what_could_stand_there_is_listed_but_not_without_end) {
  Misreading wrong = misreading(Fault::missing, "ZZ-KIT", "");
  wrong.from = wrong.to = 6;
  wrong.expected = {"flew", "ran", "tried", "started", "cruise", "idle", "brings forward"};
  const std::string told = words::misreadings_text("ZZ-KIT", {wrong});
  BOOST_TEST(
      told.starts_with("Something is missing here. Write for example flew, ran, tried, "
                       "started, cruise or idle.\n"));
  BOOST_TEST(told.ends_with("\n        ^"));
}

BOOST_AUTO_TEST_CASE(all_faults_of_a_line_are_told) {
  const std::string_view line = "ZZ-KIT flwe x h";
  const std::string told = words::misreadings_text(
      line,
      {misreading(Fault::unknown_word, line, "flwe"), misreading(Fault::not_a_number, line, "x")});
  BOOST_TEST(told.find("flwe\" is not understood") != std::string::npos);
  BOOST_TEST(told.find("\"x\" is no number") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(every_fault_has_a_sentence) {
  for (int fault = 0; fault <= last_fault; ++fault) {
    for (const bool has_readings : {false, true}) {
      Misreading wrong = misreading(static_cast<Fault>(fault), "a b c", "b");
      if (has_readings) wrong.first = "1", wrong.second = "2";
      const std::string told = words::misreadings_text("a b c", {wrong});
      words_test::check_told(told.substr(0, told.find('\n')));
    }
  }
}

BOOST_AUTO_TEST_CASE(the_marks_always_cover_the_bad_words_and_stay_on_the_screen) {
  const unsigned seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937 random(seed);
  const std::vector<std::string> pieces = {"a", "flew ", "é", "e\u0301", "漢", " ", "1.2 "};
  const auto some = [&](std::size_t most) {
    std::string words;
    for (std::size_t i = random() % most; i > 0; --i) words += pieces[random() % pieces.size()];
    return words;
  };
  for (int i = 0; i < 3000; ++i) {
    const std::string before = some(60) + " ";
    const std::string bad = "b" + some(6) + "d";
    const std::string line = before + bad + " " + some(60);
    Misreading wrong;
    wrong.from = static_cast<std::uint16_t>(before.size());
    wrong.to = static_cast<std::uint16_t>(before.size() + bad.size());
    wrong.read = bad;
    const std::string told = words::misreadings_text(line, {wrong});
    BOOST_REQUIRE_EQUAL(pointed_at(told), bad);
    const std::string excerpt = told.substr(told.find('\n') + 1);
    for (const std::string_view each : text::split(excerpt, '\n')) {
      BOOST_REQUIRE_MESSAGE(text::columns(each) <= 80, told);
    }
  }
}

BOOST_AUTO_TEST_CASE(offsets_beyond_the_line_do_no_harm) {
  Misreading wrong = misreading(Fault::unknown_word, "abc", "c");
  wrong.from = 900;
  wrong.to = 800;
  BOOST_TEST(words::misreadings_text("abc", {wrong}).ends_with("  abc\n     ^"));
}

// Thousands of faults in one line of junk would take minutes and tell nothing.
BOOST_AUTO_TEST_CASE(after_twenty_only_their_number_is_told) {
  std::vector<logbook::Misreading> many(23);
  for (auto& wrong : many) wrong.fault = logbook::Fault::two_sentences;
  const std::string told = words::misreadings_text("junk", many);
  BOOST_TEST(told.ends_with("\nThe line has 3 more faults."));
  many.resize(20);
  BOOST_TEST(words::misreadings_text("junk", many).find("more fault") == std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()
