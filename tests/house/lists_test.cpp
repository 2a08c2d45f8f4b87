// What must be named somewhere: a file left out of the build and a command left out of the manual.

#include "house/lists.h"

#include <boost/test/unit_test.hpp>

using house::check_cmake_lists;
using house::check_commands;
using house::Source;

namespace {

const Source root = {"CMakeLists.txt", "add_subdirectory(src/a)\nlist(src/main.cpp)\n"};
const Source list = {"src/a/CMakeLists.txt", "timeworn_library(a one.cpp  # two.cpp\n LINKS b)\n"};
const Source one = {"src/a/one.cpp", ""};

const Source table = {"src/command/commands.cpp",
                      "{&due_command,\n &say_command};  // &old_command\n"};
const Source manual = {"docs/manual.md", "# Manual\n## due: what is due\ntext on say\n"};
const Source due_session = {"tests/sessions/due_first.session", ""};
const Source say_session = {"tests/sessions/say.session", ""};

}  // namespace

BOOST_AUTO_TEST_SUITE(lists)

BOOST_AUTO_TEST_CASE(a_file_named_by_its_folder_or_by_one_above_is_built) {
  BOOST_TEST(check_cmake_lists({root, list, one, {"src/main.cpp", ""}}).empty());
}

BOOST_AUTO_TEST_CASE(a_file_named_nowhere_or_in_a_comment_is_told) {
  BOOST_TEST(check_cmake_lists({root, list, {"src/a/three.cpp", ""}}).size() == 1U);
  BOOST_TEST(check_cmake_lists({root, list, {"src/a/two.cpp", ""}}).size() == 1U);
  BOOST_TEST(check_cmake_lists({root, list, {"src/b/one.cpp", ""}}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_folder_that_nobody_adds_is_told) {
  BOOST_TEST(check_cmake_lists({root, list, {"src/b/CMakeLists.txt", ""}}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(commands_are_read_from_their_table) {
  const std::vector<std::string> expected = {"due", "say"};
  BOOST_TEST(house::commands_of(table.text) == expected);
}

BOOST_AUTO_TEST_CASE(a_command_without_session_or_heading_is_told) {
  const Source full = {"docs/manual.md", manual.text + "## say\n"};
  BOOST_TEST(check_commands({table, full, due_session, say_session}).empty());
  BOOST_TEST(check_commands({table, manual, due_session, say_session}).size() == 1U);
  BOOST_TEST(check_commands({table, full, due_session}).size() == 1U);
  BOOST_TEST(check_commands({full, due_session, say_session}).size() == 1U);
}

BOOST_AUTO_TEST_SUITE_END()
