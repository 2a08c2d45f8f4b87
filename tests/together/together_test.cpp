// Many commands at one book at once: each entry is saved or refused in a sentence, none is lost,
// and who holds the book for long is told to the others and harms nobody.
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <list>
#include <optional>
#include <thread>
#include <vector>

#include "sentence/sentence.h"
#include "store/book.h"
#include "together/program.h"

namespace {

using together::Ended;
using together::Started;
using Clock = std::chrono::steady_clock;

constexpr const char* flight =
    "timeworn say 'ZZ-KIT flew 0.3 h, 1 start, 1 landing' --because test";

struct Desk {
  faults::Clerk clerk;
  Desk() {
    BOOST_TEST_REQUIRE(clerk.type(faults::new_book()).code == 0);
    BOOST_TEST_REQUIRE(clerk.type({"read", "-"}, faults::set_up_sheet()).code == 0);
  }
  store::Surroundings surroundings() const {
    return {quantity::Instant(), clerk.folder() + "/state/timeworn", {}, {}};
  }
  store::Book book(store::Access access = store::Access::read) const {
    return store::Book::open(clerk.book(), access, surroundings());
  }
  // So many entries, all by one writer and without a gap, and nothing is found.
  void hold(std::int64_t entries) const {
    const store::Book now = book();
    BOOST_TEST(now.entries({}).size() == static_cast<std::size_t>(entries));
    BOOST_TEST_REQUIRE(now.horizon().size() == 1U);
    BOOST_TEST(now.horizon().front().number == entries);
    for (const auto& finding : now.check()) BOOST_ERROR(finding.what + ": " + finding.detail);
  }
};

constexpr std::int64_t at_first = 15;

bool is_left_alone(const std::string& printed) {
  return printed.find("in use") == std::string::npos &&
         printed.find("locked") == std::string::npos && printed.find("busy") == std::string::npos;
}

void write_at_once(const Desk& desk, int writers, int each) {
  std::list<Started> all;
  const std::string script = "for i in $(seq " + std::to_string(each) + "); do " +
                             std::string(flight) + " || exit 9; done";
  for (int i = 0; i < writers; ++i) all.emplace_back(desk.clerk, script);
  for (Started& one : all) {
    const Ended ended = one.ended();
    BOOST_TEST(ended.code == 0, ended.printed);
    BOOST_TEST(is_left_alone(ended.printed), ended.printed);
  }
  desk.hold(at_first + static_cast<std::int64_t>(writers) * each);
}

// Someone else's program that reads and does not let go.
class LongReader {
 public:
  explicit LongReader(const std::string& path) {
    sqlite3_open(path.c_str(), &database_);
    sqlite3_exec(database_, "BEGIN; SELECT count(*) FROM entry;", nullptr, nullptr, nullptr);
  }
  ~LongReader() { sqlite3_close(database_); }
  LongReader(const LongReader&) = delete;
  LongReader& operator=(const LongReader&) = delete;

