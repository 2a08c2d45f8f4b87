// What is wrong with a file or a disk, told as one kind of trouble each, and nothing half written.
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <fstream>

#include "sentence/frame.h"
#include "store/desk.h"

namespace {

using desk::Folder;
namespace files = std::filesystem;

std::string opening(const Folder& folder, const std::string& name,
                    store::Access access = store::Access::write) {
  return desk::trouble_of([&] { desk::open(folder, name, access); });
}

std::string writing(const Folder& folder, const std::string& name = "the.book") {
  return desk::trouble_of([&] {
    auto book = desk::open(folder, name);
    desk::write(book, desk::flew(60));
  });
}

// The outcome of an act by someone who is not the owner of everything. The superuser may write
// anywhere, so the act is done by a child that gave that up.
template <class Act>
std::string as_an_ordinary_user(const Folder& folder, Act act) {
  constexpr uid_t nobody = 65534;
  const std::string answer = folder.path("answer");
  const bool is_superuser = ::geteuid() == 0;
  if (is_superuser) {
    for (const auto& file : files::recursive_directory_iterator(folder.path(""))) {
      BOOST_REQUIRE(::chown(file.path().c_str(), nobody, nobody) == 0);
    }
    BOOST_REQUIRE(::chown(folder.path("").c_str(), nobody, nobody) == 0);
  }
  const int pipe_end = ::open(answer.c_str(), O_CREAT | O_TRUNC | O_WRONLY, 0666);
  const pid_t child = ::fork();
  if (child == 0) {
    if (is_superuser && ::setuid(nobody) != 0) ::_exit(1);
    const std::string words = act();
    const bool is_written = ::write(pipe_end, words.data(), words.size()) >= 0;
    ::_exit(is_written ? 0 : 1);
  }
  ::close(pipe_end);
  int status = -1;
  ::waitpid(child, &status, 0);
  BOOST_TEST(status == 0);
  std::string words;
  std::ifstream(answer) >> words;
  return words;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(trouble)

BOOST_AUTO_TEST_CASE(a_book_is_never_made_over_another_file) {
  const Folder folder;
  desk::make(folder);
  const auto line = desk::ask_sql(folder.path("the.book"), "SELECT line FROM record_line");
  BOOST_TEST(desk::trouble_of([&] { desk::make(folder); }) == "already_there");
  BOOST_TEST(desk::ask_sql(folder.path("the.book"), "SELECT line FROM record_line") == line);
  std::ofstream(folder.path("letter.txt")) << "Dear all";
  BOOST_TEST(desk::trouble_of([&] { desk::make(folder, "letter.txt"); }) == "already_there");
  files::create_symlink("nowhere", folder.path("link"));
  BOOST_TEST(desk::trouble_of([&] { desk::make(folder, "link"); }) == "already_there");
}

BOOST_AUTO_TEST_CASE(what_is_no_book_is_not_opened) {
  const Folder folder;
  BOOST_TEST(opening(folder, "none.book") == "no_such_book");
  BOOST_TEST(opening(folder, "none/none.book") == "no_such_book");
  std::ofstream(folder.path("letter.txt")) << std::string(5000, 'x');
  std::ofstream(folder.path("empty.book"));
  files::create_directory(folder.path("folder.book"));
  desk::run_sql(folder.path("other.db"), "CREATE TABLE entry (a)");
  for (const std::string name : {"letter.txt", "empty.book", "folder.book", "other.db"}) {
    BOOST_TEST(opening(folder, name) == "not_a_book", name);
    BOOST_TEST(opening(folder, name, store::Access::read) == "not_a_book", name);
  }
  BOOST_TEST(files::file_size(folder.path("empty.book")) == 0U);
}

BOOST_AUTO_TEST_CASE(a_book_of_a_newer_version_is_only_read) {
  const Folder folder;
  desk::make(folder);
  desk::run_sql(folder.path("the.book"), "PRAGMA user_version = 2");
  BOOST_TEST(opening(folder, "the.book") == "newer_book");
  const auto book = desk::open(folder, "the.book", store::Access::read);
  BOOST_TEST(book.is_of_newer_version());
  BOOST_TEST(book.entries({}).size() == 1);
}

BOOST_AUTO_TEST_CASE(a_book_with_two_names_is_only_read) {
  const Folder folder;
  desk::make(folder);
  files::create_hard_link(folder.path("the.book"), folder.path("second.book"));
  BOOST_TEST(opening(folder, "second.book") == "not_allowed");
  BOOST_TEST(opening(folder, "second.book", store::Access::read) == "none");
}

BOOST_AUTO_TEST_CASE(in_a_read_only_folder_a_book_is_read_and_nothing_is_written) {
  const Folder folder;
  { desk::make(folder, "papers/the.book"); }
  BOOST_REQUIRE(::chmod(folder.path("papers").c_str(), 0500) == 0);
  const std::string name = "papers/the.book";
  BOOST_TEST(as_an_ordinary_user(folder, [&] { return writing(folder, name); }) == "cannot_write");
  BOOST_TEST(as_an_ordinary_user(
                 folder, [&] { return opening(folder, name, store::Access::read); }) == "none");
  const auto book = desk::open(folder, name, store::Access::read);
  BOOST_TEST(book.entries({}).size() == 1);
  BOOST_REQUIRE(::chmod(folder.path("papers").c_str(), 0700) == 0);
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_CASE(a_read_only_book_is_read_and_nothing_is_written) {
  const Folder folder;
  { desk::make(folder); }
  BOOST_REQUIRE(::chmod(folder.path("the.book").c_str(), 0400) == 0);
  BOOST_TEST(as_an_ordinary_user(folder, [&] { return writing(folder); }) == "cannot_write");
  BOOST_TEST(desk::open(folder, "the.book", store::Access::read).entries({}).size() == 1);
}

BOOST_AUTO_TEST_CASE(a_file_that_may_not_be_read_is_not_allowed) {
  const Folder folder;
  { desk::make(folder); }
  BOOST_REQUIRE(::chmod(folder.path("the.book").c_str(), 0) == 0);
  BOOST_TEST(as_an_ordinary_user(folder, [&] {
               return opening(folder, "the.book", store::Access::read);
             }) == "not_allowed");
}

BOOST_AUTO_TEST_CASE(without_a_place_for_the_mark_nothing_is_written) {
  const Folder folder;
  desk::make(folder);
  std::ofstream(folder.path("letter.txt")) << "Dear all";
  auto surroundings = folder.surroundings();
  surroundings.state_folder = folder.path("letter.txt");
  auto book = store::Book::open(folder.path("the.book"), store::Access::write, surroundings);
  BOOST_TEST(desk::trouble_of([&] { desk::write(book, desk::flew(60)); }) == "no_place_for_mark");
  BOOST_TEST(book.entries({}).size() == 1);
  BOOST_TEST(desk::trouble_of([&] {
               store::Book::create(folder.path("new.book"), desk::begins(), surroundings);
             }) == "no_place_for_mark");
  BOOST_TEST(!files::exists(folder.path("new.book")));
}

BOOST_AUTO_TEST_CASE(a_book_that_another_command_holds_is_in_use) {
  const Folder folder;
  auto book = desk::make(folder);
  const auto lock = folder.path("state/" + sentence::say_record_id(book.record()) + ".lock");
  const int descriptor = ::open(lock.c_str(), O_RDWR);
  BOOST_REQUIRE(::flock(descriptor, LOCK_EX) == 0);
  BOOST_TEST(desk::trouble_of([&] { desk::write(book, desk::flew(60)); }) == "in_use");
  ::close(descriptor);
  BOOST_TEST(desk::trouble_of([&] { desk::write(book, desk::flew(60)); }) == "none");
}

BOOST_AUTO_TEST_SUITE_END()
