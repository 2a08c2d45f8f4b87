#include "document/document.h"

#include <boost/test/unit_test.hpp>
#include <stdexcept>

#include "document/number.h"
#include "document/render.h"
#include "document/samples.h"

namespace {

document::Document holding(document::Table table) {
  document::Document result;
  result.blocks = {std::move(table)};
  return result;
}

// The one fault of a table, or every one of them if there are more.
std::string fault_of(const document::Table& table) {
  std::string all;
  for (const std::string& fault : document::faults(holding(table))) all += fault + ".";
  return all;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(model)

BOOST_AUTO_TEST_CASE(states_are_words) {
  using document::State;
  BOOST_TEST(document::word(State::none) == "");
  BOOST_TEST(document::word(State::ok) == "ok");
  BOOST_TEST(document::word(State::soon) == "soon");
  BOOST_TEST(document::word(State::due) == "due");
  BOOST_TEST(document::word(State::over) == "over");
  BOOST_TEST(document::word(State::not_known) == "not known");
}

BOOST_AUTO_TEST_CASE(sound_documents_have_no_faults) {
  BOOST_TEST(document::faults(document_test::due_list()).empty());
  BOOST_TEST(document::faults(holding(document_test::working_table())).empty());
}

BOOST_AUTO_TEST_CASE(a_row_of_another_length_is_a_fault) {
  document::Table table = document_test::due_table();
  table.rows[1].pop_back();
  BOOST_TEST(fault_of(table) == "table \"due\" has a row of another length.");
}

BOOST_AUTO_TEST_CASE(a_key_that_is_empty_odd_or_taken_is_a_fault) {
  document::Table table = document_test::due_table();
  table.columns[1].key = "item";
  BOOST_TEST(fault_of(table) == "column \"item\" of table \"due\" stands there twice.");
  table.columns[1].key = "Left";
  BOOST_TEST(fault_of(table) == "column \"Left\" of table \"due\" has no proper key.");
  table = document_test::due_table();
  table.key = "note";
  BOOST_TEST(fault_of(table) == "table \"note\" has a key that is taken.");
  table.key = "";
  BOOST_TEST(fault_of(table) == "table \"\" has no proper key.");
  document::Document twice = holding(document_test::due_table());
  twice.blocks.push_back(document_test::due_table());
  BOOST_TEST(document::faults(twice).size() == 1U);
}

BOOST_AUTO_TEST_CASE(an_exact_value_that_no_machine_can_read_is_a_fault) {
  document::Table table = document_test::due_table();
  table.rows[0][1].exact = "2.8 h";
  BOOST_TEST(fault_of(table) == "table \"due\" has \"2.8 h\", which is no number and no day.");
}

BOOST_AUTO_TEST_CASE(an_empty_table_without_a_sentence_is_a_fault) {
  document::Table table = document_test::due_table();
  table.rows.clear();
  BOOST_TEST(fault_of(table) == "table \"due\" has neither rows nor a sentence in their place.");
  table.if_empty = "Nothing is due.";
  BOOST_TEST(fault_of(table) == "");
}

// The shape that a spreadsheet may see unguarded: ^-?[0-9]+(\.[0-9]+)?$
BOOST_AUTO_TEST_CASE(plain_numbers_are_digits_with_sign_and_point) {
  for (const char* good : {"0", "12", "-12", "1.5", "-0.25", "007"}) {
    BOOST_TEST(document::is_plain_number(good), good);
  }
  for (const char* bad : {"", "-", ".", "1.", ".5", "+1", "1e5", "1,5", "--1", "1.2.3", " 1", "1 ",
                          "1\n", "-.5", "NaN", "0x1"}) {
    BOOST_TEST(!document::is_plain_number(bad), bad);
  }
}

BOOST_AUTO_TEST_CASE(days_look_like_iso_days) {
  BOOST_TEST(document::looks_like_day("2026-03-04"));
  for (const char* bad : {"", "2026-3-04", "2026/03/04", "26-03-04", "2026-03-04Z", "2026-03-0a"}) {
    BOOST_TEST(!document::looks_like_day(bad), bad);
  }
}

BOOST_AUTO_TEST_CASE(formats_go_by_their_names) {
  BOOST_TEST((document::format_named("text") == document::Format::text));
  BOOST_TEST((document::format_named("json") == document::Format::json));
  BOOST_TEST((document::format_named("csv") == document::Format::csv));
  BOOST_TEST((document::format_named("html") == document::Format::html));
  BOOST_TEST((document::format_named("svg") == document::Format::svg));
  BOOST_TEST(!document::format_named("TEXT"));
  BOOST_TEST(!document::format_named(""));
}

BOOST_AUTO_TEST_CASE(each_format_ends_its_last_line) {
  const document::Document document = document_test::due_list();
  BOOST_TEST(document::render(document, document::Format::text, 80).ends_with("_\n"));
  BOOST_TEST(document::render(document, document::Format::json, 80).ends_with("\n}\n"));
  BOOST_TEST(document::render(document, document::Format::csv, 80).ends_with(",,,\r\n"));
  BOOST_TEST(document::render(document, document::Format::html, 80).ends_with("</html>\n"));
}

BOOST_AUTO_TEST_CASE(nothing_is_rendered_of_a_faulty_document) {
  document::Table table = document_test::due_table();
  table.rows[0].pop_back();
  BOOST_CHECK_THROW(document::render(holding(table), document::Format::text, 80), std::logic_error);
}

BOOST_AUTO_TEST_SUITE_END()
