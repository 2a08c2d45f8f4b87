// A journal that was left behind is written back into the file that it came from, and into no other
// (sqlite.org/howtocorrupt.html 1.3, 1.4; sqlite.org/fileformat2.html 3).
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <fstream>

#include "store/desk.h"

namespace {

using desk::Folder;
namespace files = std::filesystem;

// A book, and beside it what a command left that was killed in the middle of its commit: the file
// half written, and the journal to take that back.
struct Killed {
  Killed() {
    {
      auto book = desk::make(folder);
      for (int i = 0; i < 30; ++i) desk::write(book, desk::flew(60 + 6 * i));
    }
    sqlite3* handle = nullptr;
    sqlite3_open(folder.path("the.book").c_str(), &handle);
    // Little room, so that changed pages are written before the end.
    const int result = sqlite3_exec(handle,
                                    "PRAGMA cache_size = 4; PRAGMA cache_spill = 1; BEGIN; "
                                    "UPDATE mention SET day = day + 1; UPDATE thing SET name = "
                                    "name || zeroblob(9000); UPDATE use SET amount = amount + 1; "
                                    "INSERT INTO printed SELECT number, 0, 'due', "
                                    "hex(zeroblob(3000)), 0, '-' FROM entry",
                                    nullptr, nullptr, nullptr);
    BOOST_REQUIRE(result == SQLITE_OK);
    files::copy_file(folder.path("the.book"), folder.path("killed.book"));
    files::copy_file(folder.path("the.book-journal"), folder.path("killed.book-journal"));
    sqlite3_exec(handle, "ROLLBACK", nullptr, nullptr, nullptr);
    sqlite3_close(handle);
  }
  std::string opening(const std::string& name) const {
    return desk::trouble_of([&] { desk::open(folder, name); });
  }
  Folder folder;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(journals, Killed)

BOOST_AUTO_TEST_CASE(the_own_journal_is_written_back) {
  BOOST_REQUIRE(files::file_size(folder.path("killed.book-journal")) > 512U);
  BOOST_TEST(opening("killed.book") == "none");
  BOOST_TEST(!files::exists(folder.path("killed.book-journal")));
  const auto book = desk::open(folder, "killed.book", store::Access::read);
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_CASE(the_journal_of_another_file_is_refused_and_kept) {
  desk::make(folder, "other.book");
  files::copy_file(folder.path("killed.book-journal"), folder.path("other.book-journal"));
  const std::string before = desk::shell("sha256sum < " + folder.path("other.book"));
  BOOST_TEST(opening("other.book") == "not_allowed");
  BOOST_TEST(files::exists(folder.path("other.book-journal")));
  BOOST_TEST(desk::shell("sha256sum < " + folder.path("other.book")) == before);
}

BOOST_AUTO_TEST_CASE(the_journal_of_an_older_state_is_refused) {
  {
    auto book = desk::open(folder);
    desk::write(book, desk::flew(90));
    desk::write(book, desk::flew(96));
  }
  files::copy_file(folder.path("killed.book-journal"), folder.path("the.book-journal"));
  BOOST_TEST(opening("the.book") == "not_allowed");
}

BOOST_AUTO_TEST_CASE(a_journal_without_content_says_nothing) {
  std::ofstream(folder.path("the.book-journal")) << std::string(600, '\0');
  BOOST_TEST(opening("the.book") == "none");
}

// Only the superuser can make a file that belongs to somebody else.
BOOST_AUTO_TEST_CASE(the_journal_of_another_user_is_refused,
                     *boost::unit_test::precondition([](boost::unit_test::test_unit_id) {
                       return boost::test_tools::assertion_result(::geteuid() == 0);
                     })) {
  std::ofstream(folder.path("the.book-journal")) << std::string(600, '\0');
  BOOST_REQUIRE(::chown(folder.path("the.book-journal").c_str(), 65534, 65534) == 0);
  BOOST_TEST(opening("the.book") == "not_allowed");
}

BOOST_AUTO_TEST_CASE(a_reader_is_not_disturbed_by_a_command_that_writes) {
  auto writing = desk::open(folder);
  store::Pen pen(writing);
  pen.append(desk::flew(90));
  BOOST_TEST(files::exists(folder.path("the.book-journal")));
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "the.book", store::Access::read); }) ==
             "none");
  pen.commit();
}

BOOST_AUTO_TEST_SUITE_END()
