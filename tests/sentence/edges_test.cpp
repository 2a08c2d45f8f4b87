// Spellings at the edge of what is read: quotation marks, glued figures, names that nearly are
// places, strokes, and lines of great length. Derived from record-language, principles 4 to 7
// (never guess; a name that looks like a figure is written in quotes or refused; at most 9 digits
// before the point; a line at most 4,096 bytes). The right answer is the canonical sentence or the
// fault.
#include <boost/test/unit_test.hpp>
#include <string>
#include <vector>

#include "sentence/sentence.h"

using namespace sentence;

namespace {

const Known& known() {
  static const Known book = [] {
    Known known;
    known.things = {logbook::Aircraft{{"ZZ-KIT"}}, logbook::Engine{{"TS-40"}, {"E-1001"}}};
    known.tasks = {{logbook::TaskClass::inspection, {"annual inspection"}},
                   {logbook::TaskClass::task, {"annual inspection"}}};
    known.people = {{"B. Quill"}};
    return known;
  }();
  return book;
}

// The canonical sentence, or "refused".
std::string said(const std::string& text) {
  const Read read = sentence::read(text, {quantity::make_day({2026, 3, 5}), &known()});
  return read.said ? say(*read.said) : "refused";
}
bool is_refused_as(const std::string& text, Fault fault) {
  const Read read = sentence::read(text, {quantity::make_day({2026, 3, 5}), &known()});
  for (const Misreading& wrong : read.wrong) {
    if (wrong.fault == fault) return !read.said;
  }
  return false;
}

const std::string flew = "2026-03-05 aircraft ZZ-KIT flew ";
const std::string low_quote = "\xE2\x80\x9E";
const std::string left_quote = "\xE2\x80\x9C";
const std::string right_quote = "\xE2\x80\x9D";
const std::string no_break = "\xC2\xA0";

}  // namespace

BOOST_AUTO_TEST_SUITE(edges)

BOOST_AUTO_TEST_CASE(marks_of_quotation_as_languages_type_them) {
  const std::string wanted = flew + "1.7 h, remark \"a b\".";
  BOOST_TEST(said(flew + "1.7 h, remark " + low_quote + "a  b" + left_quote) == wanted);
  BOOST_TEST(said(flew + "1.7 h, remark " + left_quote + "a\tb" + right_quote) == wanted);
  BOOST_TEST(said(flew + "1.7 h, remark \" a" + no_break + "b \"" + no_break) == wanted);
  BOOST_TEST(is_refused_as(flew + "1.7 h, remark " + low_quote + "a b", Fault::bad_quote));
  BOOST_TEST(is_refused_as(flew + "1.7 h, remark " + left_quote + "a b\"", Fault::bad_quote));
}

BOOST_AUTO_TEST_CASE(a_backslash_stands_for_itself_but_before_a_mark) {
  BOOST_TEST(said(flew + R"(1.7 h, remark "a\b")") == flew + R"(1.7 h, remark "a\\b".)");
  BOOST_TEST(said(flew + R"(1.7 h, remark "a\\b")") == flew + R"(1.7 h, remark "a\\b".)");
  BOOST_TEST(said(flew + R"(1.7 h, remark "a\"b")") == flew + R"(1.7 h, remark "a\"b".)");
  BOOST_TEST(is_refused_as(flew + R"(1.7 h, remark "a\")", Fault::bad_quote));
  BOOST_TEST(is_refused_as(flew + R"(1.7 h, remark "a\)", Fault::bad_quote));
}

BOOST_AUTO_TEST_CASE(hours_and_minutes_typed_together) {
  BOOST_TEST(said("ZZ-KIT flew 1H42") == flew + "1.7 h.");
  BOOST_TEST(said("ZZ-KIT flew 1h42, 3 landings") == flew + "1.7 h, 3 landings.");
  BOOST_TEST(said("ZZ-KIT flew 1 h 42 minutes") == flew + "1.7 h.");
  BOOST_TEST(said("ZZ-KIT flew 1h423") == "refused");
  BOOST_TEST(said("ZZ-KIT flew 1h4") == "refused");
  BOOST_TEST(said("ZZ-KIT flew 1hx2") == "refused");
  BOOST_TEST(said("ZZ-KIT flew 1 h 420 min") == "refused");
  BOOST_TEST(said("ZZ-KIT flew 1 h 4.2 min") == "refused");
  BOOST_TEST(said("ZZ-KIT flew 420 min") == "refused");
  BOOST_TEST(is_refused_as("ZZ-KIT flew 1234567890h30", Fault::out_of_range));
  BOOST_TEST(is_refused_as("ZZ-KIT flew 1234567890 h 30 min", Fault::out_of_range));
}

BOOST_AUTO_TEST_CASE(a_minus_belongs_to_the_figure_behind_it) {
  BOOST_TEST(is_refused_as("ZZ-KIT flew 1.7 h, -3 landings", Fault::out_of_range));
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, - 3 landings") == "refused");
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, -") == "refused");
  BOOST_TEST(said("model TS-40 idle limit -5 C") == "2026-03-05 model TS-40 idle limit -5 C.");
  BOOST_TEST(said("model TS-40 idle limit -C") == "refused");
}

BOOST_AUTO_TEST_CASE(a_counter_in_quotes_that_is_the_trades_own_word_is_that_counter) {
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, 3 \"Landings\"") == flew + "1.7 h, 3 landings.");
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, 3 \"landing\"") == flew + "1.7 h, 3 landings.");
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, 1 \"gear swings\"") == flew + "1.7 h, 1 \"gear swings\".");
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, 3 \"\"") == "refused");
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, 3") == "refused");
}

