// A writing program is killed at random moments. After each kill the entry is wholly there or
// wholly absent, whatever was called saved is there, the chain holds, and nobody repairs anything.
#include <fcntl.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <boost/test/unit_test.hpp>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "store/book.h"

extern char** environ;

namespace {

namespace files = std::filesystem;
using Clock = std::chrono::steady_clock;
using std::chrono::microseconds;

// By each of both programs; many more with TIMEWORN_LONG=1.
int wanted_kills() {
  const char* const is_long = std::getenv("TIMEWORN_LONG");
  return is_long != nullptr && std::string(is_long) == "1" ? 500 : 150;
}
constexpr int most_runs = 20'000;

// A folder for the book and for what the program remembers; the program is told by XDG_STATE_HOME.
class Desk {
 public:
  Desk() {
    std::string name = (files::temp_directory_path() / "timeworn-XXXXXX").string();
    path_ = ::mkdtemp(name.data());
    ::setenv("XDG_STATE_HOME", path_.c_str(), 1);
    logbook::RecordBegins begins;
    begins.name = {"Marrow Point"};
    logbook::Said said;
    said.day = *quantity::make_day({2026, 1, 1});
    said.fact = begins;
    store::Book::create(book_path(), said, surroundings());
  }
  ~Desk() { files::remove_all(path_); }
  Desk(const Desk&) = delete;
  Desk& operator=(const Desk&) = delete;
  std::string book_path() const { return path_ + "/the.book"; }
  store::Book book() const {
    return store::Book::open(book_path(), store::Access::read, surroundings());
  }

