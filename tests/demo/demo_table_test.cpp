// The table in demo_db/README.md, "each kind, counter, class, policy and state, and the entry that
// shows it", held against the language and the record. Whether an item stands in its state is
// shown by tests/sessions/story.session.
#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "demo/demo_rows.h"
#include "demo/shown.h"

namespace {

// The files are read once for all cases.
struct Demo {
  static const std::vector<demo::Row>& read_rows() {
    static const auto rows = demo::rows();
    return rows;
  }
  static const std::map<int, demo::Sentence>& read_sentences() {
    static const auto sentences = demo::sentences();
    return sentences;
  }
  const std::vector<demo::Row>& rows = read_rows();
  const std::map<int, demo::Sentence>& sentences = read_sentences();
};

// What `timeworn new` says itself stands in no file.
bool is_of_new(const demo::Row& row) { return row.number == 1; }

std::string told(const demo::Row& row) {
  return row.sort + " " + row.name + ", entry " + std::to_string(row.number);
}

demo::Names named(const std::vector<demo::Row>& rows, const std::string& sort) {
  demo::Names names;
  for (const auto& row : rows) {
    if (row.sort == sort) names.insert(row.name);
  }
  return names;
}

bool is_definition(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Limit>(fact) ||
         std::holds_alternative<logbook::Task>(fact);
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(demo_table, Demo)

BOOST_AUTO_TEST_CASE(every_kind_counter_class_policy_and_state_has_a_row_and_none_is_made_up) {
  for (const std::string sort :
       {"kind", "counter", "limit class", "task class", "policy", "state"}) {
    BOOST_TEST_REQUIRE(!demo::wanted(sort).empty());
    BOOST_TEST(named(rows, sort) == demo::wanted(sort), boost::test_tools::per_element());
  }
}

BOOST_AUTO_TEST_CASE(each_row_names_an_entry_of_the_record_with_its_words) {
  BOOST_TEST_REQUIRE(rows.size() > 80U);
  for (const auto& row : rows) {
    BOOST_TEST(row.writer == rows.front().writer, told(row));
    if (is_of_new(row)) continue;
    const auto found = sentences.find(row.number);
    BOOST_TEST_REQUIRE((found != sentences.end()), told(row));
    BOOST_TEST(!row.words.empty(), told(row));
    BOOST_TEST((found->second.text.find(row.words) != std::string::npos),
               told(row) << " has no \"" << row.words << "\"");
  }
}

BOOST_AUTO_TEST_CASE(the_sentence_shows_what_its_row_says) {
  for (const auto& row : rows) {
    if (is_of_new(row) || row.sort == "state" || row.sort == "story") continue;
    const auto& said = sentences.at(row.number).said;
    BOOST_TEST(demo::shown(row.sort, said).contains(row.name), told(row));
  }
}

BOOST_AUTO_TEST_CASE(only_the_record_itself_is_begun_elsewhere) {
  const auto of_new = std::count_if(rows.begin(), rows.end(), is_of_new);
  BOOST_TEST(of_new == 1);
  const auto row = std::find_if(rows.begin(), rows.end(), is_of_new);
  BOOST_TEST(row->name == "record-begins");
}

BOOST_AUTO_TEST_CASE(a_state_is_that_of_a_limit_or_a_task) {
  for (const auto& row : rows) {
    if (row.sort != "state") continue;
    BOOST_TEST(is_definition(sentences.at(row.number).said.fact), told(row));
  }
}

BOOST_AUTO_TEST_CASE(three_years_have_at_least_2400_flights) {
  std::vector<quantity::Day> days;
  for (const auto& [number, each] : sentences) {
    if (std::holds_alternative<logbook::Flew>(each.said.fact)) days.push_back(each.said.day);
  }
  BOOST_TEST_REQUIRE(days.size() >= 2400U);
  const auto [first, last] = std::minmax_element(days.begin(), days.end());
  BOOST_TEST((*last - *first).count() >= 3 * 365 - 7);
}

BOOST_AUTO_TEST_SUITE_END()
