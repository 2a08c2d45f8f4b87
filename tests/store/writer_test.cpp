// When a book goes on under its writer, and when it has become another book.
#include <boost/test/unit_test.hpp>

#include "sentence/frame.h"
#include "store/desk.h"
#include "store/mark.h"

namespace {

using desk::Folder;
namespace files = std::filesystem;

// Puts an older state of the machine's memory back, as after a command that was killed between its
// commit and its mark.
class MarkBefore {
 public:
  explicit MarkBefore(const Folder& folder) : folder_(folder) {
    files::copy(folder.path("state"), folder.path("before"));
  }
  void put_back() {
    files::remove_all(folder_.path("state"));
    files::copy(folder_.path("before"), folder_.path("state"));
  }

 private:
  const Folder& folder_;
};

}  // namespace

BOOST_AUTO_TEST_SUITE(writer)

BOOST_AUTO_TEST_CASE(a_copy_becomes_a_new_writer_as_soon_as_the_two_differ) {
  const Folder folder;
  const auto writer = desk::make(folder).writer();
  files::copy(folder.path("the.book"), folder.path("copy.book"));

  auto book = desk::open(folder);
  const auto flight = desk::write(book, desk::flew(60));
  BOOST_TEST(!book.began_a_new_writer());

  auto copy = desk::open(folder, "copy.book");
  const auto other = desk::write(copy, desk::flew(66));
  BOOST_TEST(copy.began_a_new_writer());
  BOOST_TEST((other.id.writer != writer));
  BOOST_TEST(other.id.number == 1);
  // It tells whose copy it is: the newest entry that it holds of the writer before.
  BOOST_REQUIRE(other.frame.knows.size() == 1);
  BOOST_TEST((other.frame.knows[0].writer == writer));
  BOOST_TEST(other.frame.knows[0].number == 1);
  BOOST_TEST(copy.check().empty());

  // Both go on by themselves from now on.
  auto copy_again = desk::open(folder, "copy.book");
  const auto next = desk::write(copy_again, desk::flew(72));
  BOOST_TEST(!copy_again.began_a_new_writer());
  BOOST_TEST((next.id.writer == other.id.writer));
  BOOST_TEST(next.frame.knows.empty());
  auto book_again = desk::open(folder);
  BOOST_TEST((desk::write(book_again, desk::flew(78)).id.writer == writer));
  BOOST_TEST(!book_again.began_a_new_writer());
  BOOST_TEST(flight.id.number == 2);
}

BOOST_AUTO_TEST_CASE(a_copy_that_is_used_first_makes_the_other_one_new) {
  const Folder folder;
  const auto writer = desk::make(folder).writer();
  files::copy(folder.path("the.book"), folder.path("copy.book"));
  auto copy = desk::open(folder, "copy.book");
  BOOST_TEST((desk::write(copy, desk::flew(66)).id.writer == writer));
  auto book = desk::open(folder);
  BOOST_TEST((desk::write(book, desk::flew(66)).id.writer != writer));
  BOOST_TEST(book.began_a_new_writer());
}

BOOST_AUTO_TEST_CASE(a_book_that_was_renamed_or_moved_is_the_same_book) {
  const Folder folder;
  const auto writer = desk::make(folder).writer();
  files::create_directory(folder.path("elsewhere"));
  files::rename(folder.path("the.book"), folder.path("elsewhere/other name.book"));
  auto book = desk::open(folder, "elsewhere/other name.book");
  BOOST_TEST((desk::write(book, desk::flew(60)).id.writer == writer));
  BOOST_TEST(!book.began_a_new_writer());
}

BOOST_AUTO_TEST_CASE(an_older_copy_put_back_is_a_new_writer) {
  const Folder folder;
  const auto writer = desk::make(folder).writer();
  auto book = desk::open(folder);
  desk::write(book, desk::flew(60));
  files::copy(folder.path("the.book"), folder.path("kept"));
  desk::write(book, desk::flew(66));
  files::remove(folder.path("the.book"));
  files::copy(folder.path("kept"), folder.path("the.book"));
  auto restored = desk::open(folder);
  BOOST_TEST((desk::write(restored, desk::flew(72)).id.writer != writer));
  BOOST_TEST(restored.began_a_new_writer());
}