 private:
  store::Surroundings surroundings() const {
    return {quantity::Instant::of(1'772'697'600), path_ + "/timeworn", {}, {}};
  }
  std::string path_;
};

// The program given on the command line knows all commands; the small one only says.
bool is_whole_program() { return boost::unit_test::framework::master_test_suite().argc > 1; }
std::string program() {
  return is_whole_program() ? boost::unit_test::framework::master_test_suite().argv[1]
                            : TIMEWORN_WRITER;
}

std::string sentence_numbered(int run) {
  return "2026-03-01 base \"North " + std::to_string(run) + "\" joins.";
}

// One command, and the sentences that are there when it is done, all or none.
struct Command {
  std::vector<std::string> words;
  std::vector<std::string> sentences;
  std::string success = "Saved ";
};

Command saying(int run) { return {{"say", sentence_numbered(run)}, {sentence_numbered(run)}}; }

Command reading(const Desk& desk, int run) {
  Command command{{"read", desk.book_path() + ".sheet"}, {}};
  std::ofstream sheet(desk.book_path() + ".sheet");
  for (const std::string more : {"A", "B", "C"}) {
    command.sentences.push_back("2026-03-01 base \"" + more + ' ' + std::to_string(run) +
                                "\" joins.");
    sheet << command.sentences.back() << '\n';
  }
  return command;
}

Command any_command(const Desk& desk, int run, std::mt19937_64& random) {
  const auto chance = is_whole_program() ? random() % 4 : 3;
  if (chance == 0) return {{"rebuild"}, {}, "Rebuilt "};
  return chance == 1 ? reading(desk, run) : saying(run);
}

struct Outcome {
  bool is_killed = false;
  std::string printed;
  microseconds lasted{};
};

pid_t start(const Desk& desk, const Command& command, int out) {
  posix_spawn_file_actions_t actions;
  ::posix_spawn_file_actions_init(&actions);
  ::posix_spawn_file_actions_adddup2(&actions, out, STDOUT_FILENO);
  std::vector<std::string> words = {program()};
  words.insert(words.end(), command.words.begin(), command.words.end());
  words.insert(words.end(), {"--book", desk.book_path()});
  std::vector<char*> arguments;
  for (std::string& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  pid_t child = 0;
  const int result =
      ::posix_spawnp(&child, words[0].c_str(), &actions, nullptr, arguments.data(), environ);
  ::posix_spawn_file_actions_destroy(&actions);
  BOOST_REQUIRE_MESSAGE(result == 0, words[0] << " does not start");
  return child;
}

std::string read_all(int in) {
  std::string text;
  std::array<char, 256> bytes{};
  for (ssize_t size = 1; size > 0;) {
    size = ::read(in, bytes.data(), bytes.size());
    if (size > 0) text.append(bytes.data(), static_cast<std::size_t>(size));
  }
  return text;
}

// Lets the program go on for so long, then kills it if it is still there. Without a limit it ends
// by itself.
Outcome run(const Desk& desk, const Command& command, std::optional<microseconds> limit) {
  std::array<int, 2> pipe_ends{};
  BOOST_REQUIRE(::pipe2(pipe_ends.data(), O_CLOEXEC) == 0);
  const auto begin = Clock::now();
  const pid_t child = start(desk, command, pipe_ends[1]);
  ::close(pipe_ends[1]);
  if (limit) {
    const timespec pause = {limit->count() / 1'000'000, (limit->count() % 1'000'000) * 1000};
    ::ppoll(nullptr, 0, &pause, nullptr);
    ::kill(child, SIGKILL);
  }
  Outcome outcome;
  int status = 0;
  ::waitpid(child, &status, 0);
  outcome.is_killed = WIFSIGNALED(status);
  outcome.lasted = std::chrono::duration_cast<microseconds>(Clock::now() - begin);
  outcome.printed = read_all(pipe_ends[0]);
  ::close(pipe_ends[0]);
  return outcome;
}

std::multiset<std::string> sentences(const store::Book& book) {
  std::multiset<std::string> result;
  for (const auto& entry : book.entries({})) {
    if (entry.id.number > 1) result.insert(entry.sentence);
  }
  return result;
}

// Long enough for one undisturbed run: the middle of five.
microseconds usual_time(const Desk& desk, std::multiset<std::string>& saved) {
  std::array<microseconds, 5> times{};
  for (std::size_t i = 0; i < times.size(); ++i) {
    const std::string sentence = sentence_numbered(static_cast<int>(i) + most_runs);
    const Outcome outcome = run(desk, {{"say", sentence}, {}}, {});
    BOOST_REQUIRE_MESSAGE(outcome.printed.starts_with("Saved "), outcome.printed);
    saved.insert(sentence);
    times[i] = outcome.lasted;
  }
  std::sort(times.begin(), times.end());
  return times[2];
}

}  // namespace

BOOST_AUTO_TEST_SUITE(crash)

BOOST_AUTO_TEST_CASE(a_killed_command_leaves_its_entry_wholly_there_or_wholly_absent) {
  const char* const told = std::getenv("TIMEWORN_SEED");
  const auto seed = told != nullptr ? std::strtoul(told, nullptr, 10) : std::random_device()();
  std::cout << "crash: seed " << seed << "\n";
  std::mt19937_64 random(seed);
  const Desk desk;
  std::multiset<std::string> there;
  const auto usual = usual_time(desk, there).count();
  std::uniform_int_distribution<std::int64_t> moment(usual / 5, usual * 11 / 10);

  int kills = 0;
  int kept_unsaid = 0;
  for (int i = 0; i < most_runs && kills < wanted_kills(); ++i) {
    const Command command = any_command(desk, i, random);
    const Outcome outcome = run(desk, command, microseconds(moment(random)));
    kills += outcome.is_killed ? 1 : 0;
    // Read at once, as the next command would.
    const auto now = sentences(desk.book());
    const bool is_saved = outcome.printed.find(command.success) != std::string::npos;
    const bool is_there = !command.sentences.empty() && now.contains(command.sentences.front());
    if (is_there) there.insert(command.sentences.begin(), command.sentences.end());
    BOOST_TEST_REQUIRE((now == there), "half of it is there, or something is lost");
    const bool is_lost = is_saved && !is_there && !command.sentences.empty();
    BOOST_TEST_REQUIRE(!is_lost, "called saved and lost, run " << i);
    kept_unsaid += is_there && !is_saved ? 1 : 0;
  }
  std::cout << "crash: " << kills << " kills, " << kept_unsaid << " after the commit, "
            << there.size() << " entries\n";
  BOOST_TEST(kills >= wanted_kills());

  // Nothing was repaired, and no kill has made a copy of the book: its only writer goes on.
  const auto last = run(desk, saying(2 * most_runs), {});
  BOOST_TEST(last.printed.starts_with("Saved "));
  const auto book = desk.book();
  BOOST_TEST(book.horizon().size() == 1U);
  for (const auto& finding : book.check()) BOOST_ERROR(finding.what + ": " + finding.detail);
}

BOOST_AUTO_TEST_SUITE_END()
