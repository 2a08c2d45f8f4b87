#include <ostream>

#include "command/commands.h"
#include "command/enter.h"
#include "command/named_entry.h"

namespace command {

namespace {

// The line is the entry's name and the reason, the name first.
Meant strike_meaning(const Line& line, const std::vector<logbook::Entry>& entries,
                     const sentence::Reading& reading) {
  Meant meant;
  const auto blank = line.text.find(' ');
  const NamedEntry named = entry_named(entries, line.text.substr(0, blank));
  if (named.entry == nullptr) {
    meant.refusal = named.refusal;
    return meant;
  }
  logbook::Said said;
  said.day = *reading.today;
  said.fact = logbook::Struck{named.name, line.text.substr(blank + 1)};
  meant.read.said = std::move(said);
  return meant;
}

ExitCode run_strike(const Typed& typed, World& world) {
  const auto because = typed.text("--because");
  if (typed.operands.size() != 1 || !because) {
    *world.err << "Striking names one entry and says why. Say for example: timeworn strike "
                  "K7QXM-124 --because 'entered twice'\n";
    return typed_wrongly;
  }
  Entering entering;
  entering.lines = {{typed.operands.front() + " " + *because, ""}};
  entering.may_leave_out_the_day = true;
  entering.meaning = strike_meaning;
  return enter(entering, typed, world);
}

}  // namespace

const Command strike_command{
    "strike",
    "strike an entry out; it stays readable",
    "ENTRY",
    "  timeworn strike K7QXM-124 --because 'entered twice'\n"
    "\nStriking a correction brings back the value before it; striking a strike brings back\n"
    "what it struck.\n",
    {{"--because", "REASON", "why; it stands in the strike for ever"}, json_option},
    run_strike};

}  // namespace command
