// command/command_line.h: from the words typed to a command and its answers. The only door to the
// command-line library. Only the command that was named is built, so the others cost nothing.
#pragma once

#include <string>
#include <vector>

#include "command/command.h"

namespace command {

// Looks at the first word itself, then runs the command; the help, the version and every misuse are
// answered here. Words do not include the program's name. Trouble passes through.
ExitCode run(const std::vector<std::string>& words, World& world);

}  // namespace command
