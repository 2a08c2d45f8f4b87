// The entry that a correction or strike changes, where its frame does not say it in full: by the
// short name, if only one entry has it; never by a guess (record-language: what a name means is
// fixed by refers; principle 6: what has two readings is never taken).
#include <boost/test/unit_test.hpp>

#include "reckon/entry_named.h"
#include "reckon/standing.h"
#include "support/entries.h"
#include "told.h"

using support::Book;
using support::flew;
using support::forward;

BOOST_AUTO_TEST_SUITE(named_in_short)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");

logbook::Corrected& correction(std::vector<logbook::Entry>& entries) {
  return std::get<logbook::Corrected>(entries.back().said->fact);
}

// Two bases that each wrote a flight as their second entry, and a correction of the first of them.
std::vector<logbook::Entry> two_bases() {
  Book book;
  book.say("2025-03-01", forward(kit, "100.0"));
  const auto flight = book.say("2025-03-02", flew(kit, "1.0"));
  book.write_as('M');
  book.say("2025-03-01", support::unaccounted(kit, "0.5"));
  book.say("2025-03-03", flew(kit, "2.0"));
  book.write_as('K');
  book.correct(flight, "2025-03-02", flew(kit, "1.7"));
  auto entries = book.entries();
  correction(entries).entry.writer = reckon::writer_letters(flight.writer, 5);
  return entries;
}
std::string hours(const std::vector<logbook::Entry>& entries) {
  const auto today = support::day("2025-03-10");
  const reckon::Standing standing = reckon::standing(entries, today);
  const reckon::Histories histories(standing, today, reckon::Ambiguous::early);
  return told::text(histories.total(kit, reckon::service_clock, histories.now()).figure);
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_frame_says_it_in_full) {
  BOOST_TEST(hours(two_bases()) == "104.2");  // 100 + 0.5 + 1.7 + 2
}

BOOST_AUTO_TEST_CASE(a_frame_that_is_silent_leaves_the_name) {
  auto entries = two_bases();
  entries.back().frame.refers.clear();
  BOOST_TEST(hours(entries) == "104.2");
}

BOOST_AUTO_TEST_CASE(of_several_that_the_frame_names_the_one_of_the_name_is_meant) {
  auto entries = two_bases();
  entries.back().frame.refers = {entries.at(1).id, entries.at(3).id};
  BOOST_TEST(hours(entries) == "104.2");
}

BOOST_AUTO_TEST_CASE(a_name_that_two_entries_have_changes_neither) {
  auto entries = two_bases();
  entries.back().frame.refers.clear();
  correction(entries).entry.writer = "9";  // the first letter of both
  BOOST_TEST(hours(entries) == "103.5");
  entries.back().frame.refers = {entries.at(1).id, entries.at(3).id};
  BOOST_TEST(hours(entries) == "103.5");
}

BOOST_AUTO_TEST_CASE(a_name_that_no_entry_has_changes_nothing) {
  auto entries = two_bases();
  entries.back().frame.refers.clear();
  correction(entries).entry.number = 77;
  BOOST_TEST(hours(entries) == "103.5");
}

BOOST_AUTO_TEST_SUITE_END()
