#include "reckon/rules_in_force.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/entry_named.h"

using namespace definitions;

BOOST_AUTO_TEST_SUITE(rules_in_force)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine engine = support::engine("TS-40", "E-1001");

reckon::RulesInForce rules(const support::Book& book, const std::string& as_of) {
  static std::vector<reckon::Standing> kept;  // the rules point into it
  kept.reserve(100);
  kept.push_back(reckon::standing(book.entries(), support::day(as_of)));
  return reckon::rules_in_force(kept.back());
}

}  // namespace

BOOST_AUTO_TEST_CASE(an_entry_is_named_by_the_first_letters_of_its_writer) {
  support::Book book;
  const logbook::EntryId id = book.say("2025-01-01", on_condition(engine));
  BOOST_TEST(reckon::is_named({"9D5MP", 1}, id));
  BOOST_TEST(reckon::is_named({"9D5MPJ", 1}, id));
  BOOST_TEST(reckon::is_named({"9D5MPJTB9D5MPJTB9D5MPJTB9C", 1}, id));
  BOOST_TEST(!reckon::is_named({"9D5MPJTB9D5MPJTB9D5MPJTB9C0", 1}, id));
  BOOST_TEST(!reckon::is_named({"9D5MQ", 1}, id));
  BOOST_TEST(!reckon::is_named({"9D5MP", 2}, id));
  BOOST_TEST(!reckon::is_named({"", 1}, id));
}

BOOST_AUTO_TEST_CASE(a_limit_may_take_the_place_of_an_on_condition_statement) {
  support::Book book;
  const logbook::EntryId old = book.say("2025-01-01", on_condition(engine));
  book.say(instead("2025-02-01", limit(engine, {hours("3000.0", Basis::new_)}), old));
  BOOST_TEST(rules(book, "2025-01-31").conditions.size() == 1U);
  BOOST_TEST(rules(book, "2025-02-01").conditions.empty());
  BOOST_TEST(rules(book, "2025-02-01").limits.size() == 1U);
}

BOOST_AUTO_TEST_CASE(what_is_about_another_subject_replaces_nothing) {
  support::Book book;
  const logbook::EntryId old =
      book.say("2025-01-01", limit(engine, {hours("3000.0", Basis::new_)}));
  book.say(instead("2025-02-01", limit(kit, {hours("9000.0", Basis::new_)}), old));
  BOOST_TEST(rules(book, "2025-02-01").limits.size() == 2U);
}

BOOST_AUTO_TEST_CASE(a_chain_of_revisions_leaves_the_newest_and_remembers_the_others) {
  support::Book book;
  const logbook::EntryId first = book.say("2025-01-01", task("check", kit, {hours("100.0")}));
  const logbook::EntryId second =
      book.say(instead("2025-02-01", task("check", kit, {hours("200.0")}), first));
  book.say(instead("2025-03-01", task("check", kit, {hours("300.0")}), second));
  const reckon::RulesInForce held = rules(book, "2025-03-01");
  BOOST_REQUIRE(held.tasks.size() == 1U);
  const reckon::TaskInForce& check = held.tasks.front();
  BOOST_CHECK(check.on(support::day("2024-06-01")).every.front() == hours("100.0"));
  BOOST_CHECK(check.on(support::day("2025-02-28")).every.front() == hours("200.0"));
  BOOST_CHECK(check.on(support::day("2025-03-01")).every.front() == hours("300.0"));
}

BOOST_AUTO_TEST_CASE(an_end_reaches_what_was_declared_before_it) {
  support::Book book;
  book.say("2025-01-01", task("check", kit, {hours("100.0")}));
  book.say("2025-01-01", task("wash", kit, {hours("50.0")}));
  book.say("2025-02-01", ends("check", kit));
  BOOST_TEST(rules(book, "2025-01-31").tasks.size() == 2U);
  BOOST_TEST(rules(book, "2025-02-01").tasks.size() == 1U);
  book.say("2025-02-02", task("check", kit, {hours("100.0")}));
  BOOST_TEST(rules(book, "2025-02-02").tasks.size() == 2U);
}

BOOST_AUTO_TEST_SUITE_END()
