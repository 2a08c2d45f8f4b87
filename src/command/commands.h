// command/commands.h: all commands in the order in which they are listed, grouped by the job.
#pragma once

#include <span>
#include <string_view>

#include "command/command.h"

namespace command {

struct Group {
  std::string_view title;
  std::span<const Command* const> commands;
};
std::span<const Group> groups();
// The command of that name, or null.
const Command* find_command(std::string_view name);

extern const Command new_command;
extern const Command say_command;
extern const Command read_command;
extern const Command correct_command;
extern const Command strike_command;
extern const Command sign_command;
extern const Command ready_command;
extern const Command due_command;
extern const Command lives_command;
extern const Command trend_command;
extern const Command fleet_command;
extern const Command history_command;
extern const Command why_command;
extern const Command print_command;
extern const Command people_command;
extern const Command check_command;
extern const Command rebuild_command;
extern const Command backup_command;
extern const Command restore_command;

}  // namespace command
