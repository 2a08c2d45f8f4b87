// command/help.h: the program's own help, made from the commands' declarations.
#pragma once

#include <iosfwd>
#include <span>

#include "command/command.h"

namespace command {

// Options that every command takes.
std::span<const Option> common_options();
// What the program is, two examples and the commands by job: at most 24 lines of 80 columns.
void say_overview(std::ostream& out);
// Examples first, then the options.
void say_help(const Command& command, std::ostream& out);

}  // namespace command
