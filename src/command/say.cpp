#include <ostream>

#include "command/commands.h"
#include "command/enter.h"
#include "command/lines.h"

namespace command {

namespace {

// Without words: one line asked for at a terminal, else every line of standard input.
std::optional<std::vector<std::string>> lines_from_input(World& world) {
  if (!world.can_ask) return lines_of(*world.in);
  *world.err << "What happened? " << std::flush;
  const auto line = next_line(*world.in);
  return line ? std::vector{*line} : std::vector<std::string>();
}

ExitCode run_say(const Typed& typed, World& world) {
  Entering entering;
  if (typed.operands.empty()) {
    const auto lines = lines_from_input(world);
    if (!lines) {
      *world.err << "The input cannot be read. Nothing was saved.\n";
      return cannot_read_or_write;
    }
    for (const std::string& line : *lines) entering.lines.push_back({line, ""});
    entering.may_leave_out_the_day = world.can_ask;
  } else {
    entering.lines = {{typed.joined(), ""}};
    entering.may_leave_out_the_day = true;
  }
  std::erase_if(entering.lines, [](const Line& line) {
    return line.text.find_first_not_of(" \t\r") == std::string::npos;
  });
  if (entering.lines.empty()) {
    *world.err << "Nothing was said, so nothing was saved. Say for example: timeworn say 'ZZ-KIT "
                  "flew 1:42, 1 start, 3 landings'\n";
    return typed_wrongly;
  }
  entering.because = typed.text("--because");
  return enter(entering, typed, world);
}

}  // namespace

const Command say_command{
    "say",
    "log what happened, in a sentence",
    "[SENTENCE]",
    "  timeworn say 'ZZ-KIT flew 1:42, 1 start, 3 landings'\n"
    "  timeworn say 'yesterday ZZ-KIT flew 1.7 h, 1 start, 3 landings'\n"
    "  timeworn say 'inspection \"annual inspection\" done on ZZ-KIT, airframe 4323.3 h, by \"B. "
    "Quill\"'\n"
    "\nWithout a sentence it asks for one, or reads sentences from standard input.\n",
    {{"--because", "REASON", "why a doubt about this entry is right; it stands in the sentence"},
     json_option},
    run_say};

}  // namespace command
