#include "reckon/standing.h"

#include <boost/test/unit_test.hpp>

#include "support/entries.h"

using support::Book;
using support::day;
using support::flew;

BOOST_AUTO_TEST_SUITE(standing_facts)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");

std::vector<std::string> flown(const reckon::Standing& standing) {
  std::vector<std::string> hours;
  for (const reckon::StandingFact& fact : standing.facts) {
    const auto* one = std::get_if<logbook::Flew>(&fact.said->fact);
    if (one != nullptr) hours.push_back(quantity::say(one->hours));
  }
  return hours;
}

std::vector<std::string> flown(const Book& book, const std::string& as_of = "2026-12-31") {
  return flown(reckon::standing(book.entries(), day(as_of)));
}

using Texts = std::vector<std::string>;

}  // namespace

BOOST_AUTO_TEST_CASE(facts_stand_by_day_and_then_as_they_were_written) {
  Book book;
  book.say("2026-03-05", flew(kit, "0.9"));
  book.say("2026-03-03", flew(kit, "1.2"));
  book.say("2026-03-05", flew(kit, "0.4"));
  BOOST_TEST(flown(book) == (Texts{"1.2", "0.9", "0.4"}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(the_newest_correction_gives_the_value) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  const auto second = book.correct(first, "2026-03-04", flew(kit, "1.8"));
  const auto third = book.correct(second, "2026-03-05", flew(kit, "1.7"));
  const auto standing = reckon::standing(book.entries(), day("2026-12-31"));
  BOOST_REQUIRE_EQUAL(standing.facts.size(), 1U);
  BOOST_TEST(flown(standing) == Texts{"1.7"}, boost::test_tools::per_element());
  BOOST_CHECK(standing.facts[0].root == first);
  BOOST_CHECK(standing.facts[0].chain == (std::vector{first, second, third}));
  BOOST_CHECK(standing.questions.empty());
}

BOOST_AUTO_TEST_CASE(a_strike_of_the_first_entry_takes_its_corrections_with_it) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  book.correct(first, "2026-03-04", flew(kit, "1.8"));
  book.strike(first);
  const auto standing = reckon::standing(book.entries(), day("2026-12-31"));
  BOOST_CHECK(standing.facts.empty());
  BOOST_CHECK_EQUAL(standing.struck.size(), 1U);
  BOOST_CHECK(standing.questions.empty());
}

BOOST_AUTO_TEST_CASE(a_strike_of_a_correction_brings_the_value_before_it_back) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  const auto second = book.correct(first, "2026-03-04", flew(kit, "1.8"));
  const auto third = book.correct(second, "2026-03-04", flew(kit, "1.9"));
  book.strike(third);
  BOOST_TEST(flown(book) == Texts{"1.8"}, boost::test_tools::per_element());
  book.strike(second);
  BOOST_TEST(flown(book) == Texts{"1.3"}, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_strike_of_a_strike_brings_back_what_it_struck) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  book.correct(first, "2026-03-04", flew(kit, "1.8"));
  const auto strike = book.strike(first);
  const auto back = book.strike(strike);
  BOOST_TEST(flown(book) == Texts{"1.8"}, boost::test_tools::per_element());
  book.strike(back);
  BOOST_TEST(flown(book).empty());
}

BOOST_AUTO_TEST_CASE(facts_of_later_days_are_left_out_but_corrections_have_no_day) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  book.correct(first, "2026-03-09", flew(kit, "1.8"));
  BOOST_TEST(flown(book, "2026-03-08").empty());
  BOOST_TEST(flown(book, "2026-03-09") == Texts{"1.8"}, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(two_corrections_made_apart_are_a_question) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  book.write_as('M');
  book.hear();
  book.correct(first, "2026-03-04", flew(kit, "1.9"));
  book.write_as('K');
  book.correct(first, "2026-03-04", flew(kit, "1.8"));
  const auto standing = reckon::standing(book.entries(), day("2026-12-31"));
  BOOST_TEST(flown(standing) == Texts{"1.9"}, boost::test_tools::per_element());
  BOOST_REQUIRE_EQUAL(standing.questions.size(), 1U);
  BOOST_CHECK_EQUAL(standing.questions[0].class_, "two corrections");
  BOOST_CHECK_EQUAL(standing.questions[0].name.size(), 4U);
  BOOST_CHECK(standing.questions[0].about == std::vector<logbook::Thing>{kit});
}

BOOST_AUTO_TEST_CASE(a_correction_that_the_striker_did_not_know_counts_and_is_asked_about) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  book.write_as('M');
  book.hear();
  book.correct(first, "2026-03-04", flew(kit, "1.9"));
  book.write_as('K');
  book.strike(first);
  const auto standing = reckon::standing(book.entries(), day("2026-12-31"));
  BOOST_TEST(flown(standing) == Texts{"1.9"}, boost::test_tools::per_element());
  BOOST_REQUIRE_EQUAL(standing.questions.size(), 1U);
  BOOST_CHECK_EQUAL(standing.questions[0].class_, "struck and corrected");
}

BOOST_AUTO_TEST_CASE(an_entry_that_cannot_be_read_is_told_and_does_not_count) {
  Book book;
  book.say("2026-03-04", flew(kit, "1.3"));
  std::vector<logbook::Entry> entries = book.entries();
  entries[0].said.reset();
  const auto standing = reckon::standing(entries, day("2026-12-31"));
  BOOST_CHECK(standing.facts.empty());
  BOOST_CHECK_EQUAL(standing.unread.size(), 1U);
}

BOOST_AUTO_TEST_CASE(a_strike_of_an_entry_that_has_not_arrived_is_a_question) {
  Book book;
  const auto first = book.say("2026-03-04", flew(kit, "1.3"));
  book.strike(first);
  std::vector<logbook::Entry> entries = book.entries();
  entries.erase(entries.begin());
  const auto standing = reckon::standing(entries, day("2026-12-31"));
  BOOST_REQUIRE_EQUAL(standing.questions.size(), 1U);
  BOOST_CHECK_EQUAL(standing.questions[0].class_, "names an entry that is not here");
}

BOOST_AUTO_TEST_SUITE_END()
