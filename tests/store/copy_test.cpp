// Copies: the same entries, proved before they count, never over another file; and what is known of
// them afterwards. The copy is made by the library's own backup (sqlite.org/backup.html).
#include <boost/test/unit_test.hpp>
#include <fstream>

#include "sentence/frame.h"
#include "store/copied.h"
#include "store/copies.h"
#include "store/desk.h"
#include "store/file.h"
#include "store/place.h"

namespace {

using desk::Folder;
namespace files = std::filesystem;

constexpr std::int64_t hour = 3600;

struct Copying {
  Copying() : book(desk::make(folder)) {
    for (int i = 0; i < 10; ++i) desk::write(book, desk::flew(60 + 6 * i));
  }
  quantity::Instant now(std::int64_t hours = 0) const {
    return quantity::Instant::of(folder.surroundings().now.count() + hours * hour);
  }
  std::string copying(const std::string& name) const {
    return desk::trouble_of([&] { book.copy_to(folder.path(name)); });
  }
  // What lies in the folder by this beginning of a name.
  std::size_t files_like(const std::string& begins) const {
    std::size_t count = 0;
    for (const auto& file : files::directory_iterator(folder.path(""))) {
      if (file.path().filename().string().starts_with(begins)) ++count;
    }
    return count;
  }
  // As if the copy had gone to another disk.
  void remember_elsewhere(const store::Copied& copied, quantity::Instant made) const {
    auto other = copied;
    other.is_elsewhere = true;
    book.remember_copy(other, made);
  }
  Folder folder;
  store::Book book;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(copying_a_book, Copying)

BOOST_AUTO_TEST_CASE(a_copy_holds_the_same_entries) {
  const auto copied = book.copy_to(folder.path("copy.book"));
  BOOST_TEST(copied.entries == 11);
  BOOST_TEST(!copied.is_elsewhere);
  const auto copy = desk::open(folder, "copy.book", store::Access::read);
  BOOST_TEST((copy.entry_ids() == book.entry_ids()));
  BOOST_TEST(copy.check().empty());
  BOOST_TEST(files_like("copy.book") == 1U);
  const auto all = files::perms::group_all | files::perms::others_all;
  BOOST_TEST(((files::status(folder.path("copy.book")).permissions() & all) == files::perms::none));
}

BOOST_AUTO_TEST_CASE(a_copy_is_never_made_over_another_file) {
  std::ofstream(folder.path("letter.txt")) << "Dear all";
  BOOST_TEST(copying("letter.txt") == "already_there");
  BOOST_TEST(copying("the.book") == "already_there");
  BOOST_TEST(files::file_size(folder.path("letter.txt")) == 8U);
}

// sqlite.org/howtocorrupt.html 1.4: a journal is written back into whatever file has its name.
BOOST_AUTO_TEST_CASE(a_copy_is_never_made_beside_a_journal_of_its_name) {
  for (const std::string ending : {"-journal", "-wal", "-shm"}) {
    const auto left = folder.path("copy.book" + ending);
    std::ofstream(left) << "left by a crash";
    BOOST_TEST(copying("copy.book") == "already_there", ending);
    BOOST_TEST(files_like("copy.book") == 1U, ending);
    BOOST_TEST(files::file_size(left) == 15U, ending);
    files::remove(left);
    BOOST_TEST(copying("copy" + ending) == "not_allowed", ending);
    BOOST_TEST(files_like("copy" + ending) == 0U, ending);
  }
}

BOOST_AUTO_TEST_CASE(a_book_is_never_made_beside_a_journal_of_its_name) {
  std::ofstream(folder.path("new.book-journal")) << "left by a crash";
  BOOST_TEST(desk::trouble_of([&] { desk::make(folder, "new.book"); }) == "already_there");
  BOOST_TEST(desk::trouble_of([&] { desk::make(folder, "new.book-wal"); }) == "not_allowed");
  BOOST_TEST(files_like("new.book") == 1U);
}

// A journal that comes while the copy is made is seen before the copy gets its name.
BOOST_AUTO_TEST_CASE(a_file_gets_no_name_beside_a_journal_that_came_meanwhile) {
  const auto path = folder.path("late.book");
  {
    store::NewFile file(path);
    std::ofstream(path + "-journal") << "late";
    BOOST_TEST(desk::trouble_of([&] { file.settle(); }) == "already_there");
  }
  BOOST_TEST(files_like("late.book") == 1U);
}

// tmpfs: statfs(2). What lies in memory is gone with the power.
BOOST_AUTO_TEST_CASE(a_copy_in_memory_is_none_elsewhere,
                     *boost::unit_test::precondition([](boost::unit_test::test_unit_id) {
                       return boost::test_tools::assertion_result(
                           store::lies_on_passing("/dev/shm"));
                     })) {
  std::string name = "/dev/shm/timeworn-XXXXXX";
  const std::string there = ::mkdtemp(name.data());
  const auto copied = book.copy_to(there + "/copy.book");
  files::remove_all(there);
  BOOST_TEST(!store::is_on_same_device("/dev/shm", folder.path("the.book")));
  BOOST_TEST(copied.is_passing);
  BOOST_TEST(!copied.is_elsewhere);
}

// In its own chain a book has no gaps, whatever the guards say now.
BOOST_AUTO_TEST_CASE(a_gap_in_the_own_chain_is_no_whole_copy) {
  BOOST_REQUIRE(desk::run_unguarded(
                    folder.path("the.book"),
                    "PRAGMA foreign_keys = OFF; DELETE FROM mention WHERE entry = 5; "
                    "DELETE FROM arrival_digest WHERE entry = 5; "
                    "DELETE FROM arrived WHERE number = 5; DELETE FROM entry WHERE number = 5") ==
                "");
  BOOST_TEST(desk::found_in(folder, "the.book") == "gap 6");
  BOOST_TEST(copying("copy.book") == "damaged");
  BOOST_TEST(files_like("copy.book") == 0U);
}

BOOST_AUTO_TEST_CASE(what_bases_that_have_not_met_may_have_speaks_against_no_copy) {
  const logbook::WriterId own = book.writer();
  logbook::WriterId other = own;
  other.bytes[0] ^= 1U;
  const auto found = [](const char* what, const logbook::WriterId& writer) {
    return store::Finding{what, logbook::EntryId{writer, 3, {}}, ""};
  };
  const auto against = [&](const store::Finding& one) {
    return store::against_copy({one}, {own}).size();
  };
  BOOST_TEST(against(found("gap", other)) == 0U);
  BOOST_TEST(against(found("gap", own)) == 1U);
  BOOST_TEST(against(found("fork", own)) == 0U);
  BOOST_TEST(against(found("mark", own)) == 0U);
  BOOST_TEST(against(found("chain", other)) == 1U);
}

BOOST_AUTO_TEST_CASE(a_book_that_cannot_be_proved_is_not_copied) {
  desk::run_sql(folder.path("the.book"),
                "DROP TRIGGER entry_is_never_changed; "
                "UPDATE entry SET sentence = replace(sentence, '1.1', '1.7') WHERE number = 3");
  BOOST_TEST(copying("copy.book") == "damaged");
  BOOST_TEST(files_like("copy.book") == 0U);
}

BOOST_AUTO_TEST_CASE(a_copy_is_made_of_a_state_in_which_a_command_was_committed) {
  auto second = desk::open(folder);
  store::Pen pen(second);
  pen.append(desk::flew(90));
  // Not committed yet: the copy is of the state before.
  BOOST_TEST(book.copy_to(folder.path("before.book")).entries == 11);
  pen.commit();
  BOOST_TEST(book.copy_to(folder.path("after.book")).entries == 12);
}

BOOST_AUTO_TEST_CASE(a_copy_is_another_book_as_soon_as_it_is_written) {
  book.copy_to(folder.path("copy.book"));
  auto copy = desk::open(folder, "copy.book");
  BOOST_TEST(copy.goes_on_here());
  desk::write(book, desk::flew(90));
  BOOST_TEST(!desk::open(folder, "copy.book", store::Access::read).goes_on_here());
  desk::write(copy, desk::flew(96));
  BOOST_TEST(copy.began_a_new_writer());
}

// The mark of this machine is ahead of an older file of the book (record integrity, 2.5).
BOOST_AUTO_TEST_CASE(an_older_file_put_back_is_told_where_it_was_written) {
  book.copy_to(folder.path("old.book"));
  desk::write(book, desk::flew(90));
  BOOST_TEST(!desk::open(folder).missing().has_value());
  files::rename(folder.path("old.book"), folder.path("the.book"));

  const auto restored = desk::open(folder, "the.book", store::Access::read);
  BOOST_REQUIRE(restored.missing().has_value());
  BOOST_TEST(restored.missing()->number == 12);
  BOOST_TEST(desk::found_in(folder, "the.book") == "mark 12");
  BOOST_TEST(restored.against_copy().empty());
  // Nobody knows it on another machine.
  auto elsewhere = folder.surroundings();
  elsewhere.state_folder = folder.path("another machine");
  BOOST_TEST(
      store::Book::open(folder.path("the.book"), store::Access::prove, elsewhere).check().empty());
  // From here on it has a name of its own, and says so when it is written.
  auto written = desk::open(folder);
  desk::write(written, desk::flew(96));
  BOOST_TEST(written.began_a_new_writer());
  BOOST_TEST(!written.missing().has_value());
  BOOST_TEST(desk::found_in(folder, "the.book") == "whole");
}

// 24 hours: AMC1 ML.A.305(e) and AMC 21.B.55(a) ask for a copy elsewhere within 24 hours of a new
// entry.
BOOST_AUTO_TEST_CASE(what_lies_in_no_copy_elsewhere_is_counted) {
  BOOST_REQUIRE(book.uncopied().has_value());
  BOOST_TEST(book.uncopied()->entries == 11);
  BOOST_TEST((book.uncopied()->since == now()));
  BOOST_TEST(!book.uncopied()->newest_copy.has_value());

  const auto here = book.copy_to(folder.path("here.book"));
  book.remember_copy(here, now(1));
  BOOST_TEST(book.uncopied()->entries == 11);

  remember_elsewhere(here, now(2));
  BOOST_TEST(!book.uncopied().has_value());

  desk::write(book, desk::flew(90));
  BOOST_REQUIRE(book.uncopied().has_value());
  BOOST_TEST(book.uncopied()->entries == 1);
  BOOST_TEST((book.uncopied()->newest_copy == now(2)));
}

BOOST_AUTO_TEST_CASE(a_copy_of_what_the_book_no_longer_holds_does_not_count) {
  const auto old = book.copy_to(folder.path("old.book"));
  desk::write(book, desk::flew(90));
  remember_elsewhere(book.copy_to(folder.path("lost.book")), now(1));
  // The older copy is put back, and written.
  auto restored = desk::open(folder, "old.book");
  desk::write(restored, desk::flew(96));
  BOOST_TEST(old.entries == 11);
  BOOST_TEST(restored.uncopied()->entries == 12);
}

BOOST_AUTO_TEST_CASE(lines_that_cannot_be_read_are_passed_over) {
  const auto copied = book.copy_to(folder.path("a, b.book"));
  remember_elsewhere(copied, now(1));
  const auto state = folder.surroundings().state_folder;
  const auto file = state + "/" + sentence::say_record_id(book.record()) + ".copies";
  std::ofstream(file, std::ios::app)
      << "2026-03-05T08:00:00Z elsewhere 12 " << std::string(64, 'a') << " 20 /short";
  remember_elsewhere(copied, now(3));
  const auto copies = store::made_copies(state, book.record());
  BOOST_REQUIRE(copies.size() == 2U);
  BOOST_TEST((copies.back().made == now(3)));
  BOOST_TEST(copies.back().path == folder.path("a, b.book"));
  BOOST_TEST(copies.back().place == 11);
}

BOOST_AUTO_TEST_SUITE_END()
