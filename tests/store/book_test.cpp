#include "store/book.h"

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <set>

#include "sentence/frame.h"
#include "sentence/sentence.h"
#include "store/desk.h"

namespace {

using desk::Folder;

unsigned mode_of(const std::string& path) {
  struct stat status {};
  return ::stat(path.c_str(), &status) == 0 ? status.st_mode & 0777U : 0U;
}

std::string line_of(const logbook::Entry& entry) {
  return sentence::say_line(entry.frame, entry.sentence);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(book)

BOOST_AUTO_TEST_CASE(a_new_book_holds_its_first_entry_and_is_private) {
  const Folder folder;
  const auto book = desk::make(folder, "north/papers/the.book");
  const auto entries = book.entries({});
  BOOST_REQUIRE(entries.size() == 1);
  BOOST_TEST((entries[0].said == desk::begins()));
  BOOST_TEST(entries[0].id.number == 1);
  BOOST_TEST((book.horizon() == logbook::Horizon{{book.writer(), 1}}));
  BOOST_TEST(mode_of(folder.path("north/papers/the.book")) == 0600U);
  BOOST_TEST(mode_of(folder.path("north/papers")) == 0700U);
  BOOST_TEST(mode_of(folder.path("state")) == 0700U);
  BOOST_TEST(!book.began_a_new_writer());
  BOOST_TEST(book.check().empty());
  // Nothing is left of the making.
  const auto files = std::filesystem::directory_iterator(folder.path("north/papers"));
  BOOST_TEST(std::distance(begin(files), end(files)) == 1);
}

BOOST_AUTO_TEST_CASE(what_was_written_is_read_again_by_the_next_opening) {
  const Folder folder;
  std::vector<std::string> written;
  {
    auto book = desk::make(folder);
    for (int i = 1; i <= 5; ++i) written.push_back(line_of(desk::write(book, desk::flew(i * 6))));
  }
  const auto book = desk::open(folder, "the.book", store::Access::read);
  const auto entries = book.entries({});
  BOOST_REQUIRE(entries.size() == 6);
  for (std::size_t i = 0; i < written.size(); ++i) {
    BOOST_TEST(line_of(entries[i + 1]) == written[i]);
    const auto minutes = 6 * (static_cast<std::int64_t>(i) + 1);
    BOOST_TEST((entries[i + 1].said == desk::flew(minutes)));
  }
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_CASE(without_a_commit_nothing_is_written) {
  const Folder folder;
  auto book = desk::make(folder);
  {
    store::Pen pen(book);
    pen.append(desk::flew(60));
    pen.append(desk::flew(66));
    BOOST_TEST(pen.entries().size() == 3);
  }
  BOOST_TEST(book.entries({}).size() == 1);
  BOOST_TEST(desk::write(book, desk::flew(72)).id.number == 2);
}

BOOST_AUTO_TEST_CASE(a_horizon_ends_each_base_at_its_number) {
  const Folder folder;
  auto book = desk::make(folder);
  for (int i = 1; i <= 4; ++i) desk::write(book, desk::flew(i * 6));
  const auto entries = book.entries(logbook::Horizon{{book.writer(), 3}});
  BOOST_REQUIRE(entries.size() == 3);
  BOOST_TEST(entries.back().id.number == 3);
  BOOST_TEST(book.entries(logbook::Horizon()).empty());
}

BOOST_AUTO_TEST_CASE(what_was_known_on_a_day_is_what_had_arrived_by_its_end) {
  const Folder folder;
  desk::make(folder);
  auto later = folder.surroundings();
  later.today = desk::first_day + quantity::Days::of(3);
  auto book = store::Book::open(folder.path("the.book"), store::Access::write, later);
  desk::write(book, desk::flew(60));
  const auto writer = book.writer();
  BOOST_TEST(book.known_on(quantity::day_before(desk::first_day)).empty());
  BOOST_TEST((book.known_on(desk::first_day) == logbook::Horizon{{writer, 1}}));
  BOOST_TEST(
      (book.known_on(desk::first_day + quantity::Days::of(2)) == logbook::Horizon{{writer, 1}}));
  BOOST_TEST((book.known_on(*later.today) == logbook::Horizon{{writer, 2}}));
}

BOOST_AUTO_TEST_CASE(an_entry_that_names_another_refers_to_it_by_its_whole_digest) {
  const Folder folder;
  auto book = desk::make(folder);
  const auto flight = desk::write(book, desk::flew(60));
  const auto name = sentence::short_writer(flight.id.writer);
  const auto strike = desk::write(book, desk::struck(name, 2));
  BOOST_TEST((strike.frame.refers == std::vector<logbook::EntryId>{flight.id}));
  BOOST_TEST(book.check().empty());

  // What a correction replaces without naming it is referred to as well, and nothing stands twice.
  store::Pen pen(book);
  const auto other =
      std::get<logbook::Entry>(pen.append(desk::struck(name, 2), {strike.id, flight.id}));
  BOOST_TEST((other.frame.refers == std::vector<logbook::EntryId>{flight.id, strike.id}));
}

BOOST_AUTO_TEST_CASE(a_name_that_means_no_entry_comes_back_and_nothing_is_written) {
  const Folder folder;
  auto book = desk::make(folder);
  const auto name = sentence::short_writer(book.writer());
  store::Pen pen(book);
  const auto appended = pen.append(desk::struck(name, 7));
  const auto* unclear = std::get_if<std::vector<store::UnclearName>>(&appended);
  BOOST_REQUIRE(unclear != nullptr);
  BOOST_REQUIRE(unclear->size() == 1);
  BOOST_TEST(unclear->front().name.number == 7);
  BOOST_TEST(unclear->front().meant.empty());
  BOOST_TEST(pen.entries().size() == 1);
}

BOOST_AUTO_TEST_CASE(a_record_for_tests_is_the_same_every_time_and_others_never_are) {
  const Folder one;
  const Folder two;
  const auto line_in = [](const Folder& folder, const logbook::Said& first) {
    auto surroundings = folder.surroundings();
    surroundings.now = quantity::Instant::of(folder.path("").back());
    auto book = store::Book::create(folder.path("the.book"), first, surroundings);
    const auto entry = desk::write(book, desk::flew(60));
    return sentence::say_record_id(book.record()) + line_of(entry) +
           sentence::say_digest(entry.id.digest);
  };
  const auto first = line_in(one, desk::begins_for_tests(7));
  BOOST_TEST(first == line_in(two, desk::begins_for_tests(7)));
  BOOST_TEST(first.find(" 2026-03-05T08:00:00Z ") != first.npos);

  std::filesystem::remove(one.path("the.book"));
  std::filesystem::remove(two.path("the.book"));
  BOOST_TEST(line_in(one, desk::begins()) != line_in(two, desk::begins()));
  std::filesystem::remove(one.path("the.book"));
  BOOST_TEST(first != line_in(one, desk::begins_for_tests(8)));
}

BOOST_AUTO_TEST_CASE(a_look_sees_one_state_while_others_read) {
  const Folder folder;
  auto book = desk::make(folder);
  const auto reader = desk::open(folder, "the.book", store::Access::read);
  const store::Look look(reader);
  BOOST_TEST(reader.entries({}).size() == 1);
  BOOST_TEST(reader.horizon().size() == 1);
  BOOST_TEST(desk::open(folder, "the.book", store::Access::read).entries({}).size() == 1);
}

BOOST_AUTO_TEST_CASE(eight_processes_write_at_once_and_none_is_lost) {
  constexpr int processes = 8;
  constexpr int entries_each = 20;
  const Folder folder;
  desk::make(folder);
  std::vector<pid_t> children;
  for (int i = 0; i < processes; ++i) {
    const pid_t child = ::fork();
    if (child != 0) {
      children.push_back(child);
      continue;
    }
    int outcome = 0;
    try {
      for (int n = 0; n < entries_each; ++n) {
        auto book = desk::open(folder);
        desk::write(book, desk::flew(6 * (i * entries_each + n + 1)));
        if (book.began_a_new_writer()) outcome = 2;
      }
    } catch (...) {
      outcome = 1;
    }
    ::_exit(outcome);
  }
  for (const pid_t child : children) {
    int status = -1;
    ::waitpid(child, &status, 0);
    BOOST_TEST((WIFEXITED(status) && WEXITSTATUS(status) == 0));
  }
  const auto book = desk::open(folder, "the.book", store::Access::read);
  std::set<std::int64_t> seconds;
  for (const auto& entry : book.entries({})) {
    if (const auto* flew = std::get_if<logbook::Flew>(&entry.said->fact)) {
      seconds.insert(flew->hours.count());
    }
  }
  BOOST_TEST(seconds.size() == std::size_t{processes} * entries_each);
  BOOST_TEST(book.horizon().size() == 1U);
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_SUITE_END()