 private:
  sqlite3* database_ = nullptr;
};

// A process that has the lock, has written, and was stopped there.
pid_t stopped_writer(const Desk& desk) {
  const pid_t child = ::fork();
  if (child == 0) {
    auto book = desk.book(store::Access::write);
    store::Pen pen(book);
    pen.append(*sentence::read("2026-03-05 base \"North\" joins.", {}).said);
    ::raise(SIGSTOP);
    pen.commit();
    ::_exit(0);
  }
  int status = 0;
  ::waitpid(child, &status, WUNTRACED);
  BOOST_TEST_REQUIRE(WIFSTOPPED(status));
  return child;
}

// Until a command has written its journal, and so waits for the last reader to end.
void wait_for_writing(const std::string& book) {
  const auto begin = Clock::now();
  while (!std::filesystem::exists(book + "-journal")) {
    BOOST_TEST_REQUIRE((Clock::now() - begin < std::chrono::minutes(1)), "nothing was written");
    std::this_thread::yield();
  }
}

std::chrono::seconds lasted_since(Clock::time_point begin) {
  return std::chrono::duration_cast<std::chrono::seconds>(Clock::now() - begin);
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(at_once, Desk)

BOOST_AUTO_TEST_CASE(two_writers_lose_nothing) { write_at_once(*this, 2, 6); }
BOOST_AUTO_TEST_CASE(eight_writers_lose_nothing) { write_at_once(*this, 8, 3); }

BOOST_AUTO_TEST_CASE(readers_answer_while_others_write_and_write_while_others_read) {
  Started reader(clerk,
                 "for i in 1 2 3 4 5 6; do timeworn due ZZ-KIT > /dev/null; "
                 "[ $? -le 1 ] || exit 9; timeworn check > /dev/null; "
                 "[ $? -le 1 ] || exit 9; done");
  write_at_once(*this, 2, 5);
  const Ended ended = reader.ended();
  BOOST_TEST(ended.code == 0, ended.printed);
  BOOST_TEST(is_left_alone(ended.printed), ended.printed);
}

// What it proves and what it compares is of one state, whoever writes meanwhile.
BOOST_AUTO_TEST_CASE(a_check_beside_writers_finds_no_fault) {
  Started checker(clerk,
                  "cd \"$HOME\"; for i in 1 2 3 4 5 6 7 8; do timeworn check > checked; "
                  "if grep Fault checked; then exit 9; fi; done");
  write_at_once(*this, 2, 6);
  const Ended ended = checker.ended();
  BOOST_TEST(ended.code == 0, ended.printed);
}

// The clock of a record for tests stands still, so all of them want one name.
BOOST_AUTO_TEST_CASE(copies_of_one_second_get_names_of_their_own) {
  const Ended ended = together::run(
      clerk,
      "cd \"$HOME\"; mkdir kept; for i in 1 2 3 4; do timeworn backup kept > said.$i 2>&1 || "
      "touch failed & done; wait; cat said.*; ls kept | wc -l; "
      "[ ! -e failed ]");
  BOOST_TEST(ended.code == 0, ended.printed);
  BOOST_TEST(ended.printed.ends_with("4\n"), ended.printed);
}

BOOST_AUTO_TEST_CASE(a_reader_that_lets_go_in_time_is_waited_for) {
  std::optional<LongReader> reader(std::in_place, clerk.book());
  Started writer(clerk, flight);
  wait_for_writing(clerk.book());
  reader.reset();
  const Ended ended = writer.ended();
  BOOST_TEST(ended.code == 0, ended.printed);
  hold(at_first + 1);
}

// sqlite.org/lockingv3.html: a reader's shared lock keeps the writer from its exclusive one.
BOOST_AUTO_TEST_CASE(a_reader_that_never_lets_go_is_told_and_nothing_is_saved) {
  std::optional<LongReader> reader(std::in_place, clerk.book());
  const auto begin = Clock::now();
  Started writer(clerk, flight);
  // Everyone else reads on, even while the writer waits for the last reader to end.
  const Ended asked = together::run(clerk, "timeworn lives > /dev/null");
  BOOST_TEST(asked.code <= 1, asked.printed);
  const Ended refused = writer.ended();
  BOOST_TEST(refused.code == 75, refused.printed);
  BOOST_TEST(refused.printed.find("is in use by another command, so nothing was saved") !=
                 std::string::npos,
             refused.printed);
  BOOST_TEST(lasted_since(begin).count() < 15);
  reader.reset();
  hold(at_first);
  BOOST_TEST(together::run(clerk, flight).code == 0);
  hold(at_first + 1);
}

BOOST_AUTO_TEST_CASE(a_writer_that_was_stopped_is_told_and_goes_on_later) {
  const pid_t child = stopped_writer(*this);
  const auto begin = Clock::now();
  const Ended refused = together::run(clerk, flight);
  BOOST_TEST(refused.code == 75, refused.printed);
  BOOST_TEST(refused.printed.find("is in use by another command, so nothing was saved") !=
                 std::string::npos,
             refused.printed);
  BOOST_TEST(lasted_since(begin).count() >= 4);
  BOOST_TEST(lasted_since(begin).count() < 15);
  // Questions are answered all the while, from what was there before.
  const Ended asked = together::run(clerk, "timeworn due ZZ-KIT");
  BOOST_TEST(asked.code <= 1, asked.printed);
  ::kill(child, SIGCONT);
  int status = -1;
  ::waitpid(child, &status, 0);
  BOOST_TEST(status == 0);
  const Ended after = together::run(clerk, flight);
  BOOST_TEST(after.code == 0, after.printed);
  hold(at_first + 2);
}

BOOST_AUTO_TEST_SUITE_END()
