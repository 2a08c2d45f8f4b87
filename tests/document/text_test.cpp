#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "document/as_text.h"
#include "document/grid.h"
#include "document/samples.h"
#include "document/wrap.h"
#include "text/pieces.h"
#include "text/random_words.h"
#include "text/unicode.h"
#include "text/visible.h"

namespace {

constexpr std::size_t widths[] = {20, 40, 59, 60, 80, 132, 200};

document::Document only(document::Block block) {
  document::Document result;
  result.blocks = {std::move(block)};
  return result;
}

std::string without_blanks(std::string_view words) {
  std::string result;
  for (const char byte : words) {
    if (byte != ' ' && byte != '\n') result += byte;
  }
  return result;
}

// A line may be wider than the screen only if it had no place to break: each blank in it stands
// behind a number.
bool fits(std::string_view line, std::size_t columns) {
  if (text::columns(line) <= columns) return true;
  std::vector<std::string_view> words = text::split(line, ' ');
  words.pop_back();
  return std::all_of(words.begin(), words.end(), [](std::string_view word) {
    return !word.empty() && word.find_first_not_of("0123456789.-") == word.npos;
  });
}

std::string random_sentence(text_test::RandomWords& random) {
  std::string result;
  for (std::size_t left = 1 + random.below(12); left > 0; --left) {
    const bool is_number = random.below(2) == 0;
    result += is_number ? std::to_string(random.below(100000)) + ".5 h" : random.words(6);
    if (left > 1) result += ' ';
  }
  return result;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(text_form)

BOOST_AUTO_TEST_CASE(a_due_list_on_a_screen_of_eighty_columns) {
  BOOST_TEST(document::as_text(document_test::due_list(), 80) ==
             "Due list of ZZ-KIT\n"
             "As of 2026-03-04.\n"
             "K7QXM-130\n"
             "\n"
             "Next\n"
             "Item                        Left  State\n"
             "-----------------  -------------  -----\n"
             "directive D-26-04          2.8 h  soon\n"
             "annual inspection     2026-06-30  ok\n"
             "blade serial B-88  -0.2 h (over)  over\n"
             "\n"
             "Note: One base was not heard.\n"
             "\n"
             "\"I have seen this list.\"\n"
             "Name: ______________________________________________________\n"
             "Certificate: _______________________________________________\n");
}

BOOST_AUTO_TEST_CASE(a_narrow_screen_has_one_field_a_line) {
  const std::string narrow =
      "Item   directive D-26-04\n"
      "Left   2.8 h\n"
      "State  soon\n"
      "\n"
      "Item   annual inspection\n"
      "Left   2026-06-30\n"
      "State  ok\n"
      "\n"
      "Item   blade serial B-88\n"
      "Left   -0.2 h (over)\n"
      "State  over\n";
  BOOST_TEST(document::as_text(only(document_test::due_table()), 59) == narrow);
  BOOST_TEST(document::as_text(only(document_test::due_table()), 60) != narrow);
}

BOOST_AUTO_TEST_CASE(a_sum_without_a_head_wraps_its_words_and_not_its_figures) {
  BOOST_TEST(document::as_text(only(document_test::working_table()), 44) ==
             " 6000.0 h  life since new, \"limitations rev\n"
             "           4\" (K7QXM-31)\n"
             "-5550.0 h  used when fitted in module M-4 on\n"
             "           2 May 2024\n"
             " -310.0 h  flown in M-4 since then, engine\n"
             "           E-1001, 212 flights\n"
             "= 140.0 h  The module itself has 400.0 h to\n"
             "           overhaul.\n");
}

BOOST_AUTO_TEST_CASE(sentences_follow_each_other_line_by_line) {
  document::Document answer;
  answer.blocks = {document::Paragraph{"No. A 3.0 h trip would pass directive D-26-04 by 0.2 h."},
                   document::Paragraph{"Then: 100-hour inspection in 3.4 h."}};
  BOOST_TEST(document::as_text(answer, 80) ==
             "No. A 3.0 h trip would pass directive D-26-04 by 0.2 h.\n"
             "Then: 100-hour inspection in 3.4 h.\n");
}

BOOST_AUTO_TEST_CASE(a_table_too_wide_for_its_words_becomes_a_field_a_line) {
  const std::string serial(50, 'A');
  document::Table table{"t", {{"a", "One"}, {"b", "Two"}}, {}, ""};
  table.rows = {{{serial, "", "", {}}, {serial, "", "", {}}}};
  BOOST_TEST(document::as_text(only(table), 80) == "One  " + serial + "\nTwo  " + serial + "\n");
  BOOST_TEST(document::as_text(only(table), 102).starts_with("One"));
  BOOST_TEST(document::as_text(only(table), 102).find(serial + "  " + serial) != std::string::npos);
}

BOOST_AUTO_TEST_CASE(an_empty_table_says_why) {
  document::Table table = document_test::due_table();
  table.rows.clear();
  table.if_empty = "Nothing is due within 50.0 h.";
  BOOST_TEST(document::as_text(only(table), 80) == "Nothing is due within 50.0 h.\n");
}

BOOST_AUTO_TEST_CASE(a_state_is_a_word_but_not_said_twice) {
  using document::State;
  BOOST_TEST(document::text_of({"2.8 h", "", "", State::soon}) == "2.8 h (soon)");
  BOOST_TEST(document::text_of({"2.8 h", "", "", State::none}) == "2.8 h");
  BOOST_TEST(document::text_of({"Over", "", "", State::over}) == "Over");
  BOOST_TEST(document::text_of({"", "", "", State::not_known}) == "not known");
}

// Columns are counted as the screen counts them, so that accents and ideographs line up.
BOOST_AUTO_TEST_CASE(columns_line_up_for_all_letters) {
  document::Table table{"t", {{"a", "Name"}, {"b", "N", document::Align::right}}, {}, ""};
  for (const char* name : {"e\xCC\x81t\xC3\xA9", "\xE6\x97\xA5\xE6\x9C\xAC\xE6\x97\xA5", "plain"}) {
    table.rows.push_back({{name, "", "", {}}, {"1", "1", "", {}}});
  }
  const std::string whole = document::as_text(only(table), 80);
  for (const std::string_view line : text::split(text::trim(whole), '\n')) {
    BOOST_TEST(text::columns(line) == 9U, line);
  }
}

// A name that tries to clear the screen or to forge a line of its own.
BOOST_AUTO_TEST_CASE(controls_in_any_words_are_shown) {
  const std::string bad = "a\x1B[2J\nNo.\xE2\x80\xAE\x9B";
  document::Table table{"t", {{"a", bad}}, {{{bad, "", "", {}}}}, ""};
  document::Document document{bad, {bad}, {}};
  document.blocks = {document::Heading{bad}, document::Paragraph{bad}, table, document::Note{bad},
                     document::SignatureBlock{bad, {bad}}};
  table.rows.clear();
  table.if_empty = bad;
  document.blocks.push_back(table);
  for (const std::size_t columns : widths) {
    std::string lines = document::as_text(document, columns);
    BOOST_TEST(lines.find("\nNo.") == std::string::npos);
    lines.erase(std::remove(lines.begin(), lines.end(), '\n'), lines.end());
    BOOST_TEST(!text::has_control(lines));
  }
}

BOOST_AUTO_TEST_CASE(a_number_stays_with_its_short_unit) {
  using Lines = std::vector<std::string>;
  BOOST_TEST((document::wrapped("You can fly 2.8 h.", 15) == Lines{"You can fly", "2.8 h."}));
  BOOST_TEST((document::wrapped("by 30 June 2026", 5) == Lines{"by", "30 June", "2026"}));
  BOOST_TEST((document::wrapped("all 12 inspections", 6) == Lines{"all 12", "inspections"}));
  BOOST_TEST((document::wrapped("", 80) == Lines{""}));
  BOOST_TEST((document::wrapped("1 2 3", 1) == Lines{"1 2 3"}));
}

BOOST_AUTO_TEST_CASE(wrapping_loses_nothing_and_cuts_nothing) {
  text_test::RandomWords random(text_test::printed_seed("wrapping loses nothing"));
  for (int round = 0; round < 3000; ++round) {
    const std::string sentence = random_sentence(random);
    const std::size_t columns = 1 + random.below(100);
    const std::vector<std::string> lines = document::wrapped(sentence, columns);
    BOOST_REQUIRE_EQUAL(text::join(lines, " "), text::visible_line(sentence));
    for (const std::string& line : lines) BOOST_REQUIRE(fits(line, columns));
  }
}

// What is said must not depend on the width: the same letters in the same order at each.
BOOST_AUTO_TEST_CASE(sentences_say_the_same_at_each_width) {
  text_test::RandomWords random(text_test::printed_seed("the same at each width"));
  for (int round = 0; round < 300; ++round) {
    document::Document document{random_sentence(random), {random_sentence(random)}, {}};
    document.blocks = {document::Heading{random_sentence(random)},
                       document::Paragraph{random_sentence(random)}};
    const std::string widest = without_blanks(document::as_text(document, 100000));
    for (const std::size_t columns : widths) {
      BOOST_REQUIRE_EQUAL(without_blanks(document::as_text(document, columns)), widest);
    }
  }
}

BOOST_AUTO_TEST_CASE(every_figure_of_a_table_stands_whole_at_each_width) {
  text_test::RandomWords random(text_test::printed_seed("figures stand whole"));
  for (int round = 0; round < 300; ++round) {
    document::Table table{"t", {{"a", "Item"}, {"b", "Left", document::Align::right}}, {}, ""};
    std::vector<std::string> figures;
    for (std::size_t left = 1 + random.below(5); left > 0; --left) {
      figures.push_back("-" + std::to_string(random.below(1000000)) + ".25 h");
      table.rows.push_back({{random_sentence(random), "", "", {}}, {figures.back(), "", "", {}}});
    }
    for (const std::size_t columns : widths) {
      const std::string lines = document::as_text(only(table), columns);
      std::size_t from = 0;
      for (const std::string& figure : figures) {
        from = lines.find(figure, from);
        BOOST_REQUIRE(from != std::string::npos);
        from += figure.size();
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(no_line_ends_in_a_blank) {
  for (const std::size_t columns : widths) {
    const std::string lines = document::as_text(document_test::due_list(), columns);
    BOOST_TEST(lines.find(" \n") == std::string::npos);
    BOOST_TEST(lines.ends_with('\n'));
  }
}

BOOST_AUTO_TEST_SUITE_END()
