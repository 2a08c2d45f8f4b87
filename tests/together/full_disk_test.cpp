// A disk without room and folders without leave to write, met by the built program: the right
// sentence and code, and the book as it was. The limit on a file's size stands for the full disk
// (POSIX setrlimit, RLIMIT_FSIZE): it strikes the book, its journal and the mark alike.
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <filesystem>
#include <vector>

#include "together/program.h"

namespace {

using together::Ended;
namespace tree = std::filesystem;

constexpr const char* flight = "timeworn say 'ZZ-KIT flew 0.3 h, 1 start, 1 landing'";

struct Desk {
  faults::Clerk clerk;
  faults::Clerk::Files before;
  std::string answers;
  Desk() {
    BOOST_TEST_REQUIRE(clerk.type(faults::new_book()).code == 0);
    BOOST_TEST_REQUIRE(clerk.type({"read", "-"}, faults::set_up_sheet()).code == 0);
    before = clerk.files();
    answers = faults::answers(clerk);
  }
  // The superuser may write anywhere, so a child does it that gave that up. Gives its exit code.
  int as_an_ordinary_user(const std::vector<std::string>& words) const;
};

int Desk::as_an_ordinary_user(const std::vector<std::string>& words) const {
  constexpr uid_t nobody = 65534;
  const bool is_superuser = ::geteuid() == 0;
  if (is_superuser) {
    BOOST_REQUIRE(::chown(clerk.folder().c_str(), nobody, nobody) == 0);
    for (const auto& file : tree::recursive_directory_iterator(clerk.folder())) {
      BOOST_REQUIRE(::chown(file.path().c_str(), nobody, nobody) == 0);
    }
  }
  const pid_t child = ::fork();
  if (child == 0) {
    if (is_superuser && ::setuid(nobody) != 0) ::_exit(99);
    ::_exit(clerk.type(words).code);
  }
  int status = -1;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(no_room, Desk)

BOOST_AUTO_TEST_CASE(wherever_the_disk_is_full_nothing_is_half_saved) {
  int refused = 0;
  const auto blocks = tree::file_size(clerk.book()) / 512;
  for (std::uintmax_t room = 0; room <= blocks + 48; room += 12) {
    clerk.put_back(before);
    const Ended ended =
        together::run(clerk, "trap '' XFSZ; ulimit -f " + std::to_string(room) + "; " + flight);
    const std::string what = std::to_string(room) + " blocks: " + ended.printed;
    BOOST_TEST((ended.code == 0 || ended.code == 74 || ended.code == 78), what);
    const bool is_same = faults::answers(clerk) == answers;
    BOOST_TEST(is_same == (ended.code != 0), what);
    if (ended.code == 0) continue;
    ++refused;
    // With a limit on the size, the pages written before cannot be put back at once either; then
    // the program cannot know, and says so.
    BOOST_TEST((ended.printed.find("so nothing was saved") != std::string::npos ||
                ended.printed.find("before you say it again") != std::string::npos),
               what);
  }
  BOOST_TEST(refused > 2);
  BOOST_TEST(together::run(clerk, flight).code == 0);
}

// An entry is saved even if its mark cannot be brought up to it: one command may be ahead. The next
// one could not tell any more whether the book is a copy, so it is refused.
BOOST_AUTO_TEST_CASE(a_mark_that_cannot_be_written_stops_the_second_command) {
  const std::vector<std::string> words = {"say", "2026-03-05 base \"North\" joins"};
  const tree::path state = tree::path(clerk.folder()) / "state" / "timeworn";
  for (const auto& file : tree::directory_iterator(state)) {
    if (file.path().extension() == ".mark") ::chmod(file.path().c_str(), 0400);
  }
  BOOST_TEST(as_an_ordinary_user(words) == 0);
  const std::string after_one = faults::answers(clerk);
  BOOST_TEST((after_one != answers));
  BOOST_TEST(as_an_ordinary_user({"say", "2026-03-05 base \"South\" joins"}) == 78);
  BOOST_TEST((faults::answers(clerk) == after_one));
  for (const auto& file : tree::directory_iterator(state)) ::chmod(file.path().c_str(), 0600);
  BOOST_TEST(as_an_ordinary_user({"say", "2026-03-05 base \"South\" joins"}) == 0);
  BOOST_TEST(clerk.type({"check"}).out.find("-17 ") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_state_folder_that_takes_no_new_mark_stops_a_copy) {
  const tree::path state = tree::path(clerk.folder()) / "state" / "timeworn";
  for (const auto& file : tree::directory_iterator(state)) {
    if (file.path().extension() == ".mark") tree::remove(file.path());
  }
  ::chmod(state.c_str(), 0500);
  BOOST_TEST(as_an_ordinary_user({"say", "2026-03-05 base \"North\" joins"}) == 78);
  BOOST_TEST((faults::answers(clerk) == answers));
  ::chmod(state.c_str(), 0700);
}

BOOST_AUTO_TEST_SUITE_END()
