// What was done to a book behind our back is found, and the entry named. The triggers are dropped
// first, as someone would who means it.
#include <boost/test/unit_test.hpp>
#include <set>

#include "sentence/frame.h"
#include "store/desk.h"

namespace {

using desk::Folder;

constexpr const char* without_guards =
    "DROP TRIGGER IF EXISTS entry_is_never_changed; "
    "DROP TRIGGER IF EXISTS entry_is_never_removed; "
    "DROP TRIGGER IF EXISTS entry_stands_once; "
    "DROP TRIGGER IF EXISTS own_entry_follows_the_newest; ";

// A book of five entries: the record, two flights, a strike of the first, a flight.
struct Checked {
  Checked() {
    auto book = desk::make(folder);
    writer = sentence::short_writer(book.writer());
    desk::write(book, desk::flew(60));
    desk::write(book, desk::flew(66));
    desk::write(book, desk::struck(writer, 2));
    desk::write(book, desk::flew(72));
  }
  // What is found after the deed, as "chain 3", each once; "whole" if nothing is. That the guards
  // are gone is found each time, and left out here.
  std::string after(const std::string& deed) const {
    BOOST_REQUIRE(desk::run_sql(folder.path("the.book"), without_guards + deed) == "");
    const auto book = desk::open(folder, "the.book", store::Access::read);
    std::set<std::string> found;
    for (const auto& finding : book.check()) {
      if (finding.what == "layout") continue;
      found.insert(finding.what +
                   (finding.entry ? " " + std::to_string(finding.entry->number) : ""));
    }
    std::string words;
    for (const auto& one : found) words += (words.empty() ? "" : ", ") + one;
    return words.empty() ? "whole" : words;
  }
  Folder folder;
  std::string writer;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(checking, Checked)

BOOST_AUTO_TEST_CASE(nothing_is_found_in_a_sound_book) { BOOST_TEST(after("") == "whole"); }

// Each kind of what stands in sqlite_schema (sqlite.org/schematab.html).
BOOST_AUTO_TEST_CASE(guards_that_are_missing_or_foreign_are_found) {
  const auto found = [&](const std::string& deed) {
    BOOST_REQUIRE(desk::run_sql(folder.path("the.book"), deed) == "");
    const auto book = desk::open(folder, "the.book", store::Access::read);
    std::string words;
    for (const auto& finding : book.check()) words += finding.what + ": " + finding.detail + "; ";
    return words;
  };
  BOOST_TEST(found("ANALYZE") == "");
  BOOST_TEST(found("DROP VIEW record_line") == "layout: the view record_line is missing; ");
  BOOST_TEST(found("CREATE VIEW record_line AS SELECT 1") ==
             "layout: the view record_line was changed; ");
  BOOST_TEST(found("CREATE INDEX other ON arrived (at)") ==
             "layout: the view record_line was changed; layout: the index other does not belong to "
             "a book; ");
}

BOOST_AUTO_TEST_CASE(a_changed_figure_is_found) {
  BOOST_TEST(after("UPDATE entry SET sentence = replace(sentence, '1.1', '1.7') "
                   "WHERE number = 3") == "chain 3");
}

BOOST_AUTO_TEST_CASE(a_changed_frame_is_found) {
  BOOST_TEST(after("UPDATE entry SET written = written + 1 WHERE number = 3") == "chain 3");
  BOOST_TEST(after("UPDATE entry SET about = 'aircraft:ZZ-MOB' WHERE number = 5") ==
             "about 5, chain 3, chain 5");
}

BOOST_AUTO_TEST_CASE(a_changed_digest_is_found_in_the_entry_and_in_the_next_one) {
  BOOST_TEST(after("UPDATE entry SET digest = randomblob(32) WHERE number = 3") ==
             "arrived 3, chain 3, chain 4");
}

BOOST_AUTO_TEST_CASE(a_removed_entry_is_found) {
  BOOST_TEST(after("DELETE FROM entry WHERE number = 3") == "arrived 3, gap 4");
}

BOOST_AUTO_TEST_CASE(a_tail_that_was_cut_off_is_missed_among_the_arrivals) {
  BOOST_TEST(after("DELETE FROM entry WHERE number = 5") == "arrived 5");
}

BOOST_AUTO_TEST_CASE(two_entries_that_changed_places_are_found) {
  BOOST_TEST(after("UPDATE entry SET number = 99 WHERE number = 3; "
                   "UPDATE entry SET number = 3 WHERE number = 5; "
                   "UPDATE entry SET number = 5 WHERE number = 99")
                 .find("chain 3") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_sentence_that_cannot_be_read_is_found) {
  BOOST_TEST(after("UPDATE entry SET sentence = 'Nothing of the kind.' WHERE number = 5") ==
             "chain 5, sentence 5");
}

BOOST_AUTO_TEST_CASE(an_entry_that_refers_elsewhere_is_found) {
  BOOST_TEST(after("UPDATE entry SET refers = '-' WHERE number = 4") == "chain 4, refers 4");
}

BOOST_AUTO_TEST_CASE(a_frame_that_is_none_is_found) {
  BOOST_TEST(after("UPDATE entry SET knows = 'nobody' WHERE number = 4") == "derived 4, frame 4");
}

BOOST_AUTO_TEST_CASE(a_forged_second_entry_is_found) {
  BOOST_TEST(after("INSERT INTO entry SELECT writer, number, randomblob(32), previous, written, "
                   "language, about, knows, refers, signature, sentence FROM entry "
                   "WHERE number = 5")
                 .find("fork 5") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_derived_row_that_no_entry_makes_is_found) {
  BOOST_TEST(after("UPDATE mention SET day = day + 1 "
                   "WHERE entry = 1") == "derived 1");
}

BOOST_AUTO_TEST_CASE(a_withheld_body_leaves_the_chain_whole) {
  const auto book = desk::open(folder, "the.book", store::Access::read);
  BOOST_TEST(book.check().empty());
  // The body digest of the newest flight, by the way the record page tells.
  const auto entry = book.entries({}).back();
  const auto sum = desk::shell("printf '%s\\n' 'aircraft:ZZ-KIT' '" + entry.sentence +
                               "' | sha256sum | cut -c 1-64");
  BOOST_TEST(after("UPDATE entry SET about = '-', sentence = 'withheld " + sum.substr(0, 64) +
                   "' WHERE number = 5") == "whole");
  BOOST_TEST(!desk::open(folder).entries({}).back().said);
}

BOOST_AUTO_TEST_SUITE_END()
