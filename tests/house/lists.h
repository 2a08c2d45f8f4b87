// house/lists.h: what must be named somewhere: sources in CMake, commands in sessions and the
// manual.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "house/source.h"

namespace house {

// Every file of code stands in the CMakeLists.txt of its folder or of one above it, outside
// comments, and every folder with a CMakeLists.txt is named by one above it.
Findings check_cmake_lists(const std::vector<Source>& sources);

// The names in the table of src/command/commands.cpp: `say` for each `&say_command`.
std::vector<std::string> commands_of(std::string_view table);

// Every command has a session tests/sessions/<name>*.session and a heading in docs/manual.md.
Findings check_commands(const std::vector<Source>& sources);

}  // namespace house
