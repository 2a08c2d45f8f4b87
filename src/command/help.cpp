#include "command/help.h"

#include <iomanip>
#include <ostream>
#include <string>

#include "command/commands.h"

namespace command {

namespace {

constexpr Option everywhere[] = {
    {"--book", "FILE", "the book to use (else $TIMEWORN_BOOK, else your own)"},
    {"--no-input", "", "never ask; refuse instead"},
};

void say_options(std::span<const Option> options, std::ostream& out) {
  for (const Option& option : options) {
    const std::string value = option.value.empty() ? "" : " " + std::string(option.value);
    out << "  " << std::left << std::setw(20) << std::string(option.name) + value << "  "
        << option.purpose << '\n';
  }
}

}  // namespace

std::span<const Option> common_options() { return everywhere; }

void say_overview(std::ostream& out) {
  out << "timeworn keeps the working life of turbine engines, airframes and their parts\n"
         "in a book of plain sentences, and answers from it.\n\n"
         "  timeworn say 'ZZ-KIT flew 1:42, 1 start, 3 landings'\n"
         "  timeworn ready ZZ-KIT --hours 3\n\n";
  for (const Group& group : groups()) {
    out << group.title << ":\n";
    for (const Command* command : group.commands) {
      out << "  " << std::left << std::setw(9) << command->name << ' ' << command->purpose << '\n';
    }
  }
  out << "\ntimeworn help COMMAND tells more; timeworn --version says which version this is.\n";
}

void say_help(const Command& command, std::ostream& out) {
  out << "timeworn " << command.name << ": " << command.purpose << "\n\n"
      << command.examples << "\nUse: timeworn " << command.name
      << (command.operands.empty() ? "" : " ") << command.operands << " [options]\n";
  say_options(command.options, out);
  say_options(common_options(), out);
}

}  // namespace command