BOOST_AUTO_TEST_CASE(the_newest_copy_put_back_is_the_same_writer) {
  const Folder folder;
  const auto writer = desk::make(folder).writer();
  files::rename(folder.path("the.book"), folder.path("kept"));
  files::copy(folder.path("kept"), folder.path("the.book"));
  auto restored = desk::open(folder);
  BOOST_TEST((desk::write(restored, desk::flew(72)).id.writer == writer));
}

BOOST_AUTO_TEST_CASE(a_book_on_another_machine_is_a_new_writer) {
  const Folder folder;
  const auto writer = desk::make(folder).writer();
  auto elsewhere = folder.surroundings();
  elsewhere.state_folder = folder.path("state of the other machine");
  auto book = store::Book::open(folder.path("the.book"), store::Access::write, elsewhere);
  BOOST_TEST((desk::write(book, desk::flew(72)).id.writer != writer));
  BOOST_TEST(book.began_a_new_writer());
}

BOOST_AUTO_TEST_CASE(a_command_killed_after_its_commit_changes_nothing) {
  const Folder folder;
  auto book = desk::make(folder);
  MarkBefore mark(folder);
  {
    store::Pen pen(book);
    for (int i = 1; i <= 3; ++i) pen.append(desk::flew(i * 6));
    pen.commit();
  }
  mark.put_back();
  auto next = desk::open(folder);
  BOOST_TEST((desk::write(next, desk::flew(60)).id.writer == book.writer()));
  BOOST_TEST(!next.began_a_new_writer());
}

BOOST_AUTO_TEST_CASE(two_commands_ahead_of_the_mark_are_a_copy) {
  const Folder folder;
  auto book = desk::make(folder);
  MarkBefore mark(folder);
  const auto writer = desk::write(book, desk::flew(6)).id.writer;
  desk::write(book, desk::flew(12));
  mark.put_back();
  auto next = desk::open(folder);
  BOOST_TEST((desk::write(next, desk::flew(60)).id.writer != writer));
}

BOOST_AUTO_TEST_CASE(a_broken_mark_costs_a_writer_and_nothing_else) {
  const Folder folder;
  const auto writer = desk::make(folder).writer();
  for (const auto& file : files::directory_iterator(folder.path("state"))) {
    if (file.path().extension() == ".mark") files::resize_file(file.path(), 40);
  }
  auto book = desk::open(folder);
  BOOST_TEST((desk::write(book, desk::flew(60)).id.writer != writer));
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_CASE(a_new_writer_is_not_begun_when_nothing_is_saved) {
  const Folder folder;
  desk::make(folder);
  files::remove_all(folder.path("state"));
  auto book = desk::open(folder);
  const auto writer = book.writer();
  { store::Pen pen(book); }
  BOOST_TEST((book.writer() == writer));
  BOOST_TEST(!book.began_a_new_writer());
  const auto left = files::directory_iterator(folder.path("state"));
  BOOST_TEST(std::count_if(begin(left), end(left), [](const auto& file) {
               return file.path().extension() == ".mark";
             }) == 0);
}

BOOST_AUTO_TEST_CASE(writers_of_a_record_for_tests_come_from_the_seed_too) {
  const auto second_writer = [](const Folder& folder) {
    store::Book::create(folder.path("the.book"), desk::begins_for_tests(7), folder.surroundings());
    files::remove_all(folder.path("state"));
    auto book = desk::open(folder);
    return sentence::say_writer(desk::write(book, desk::flew(60)).id.writer);
  };
  const Folder one;
  const Folder two;
  BOOST_TEST(second_writer(one) == second_writer(two));
}

BOOST_AUTO_TEST_SUITE_END()
