// What is typed, or stands in a name or a path, never reaches a terminal as more than words
// (CWE-150; ECMA-48 for C0 and C1, Unicode Annex 9 for bidirectional controls).
#include <sys/stat.h>

#include <boost/test/unit_test.hpp>
#include <fstream>

#include "command/commands.h"
#include "command/world.h"
#include "text/visible.h"

namespace {

// Clear the screen, write to the clipboard, the same with C1 as UTF-8 and as a lone byte, delete,
// carriage return, reversed reading.
const std::vector<std::string> hostile = {
    "\x1B[2J",
    "\x1B]52;c;aGk=\x07",
    "\xC2\x9B"
    "31m",
    "\x9B"
    "31m",
    "a\x7F"
    "b",
    "a\rb",
    "a\tb",
    "ZZ\xE2\x80\xAE"
    "TIK",
    "a\xE2\x81\xA6"
    "b",
    "\xC2\x90"
    "q",
};

// The first byte or character that would act; nothing if there is none. Our own line feeds are
// kept.
std::string acting(std::string words) {
  std::erase(words, '\n');
  return text::has_control(words) ? text::visible_line(words) : "";
}

struct Hostile {
  Hostile() {
    world.type({"new", "Marrow", "Point"});
    world.type({"say", "2026-03-04 aircraft ZZ-KIT is model \"Larkwing 5\"."});
  }
  void expect_words(const std::vector<std::string>& words, const std::string& input = "") {
    const auto answer = world.type(words, input);
    BOOST_TEST(acting(answer.all()) == "", words.front());
    ++tried;
  }
  void try_command(const command::Command& command, const std::string& bad) {
    const std::string name(command.name);
    expect_words({name, bad});
    expect_words({name, bad, bad}, bad + "\n");
    expect_words({name, "ZZ-KIT", bad});
    expect_words({name, "--" + bad});
    expect_words({name, "--book", world.path(bad)});
    expect_words({name, "ZZ-KIT", "--book", world.path("none" + bad + "/the.book")});
    for (const command::Option& option : command.options) {
      const std::string typed(option.name);
      expect_words({name, "ZZ-KIT", typed, bad});
      expect_words({name, "due", "ZZ-KIT", typed, world.path(bad)});
    }
  }
  desk::World world;
  int tried = 0;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(hostile_words, Hostile)

BOOST_AUTO_TEST_CASE(no_command_passes_them_on) {
  for (const std::string& bad : hostile) {
    expect_words({bad});
    expect_words({"help", bad});
    for (const command::Group& group : command::groups()) {
      for (const command::Command* one : group.commands) try_command(*one, bad);
    }
  }
  BOOST_TEST(tried > 1000);
}

BOOST_AUTO_TEST_CASE(no_sentence_and_no_sheet_passes_them_on) {
  for (const std::string& bad : hostile) {
    expect_words({"say", "2026-03-04 aircraft ZZ-" + bad + " flew 1.0 h."});
    expect_words({"say", "2026-03-04 aircraft ZZ-KIT flew " + bad + " h."});
    expect_words({"say"}, "note on ZZ-KIT \"" + bad + "\"\n");
    const std::string sheet = world.path("sheet" + bad + ".txt");
    std::ofstream(sheet) << "2026-03-04 aircraft ZZ-" << bad << " flew 1.0 h.\n" << bad << "\n";
    expect_words({"read", sheet});
  }
}

// A forged book may hold what no command would have taken.
BOOST_AUTO_TEST_CASE(a_book_of_a_hostile_name_is_copied_and_restored_in_words) {
  for (const std::string& bad : hostile) {
    expect_words({"backup", world.path("copy" + bad)});
    expect_words({"restore", world.path("copy" + bad)});
    expect_words({"restore", world.path("copy" + bad), "--to", world.path("to" + bad)});
    expect_words({"check", "--book", world.path("to" + bad)});
    ::chmod(world.path("to" + bad).c_str(), 0666);
    expect_words({"due", "ZZ-KIT", "--book", world.path("to" + bad)});
    expect_words({"print", "due", "ZZ-KIT", "-o", world.path("due" + bad + ".html")});
  }
}

BOOST_AUTO_TEST_SUITE_END()
