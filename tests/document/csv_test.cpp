#include <boost/test/unit_test.hpp>

#include "document/as_csv.h"
#include "document/number.h"
#include "document/samples.h"
#include "text/random_words.h"
#include "text/visible.h"

namespace {

using Line = std::vector<std::string>;

// A reader by the grammar of RFC 4180 section 2, nothing shared with the writer.
std::vector<Line> read_csv(std::string_view file) {
  std::vector<Line> lines{{""}};
  bool is_quoted = false;
  for (std::size_t i = 0; i < file.size(); ++i) {
    const char byte = file[i];
    const bool is_doubled = byte == '"' && is_quoted && i + 1 < file.size() && file[i + 1] == '"';
    if (is_doubled) {
      lines.back().back() += file[++i];
    } else if (byte == '"') {
      is_quoted = !is_quoted;
    } else if (byte == ',' && !is_quoted) {
      lines.back().emplace_back();
    } else if (byte == '\r' && !is_quoted) {
      BOOST_REQUIRE(file.substr(i, 2) == "\r\n");
      lines.push_back({""});
      ++i;
    } else {
      lines.back().back() += byte;
    }
  }
  BOOST_REQUIRE((lines.back() == Line{""}));  // the last line ends, too
  lines.pop_back();
  return lines;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(csv)

// RFC 4180 section 2, rules 5 to 7.
BOOST_AUTO_TEST_CASE(fields_are_quoted_where_the_standard_wants_it) {
  BOOST_TEST(document::csv_field("aaa") == "aaa");
  BOOST_TEST(document::csv_field("") == "");
  BOOST_TEST(document::csv_field(" a b ") == " a b ");
  BOOST_TEST(document::csv_field("b,bb") == "\"b,bb\"");
  BOOST_TEST(document::csv_field("b\"bb") == "\"b\"\"bb\"");
  BOOST_TEST(document::csv_field("b\r\nbb") == "\"b\r\nbb\"");
  BOOST_TEST(document::csv_field("b\rb") == "\"b\rb\"");
  BOOST_TEST(document::csv_field("b\nb") == "\"b\nb\"");
  BOOST_TEST(document::csv_field("a;b") == "\"a;b\"");
}

// Application Security Verification Standard 1.2.10 and CWE-1236.
BOOST_AUTO_TEST_CASE(what_a_spreadsheet_would_run_is_guarded) {
  for (const char* words : {"=1+1", "+1", "-x", "@SUM(A1)", "\t=1", "\r=1", "-5.2 C", "--1", "-"}) {
    BOOST_TEST(document::guarded(words) == "'" + std::string(words));
  }
  BOOST_TEST(document::guarded(std::string_view("\0=1", 3)).front() == '\'');
  BOOST_TEST(document::csv_field("=HYPERLINK(\"x\",\"y\")") ==
             "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"");
}

BOOST_AUTO_TEST_CASE(a_number_of_ours_stays_a_number) {
  for (const char* words : {"-5.2", "0", "12", "-720", "2026-03-04", "1:42", "'round", "a=b", ""}) {
    BOOST_TEST(document::guarded(words) == words);
  }
}

BOOST_AUTO_TEST_CASE(the_guard_is_taken_off_again) {
  text_test::RandomWords random(text_test::printed_seed("the guard comes off"));
  constexpr std::string_view letters(
      "''=+-@\t\r\0"
      "15.a",
      13);
  for (int round = 0; round < 50000; ++round) {
    std::string words;
    for (std::size_t left = random.below(6); left > 0; --left) {
      words += letters[random.below(letters.size())];
    }
    const std::string guarded = document::guarded(words);
    BOOST_REQUIRE_EQUAL(document::unguarded(guarded), words);
    const bool is_safe = guarded.empty() || document::is_plain_number(guarded) ||
                         std::string_view("=+-@\t\r\0", 7).find(guarded[0]) == std::string::npos;
    BOOST_REQUIRE(is_safe);
  }
}

BOOST_AUTO_TEST_CASE(a_due_list_is_one_long_table) {
  BOOST_TEST(document::as_csv(document_test::due_list()) ==
             "section,row,column,shown,exact,unit,state\r\n"
             "title,1,text,Due list of ZZ-KIT,,,\r\n"
             "head,1,text,As of 2026-03-04.,,,\r\n"
             "head,2,text,K7QXM-130,,,\r\n"
             "heading,1,text,Next,,,\r\n"
             "due,1,item,directive D-26-04,,,\r\n"
             "due,1,left,2.8 h,10080,s,\r\n"
             "due,1,state,soon,,,soon\r\n"
             "due,2,item,annual inspection,,,\r\n"
             "due,2,left,2026-06-30,2026-06-30,,\r\n"
             "due,2,state,ok,,,ok\r\n"
             "due,3,item,blade serial B-88,,,\r\n"
             "due,3,left,'-0.2 h,-720,s,over\r\n"
             "due,3,state,over,,,over\r\n"
             "note,1,text,One base was not heard.,,,\r\n"
             "signature,1,statement,I have seen this list.,,,\r\n"
             "signature,2,label,Name,,,\r\n"
             "signature,3,label,Certificate,,,\r\n");
}

BOOST_AUTO_TEST_CASE(an_empty_table_says_its_sentence) {
  document::Document document;
  document.blocks = {document::Table{"due", {{"item", "Item"}}, {}, "Nothing is due."}};
  BOOST_TEST(document::as_csv(document) ==
             "section,row,column,shown,exact,unit,state\r\ndue,1,text,Nothing is due.,,,\r\n");
}

// RFC 4180 rule 4: the same number of fields throughout; and the words come back, made visible.
BOOST_AUTO_TEST_CASE(hostile_cells_come_back_in_seven_fields) {
  text_test::RandomWords random(text_test::printed_seed("cells come back"));
  for (int round = 0; round < 2000; ++round) {
    const std::string shown = random.words(20);
    document::Document document;
    document.blocks = {document::Table{"t", {{"c", "C"}}, {{{shown, "-1.5", "h", {}}}}, ""}};
    const std::vector<Line> lines = read_csv(document::as_csv(document));
    BOOST_REQUIRE_EQUAL(lines.size(), 2U);
    BOOST_REQUIRE_EQUAL(lines[1].size(), 7U);
    BOOST_REQUIRE_EQUAL(document::unguarded(lines[1][3]), text::visible_line(shown));
    BOOST_REQUIRE_EQUAL(lines[1][4], "-1.5");
  }
}

BOOST_AUTO_TEST_SUITE_END()
