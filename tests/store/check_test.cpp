// What was done to a book behind our back is found, and the entry named. The triggers are dropped
// first and put back afterwards, as someone would who means it.
#include <boost/test/unit_test.hpp>

#include "sentence/frame.h"
#include "store/desk.h"
#include "store/trust.h"

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
  // What is found after the deed; the guards are put back.
  std::string after(const std::string& deed) const {
    BOOST_REQUIRE(desk::run_unguarded(folder.path("the.book"), deed) == "");
    return found();
  }
  std::string found() const { return desk::found_in(folder, "the.book"); }
  Folder folder;
  std::string writer;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(checking, Checked)

BOOST_AUTO_TEST_CASE(nothing_is_found_in_a_sound_book) { BOOST_TEST(after("") == "whole"); }

BOOST_AUTO_TEST_CASE(a_changed_time_of_arrival_is_found_and_told_once_more_when_all_is_made_anew) {
  BOOST_TEST(after("UPDATE arrived SET day = day + 1 WHERE number = 3") == "arrived 3");
  BOOST_TEST(after("UPDATE arrived SET at = at - 86400 WHERE number = 5") ==
             "arrived 3, arrived 5");
  auto book = desk::open(folder, "the.book", store::Access::write);
  store::Pen pen(book);
  pen.clear_derived();
  BOOST_TEST_REQUIRE(pen.changed_arrivals().size() == 2U);
  BOOST_TEST(pen.changed_arrivals().front().number == 3);
  BOOST_TEST(pen.changed_arrivals().back().number == 5);
  pen.clear_derived();
  BOOST_TEST(pen.changed_arrivals().size() == 2U);
}

// Another version gave a derived table another form; the digests are ours and still tell.
BOOST_AUTO_TEST_CASE(a_changed_time_of_arrival_is_told_when_other_tables_have_another_form) {
  BOOST_TEST(after("UPDATE arrived SET day = day + 1 WHERE number = 3; DROP TABLE proof") ==
             "arrived 3, form");
  auto book = desk::open(folder, "the.book", store::Access::write);
  const store::Pen pen(book);
  BOOST_TEST_REQUIRE(pen.changed_arrivals().size() == 1U);
  BOOST_TEST(pen.changed_arrivals().front().number == 3);
}

BOOST_AUTO_TEST_CASE(a_guard_that_was_taken_away_is_found) {
  BOOST_REQUIRE(desk::run_sql(folder.path("the.book"), without_guards) == "");
  BOOST_TEST(found() == "guard");
}

BOOST_AUTO_TEST_CASE(a_table_that_is_another_is_found_and_not_asked) {
  BOOST_REQUIRE(desk::run_sql(folder.path("the.book"), "ALTER TABLE entry ADD COLUMN more TEXT") ==
                "");
  BOOST_TEST(found() == "schema");
}

BOOST_AUTO_TEST_CASE(a_quick_check_proves_the_chain_and_leaves_the_words) {
  BOOST_TEST(after("UPDATE mention SET day = day + 1 WHERE entry = 1; "
                   "UPDATE entry SET about = 'aircraft:ZZ-MOB' WHERE number = 5") ==
             "about 5, chain 5, derived 1");
  const auto quick =
      desk::open(folder, "the.book", store::Access::prove).check(store::Depth::quick);
  BOOST_REQUIRE(quick.size() == 1U);
  BOOST_TEST(quick.front().what == "chain");
}

// Whoever looks for longer sees one state, also in what is asked of the book within.
BOOST_AUTO_TEST_CASE(one_look_inside_another_is_of_the_same_state) {
  const auto looked_at = desk::open(folder, "the.book", store::Access::read);
  const store::Look outer(looked_at);
  {
    const store::Look inner(looked_at);
    BOOST_TEST(looked_at.entry_ids().size() == 5U);
  }
  BOOST_TEST(looked_at.check().empty());
  // The outer one still holds its lock: whoever would change the file must wait.
  BOOST_TEST(desk::run_sql(folder.path("the.book"), "PRAGMA user_version = 1") ==
             "database is locked");
}

// Up to which number the chain is proved, for the one base of this book.
BOOST_AUTO_TEST_CASE(what_can_still_be_trusted_ends_before_the_fault) {
  const auto proved = [&](const std::string& deed) {
    after(deed);
    const auto book = desk::open(folder, "the.book", store::Access::prove);
    const auto trusted = store::trust(book.entry_ids(), book.check());
    return trusted.empty() ? -1 : trusted.front().proved;
  };
  BOOST_TEST(proved("") == 5);
  BOOST_TEST(proved("UPDATE entry SET written = written + 1 WHERE number = 4") == 3);
  BOOST_TEST(proved("DELETE FROM entry WHERE number = 2") == 1);
  BOOST_TEST(proved("ALTER TABLE entry ADD COLUMN more TEXT") == -1);
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
  BOOST_TEST(after("DELETE FROM entry WHERE number = 5") == "arrived 5, mark 5");
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
  const auto book = desk::open(folder, "the.book", store::Access::prove);
  BOOST_TEST(book.check().empty());
  // The body digest of the newest flight, by the way the record page tells.
  const auto entry = book.entries({}).back();
  const auto sum = desk::shell("printf '%s\\n' 'aircraft:ZZ-KIT' '" + entry.sentence +
                               "' | sha256sum | cut -c 1-64");
  BOOST_TEST(after("UPDATE entry SET about = '-', sentence = 'withheld " + sum.substr(0, 64) +
                   "' WHERE number = 5") == "whole");
  BOOST_TEST(!desk::open(folder).entries({}).back().said);
}

// A mark that another entry stands in place of: nobody can say from where the chain was made anew.
BOOST_AUTO_TEST_CASE(of_a_chain_that_was_made_anew_nothing_is_called_proved) {
  const auto entries = desk::open(folder).entry_ids();
  logbook::EntryId marked = entries[3];
  marked.digest[0] ^= 1U;
  const auto anew = store::trust(entries, {{"mark", marked, ""}});
  BOOST_TEST_REQUIRE(anew.size() == 1U);
  BOOST_TEST(anew.front().proved == 0);
  BOOST_TEST(anew.front().next == 1);
  // A book that was cut has nothing in its place.
  marked.number = 9;
  BOOST_TEST(store::trust(entries, {{"mark", marked, ""}}).front().proved == 5);
}

BOOST_AUTO_TEST_SUITE_END()
