// A book that this machine has not written is proved before anything in it is believed
// (sqlite.org/security.html: quick_check first; sqlite.org/pragma.html: foreign_key_check besides);
// one that it knows opens without.
#include <boost/test/unit_test.hpp>
#include <fstream>

#include "store/desk.h"

namespace {

using desk::Folder;
namespace files = std::filesystem;

constexpr const char* harmless = "CREATE INDEX more ON entry (written)";

struct Elsewhere {
  Elsewhere() {
    auto book = desk::make(folder);
    for (int i = 0; i < 40; ++i) desk::write(book, desk::flew(60 + 6 * i));
  }
  void deed(const std::string& sql) const {
    BOOST_REQUIRE(desk::run_sql(folder.path("the.book"), sql) == "");
  }
  void unguarded(const std::string& sql) const {
    BOOST_REQUIRE(desk::run_unguarded(folder.path("the.book"), sql) == "");
  }
  // What a machine without any mark says, and in which words.
  std::string refusal(store::Access access = store::Access::read) const {
    auto surroundings = folder.surroundings();
    surroundings.state_folder = folder.path("another machine");
    try {
      store::Book::open(folder.path("the.book"), access, surroundings);
    } catch (const store::Trouble& trouble) {
      return desk::name_of(trouble.what().kind) + ": " + trouble.what().detail;
    }
    return "none";
  }
  std::string here() const {
    return desk::trouble_of([&] { desk::open(folder); });
  }
  Folder folder;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(elsewhere, Elsewhere)

BOOST_AUTO_TEST_CASE(a_sound_book_is_opened_for_reading_and_writing) {
  BOOST_TEST(refusal() == "none");
  BOOST_TEST(refusal(store::Access::write) == "none");
}

BOOST_AUTO_TEST_CASE(what_no_book_has_is_refused_by_name) {
  deed(harmless);
  BOOST_TEST(refusal() == "not_proved: it holds the index more, which no book has");
  BOOST_TEST(refusal(store::Access::write) == refusal());
  BOOST_TEST(refusal(store::Access::prove) == "none");
  BOOST_TEST(here() == "none");
}

BOOST_AUTO_TEST_CASE(a_trigger_more_is_refused) {
  deed("CREATE TRIGGER creeps AFTER INSERT ON entry BEGIN DELETE FROM printed; END");
  BOOST_TEST(refusal() == "not_proved: it holds the trigger creeps, which no book has");
}

BOOST_AUTO_TEST_CASE(a_view_more_is_refused) {
  deed(
      "CREATE VIEW endless AS WITH RECURSIVE n(i) AS (VALUES (1) UNION ALL SELECT i + 1 FROM n) "
      "SELECT i FROM n");
  BOOST_TEST(refusal() == "not_proved: it holds the view endless, which no book has");
}

BOOST_AUTO_TEST_CASE(a_guard_less_is_refused) {
  deed("DROP TRIGGER entry_is_never_changed");
  BOOST_TEST(refusal() == "not_proved: it lacks the trigger entry_is_never_changed");
}

BOOST_AUTO_TEST_CASE(a_guard_that_guards_nothing_is_refused) {
  deed(
      "DROP TRIGGER entry_is_never_changed; "
      "CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry BEGIN SELECT 1; END");
  BOOST_TEST(refusal() == "not_proved: the trigger entry_is_never_changed is not as a book has it");
}

// With the guards put back, only the chain tells.
BOOST_AUTO_TEST_CASE(a_changed_entry_is_refused_by_its_name) {
  unguarded("UPDATE entry SET sentence = replace(sentence, '1.1', '1.7') WHERE number = 3");
  BOOST_TEST(refusal().starts_with("not_proved: "), refusal());
  BOOST_TEST(refusal().ends_with("-3, its digest does not follow from what it says"), refusal());
  BOOST_TEST(refusal(store::Access::write) == refusal());
  BOOST_TEST(refusal(store::Access::prove) == "none");
  BOOST_TEST(here() == "none");
}

BOOST_AUTO_TEST_CASE(an_entry_taken_out_of_the_own_chain_is_refused) {
  unguarded(
      "PRAGMA foreign_keys = OFF; DELETE FROM mention WHERE entry = 5; "
      "DELETE FROM arrival_digest WHERE entry = 5; DELETE FROM arrived WHERE number = 5; "
      "DELETE FROM entry WHERE number = 5");
  BOOST_TEST(refusal().ends_with("-6, the entries before it are missing"), refusal());
}

BOOST_AUTO_TEST_CASE(a_changed_entry_of_a_newer_book_is_refused) {
  unguarded(
      "UPDATE entry SET sentence = replace(sentence, '1.1', '1.7') WHERE number = 3; "
      "PRAGMA user_version = 2");
  BOOST_TEST(refusal().ends_with("-3, its digest does not follow from what it says"), refusal());
}

// What is derived locks nobody out: it is told by the check, and made anew by the next writing.
BOOST_AUTO_TEST_CASE(a_list_of_proofs_that_was_added_to_is_found_and_made_anew) {
  deed("INSERT INTO proof VALUES (3, '" + std::string(64, 'a') + "')");
  BOOST_TEST(desk::found_in(folder, "the.book") == "derived");
  BOOST_TEST(refusal() == "none");
  auto surroundings = folder.surroundings();
  surroundings.state_folder = folder.path("another machine");
  auto book = store::Book::open(folder.path("the.book"), store::Access::write, surroundings);
  store::Pen(book).commit();
  BOOST_TEST(desk::ask_sql(folder.path("the.book"), "SELECT count(*) FROM proof") == "0");
}

// A number in the header must hide nothing that we know to be ours.
BOOST_AUTO_TEST_CASE(the_guards_and_tables_of_a_newer_book_are_looked_at) {
  deed("CREATE TABLE later (a); PRAGMA user_version = 2");
  BOOST_TEST(desk::found_in(folder, "the.book") == "whole");
  deed("DROP TRIGGER entry_is_never_changed");
  BOOST_TEST(desk::found_in(folder, "the.book") == "guard");
  deed("ALTER TABLE arrived ADD COLUMN more TEXT");
  BOOST_TEST(desk::found_in(folder, "the.book") == "guard, schema");
}

BOOST_AUTO_TEST_CASE(a_table_that_is_a_view_is_never_read) {
  deed("ALTER TABLE arrived RENAME TO was; CREATE VIEW arrived AS SELECT * FROM was");
  for (const auto access : {store::Access::read, store::Access::write, store::Access::prove}) {
    BOOST_TEST(refusal(access) == "damaged: it has no table arrived");
  }
}

BOOST_AUTO_TEST_CASE(a_derived_table_that_is_a_view_is_refused) {
  deed("DROP TABLE reading; CREATE VIEW reading AS SELECT * FROM thing");
  BOOST_TEST(refusal() == "not_proved: the table reading is not as a book has it");
}

BOOST_AUTO_TEST_CASE(a_reference_that_leads_nowhere_is_refused) {
  deed("PRAGMA foreign_keys = OFF; UPDATE mention SET entry = 9999 WHERE entry = 1");
  BOOST_TEST(refusal() == "not_proved: a row of the table mention leads nowhere");
}

BOOST_AUTO_TEST_CASE(a_page_that_was_written_over_is_refused) {
  const auto path = folder.path("the.book");
  const auto page = std::stol(desk::ask_sql(path, "PRAGMA page_size"));
  const auto root =
      std::stol(desk::ask_sql(path, "SELECT rootpage FROM sqlite_schema WHERE name = 'entry'"));
  std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
  file.seekp((root - 1) * page);
  file << std::string(static_cast<std::size_t>(page), '\x5A');
  file.close();
  const std::string told = refusal();
  BOOST_TEST((told.starts_with("not_proved") || told.starts_with("damaged")), told);
}

BOOST_AUTO_TEST_CASE(a_newer_book_from_elsewhere_is_read_and_not_written) {
  deed("CREATE TABLE later (a); PRAGMA user_version = 2");
  BOOST_TEST(refusal() == "none");
  BOOST_TEST(refusal(store::Access::write) == "newer_book: ");
}

BOOST_AUTO_TEST_CASE(a_book_without_a_version_is_damaged) {
  deed("PRAGMA user_version = 0");
  BOOST_TEST(refusal() == "damaged: its tables have no version");
}

// Older versions had fewer derived tables, or other ones.
BOOST_AUTO_TEST_CASE(other_derived_tables_are_made_anew_by_the_first_writing) {
  deed("DROP TABLE mention; DROP TABLE use; CREATE TABLE use (a INTEGER) STRICT");
  BOOST_TEST(refusal() == "none");
  auto book = desk::open(folder);
  BOOST_TEST(!book.has_our_derived_form());
  const auto found = book.check();
  BOOST_REQUIRE(found.size() == 2U);
  BOOST_TEST(found.front().what == "form");
  {
    store::Pen pen(book);
    BOOST_TEST(pen.must_derive_anew());
    pen.append(desk::flew(90));
    pen.commit();
    BOOST_TEST(!pen.must_derive_anew());
  }
  BOOST_TEST(book.has_our_derived_form());
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_SUITE_END()