BOOST_AUTO_TEST_CASE(parts_of_a_life_with_and_without_blanks) {
  const std::string mix = "2026-03-05 part number DX-1 retires when ";
  BOOST_TEST(said(mix + "cycles/5000+landings/20000 reach 1") ==
             mix + "cycles / 5000 + landings / 20000 reach 1.");
  BOOST_TEST(said(mix + "\"a/b\" / 5000 + cycles / 20000 exceed 1") ==
             mix + "\"a/b\" / 5000 + cycles / 20000 exceed 1.");
  BOOST_TEST(is_refused_as(mix + "cycles / 0 + landings / 20000 reach 1", Fault::out_of_range));
  BOOST_TEST(is_refused_as(mix + "landings / 1.5 + cycles / 20000 reach 1", Fault::not_whole));
  BOOST_TEST(said(mix + "cycles reach 1") == "refused");
  BOOST_TEST(said(mix + "cycles /") == "refused");
  BOOST_TEST(said(mix + "cycle wheels / 5000 reach 1") == "refused");
}

BOOST_AUTO_TEST_CASE(periods_are_whole_and_some_time) {
  const std::string task = "2026-03-05 task \"look\" on aircraft ZZ-KIT every ";
  BOOST_TEST(said(task + "1 months") == task + "1 month.");
  BOOST_TEST(said(task + "12 calendar month") == task + "12 calendar months.");
  BOOST_TEST(said(task + "1.5 months") == "refused");
  BOOST_TEST(said(task + "1234567890 days") == "refused");
  BOOST_TEST(said(task + "12 moons") == "refused");
}

BOOST_AUTO_TEST_CASE(names_that_nearly_are_places) {
  const std::string has = "2026-03-05 aircraft ZZ-KIT has required place ";
  BOOST_TEST(said(has + "\"Engine 2\"") == has + "engine 2.");
  BOOST_TEST(said(has + "\"engine 0\"") == has + "\"engine 0\".");
  BOOST_TEST(said(has + "\"engine 10\"") == has + "\"engine 10\".");
  BOOST_TEST(said(has + "\"engine 1 cowl\"") == has + "\"engine 1 cowl\".");
  BOOST_TEST(is_refused_as(has + "\"engine 1 B-2\"", Fault::bad_name));
  BOOST_TEST(said(has + "engine 0") == "refused");
  BOOST_TEST(said(has + "engine 12") == "refused");
  BOOST_TEST(said(has + "engine A") == "refused");
  BOOST_TEST(said(has + "\"\"") == "refused");
}

BOOST_AUTO_TEST_CASE(names_that_look_like_figures_or_are_too_long) {
  const std::string is = "2026-03-05 aircraft ZZ-KIT is model ";
  BOOST_TEST(said(is + "\"2026-01-01\", serial 5012") == is + "\"2026-01-01\", serial 5012.");
  BOOST_TEST(said(is + "\"5\", serial \"5012\"") == is + "\"5\", serial 5012.");
  BOOST_TEST(is_refused_as("aircraft \"2026-01-01\" flew 1.7 h", Fault::bad_name));
  BOOST_TEST(is_refused_as("aircraft \"09:10Z\" flew 1.7 h", Fault::bad_name));
  BOOST_TEST(is_refused_as("aircraft \"-12\" flew 1.7 h", Fault::bad_name));
  BOOST_TEST(is_refused_as("aircraft A-234567890123456789012345 flew 1.7 h", Fault::bad_name));
  BOOST_TEST(said("aircraft A-2345678901234567890123 flew 1.7 h") != "refused");
  BOOST_TEST(
      is_refused_as("aircraft \"" + std::string(300, 'x') + "\" flew 1.7 h", Fault::bad_name));
  const std::string digits(24, '7');
  BOOST_TEST(said(is + "\"X\", serial " + digits) == is + "\"X\", serial " + digits + ".");
  BOOST_TEST(said(is + "\"X\", serial " + digits + "7") == "refused");
}

BOOST_AUTO_TEST_CASE(a_task_of_two_classes_is_asked_about_and_one_name_is_one) {
  const std::string done = " done on aircraft ZZ-KIT";
  BOOST_TEST(said("inspection annual inspection" + done) ==
             "2026-03-05 inspection \"annual inspection\" done on aircraft ZZ-KIT.");
  BOOST_TEST(said("inspection annul inspection" + done) == "refused");
  BOOST_TEST(said("inspection \"annual  inspection\"" + done) ==
             "2026-03-05 inspection \"annual inspection\" done on aircraft ZZ-KIT.");
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, pilot b. quill") == flew + "1.7 h, pilot \"B. Quill\".");
  BOOST_TEST(said("ZZ-KIT flew 1.7 h, pilot b. quil") == "refused");
}

BOOST_AUTO_TEST_CASE(a_line_holds_so_many_bytes_as_it_is_stored) {
  const std::string blanks(3000, ' ');
  BOOST_TEST(said("ZZ-KIT" + blanks + "flew 1.7 h") == flew + "1.7 h.");
  // Each backslash is stored as two.
  BOOST_TEST(said(flew + "1.7 h, remark \"" + std::string(1900, '\\') + "x\"") != "refused");
  BOOST_TEST(said(flew + "1.7 h, remark \"" + std::string(5000, 'y') + "\"") == "refused");
}

BOOST_AUTO_TEST_SUITE_END()
