// Names of questions. Record page C1-C17: a name stays the same in every book of the same entries.
#include "reckon/question.h"

#include <boost/test/unit_test.hpp>

#include "support/entries.h"

BOOST_AUTO_TEST_SUITE(question)

namespace {

const std::vector<logbook::EntryId> two{{{"A"}, 3}, {{"B"}, 1}};
const std::vector<logbook::EntryId> turned{{{"B"}, 1}, {{"A"}, 3}};
const std::vector<logbook::Thing> kit{support::aircraft("ZZ-KIT")};

}  // namespace

BOOST_AUTO_TEST_CASE(the_order_of_its_entries_does_not_change_its_name) {
  const auto one = reckon::make_question("order within a day", two, kit);
  BOOST_TEST(one.name.size() == 4U);
  BOOST_TEST(one.name == reckon::make_question("order within a day", turned, kit).name);
  BOOST_TEST(one.name != reckon::make_question("two corrections", two, kit).name);
  BOOST_TEST(one.name != reckon::make_question("order within a day", {two[0]}, kit).name);
}

BOOST_AUTO_TEST_CASE(a_question_is_put_once) {
  std::vector<reckon::Question> questions;
  const auto one = reckon::make_question("order within a day", two, kit);
  reckon::add_question(questions, one);
  reckon::add_question(questions, one);
  BOOST_TEST(questions.size() == 1U);
  // Four letters may well be those of another question.
  auto other = reckon::make_question("two corrections", two, kit);
  other.name = one.name;
  reckon::add_question(questions, other);
  BOOST_TEST(questions.size() == 2U);
  reckon::add_question(questions, other);
  BOOST_TEST(questions.size() == 2U);
}

BOOST_AUTO_TEST_SUITE_END()
