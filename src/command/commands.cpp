#include "command/commands.h"

namespace command {

namespace {

const Command* const recording[] = {&say_command, &read_command, &correct_command, &strike_command,
                                    &sign_command};
const Command* const asking[] = {&ready_command, &due_command,     &lives_command, &trend_command,
                                 &fleet_command, &history_command, &why_command};
const Command* const printing[] = {&print_command};
const Command* const caring[] = {&new_command,     &people_command, &backup_command,
                                 &restore_command, &check_command,  &rebuild_command};

const Group all_groups[] = {{"Log a flight, a reading or work", recording},
                            {"Ask what the record says", asking},
                            {"Put it on paper", printing},
                            {"Look after the book", caring}};

}  // namespace

std::span<const Group> groups() { return all_groups; }

const Command* find_command(std::string_view name) {
  for (const Group& group : groups()) {
    for (const Command* command : group.commands) {
      if (command->name == name) return command;
    }
  }
  return nullptr;
}

}  // namespace command
