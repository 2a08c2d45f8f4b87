#include <istream>
#include <ostream>

#include "command/commands.h"
#include "command/enter.h"

namespace command {

namespace {

// Without words: one line asked for at a terminal, else every line of standard input.
std::vector<Line> lines_from_input(World& world) {
  std::vector<Line> lines;
  std::string text;
  if (world.can_ask) {
    *world.err << "What happened? " << std::flush;
    if (std::getline(*world.in, text)) lines.push_back({text, ""});
    return lines;
  }
  while (std::getline(*world.in, text)) lines.push_back({text, ""});
  return lines;
}

ExitCode run(const Typed& typed, World& world) {
  Entering entering;
  if (typed.operands.empty()) {
    entering.lines = lines_from_input(world);
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
    run};

}  // namespace command
