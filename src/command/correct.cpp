#include <ostream>

#include "command/commands.h"
#include "command/enter.h"
#include "command/named_entry.h"

namespace command {

namespace {

// What stands now of the entry's chain: its newest correction's sentence, or its own.
const logbook::Said* standing_value(const logbook::Entry& entry) {
  if (!entry.said) return nullptr;
  const auto* corrected = std::get_if<logbook::Corrected>(&entry.said->fact);
  return corrected != nullptr ? &*corrected->instead : &*entry.said;
}

struct Correction {
  std::string name;  // K7QXM-123
  std::string because;
  std::string clauses;
};

constexpr char separator = '\x1f';

Correction taken_apart(const std::string& line) {
  const auto first = line.find(separator);
  const auto second = line.find(separator, first + 1);
  return {line.substr(0, first), line.substr(first + 1, second - first - 1),
          line.substr(second + 1)};
}

Meant refusal(std::string sentence) {
  Meant meant;
  meant.refusal = std::move(sentence);
  return meant;
}

// The new sentence: whole if it reads as one, else the old one with the clauses given.
sentence::Read corrected_read(const Correction& correction, const logbook::Said& old,
                              const sentence::Reading& reading) {
  sentence::Reading strict = reading;
  strict.today.reset();
  sentence::Read whole = sentence::read(correction.clauses, strict);
  if (whole.said) return whole;
  return sentence::amend(correction.clauses, old, reading);
}

// Reads the change with the old sentence at hand, and puts it into a correction of the newest entry
// of the chain.
Meant correction_meaning(const Line& line, const std::vector<logbook::Entry>& entries,
                         const sentence::Reading& reading) {
  const Correction correction = taken_apart(line.text);
  const NamedEntry named = newest_of_chain(entries, correction.name);
  if (named.entry == nullptr) return refusal(named.refusal);
  const logbook::Said* old = standing_value(*named.entry);
  if (old == nullptr) return refusal("This version cannot read that entry.");
  if (std::holds_alternative<logbook::Struck>(old->fact)) {
    return refusal("A strike is not corrected. Strike it, and what it struck returns.");
  }
  Meant meant;
  meant.read = corrected_read(correction, *old, reading);
  if (!meant.read.said) {
    meant.refusal = words_of_a_bad_change(correction.clauses, meant.read);
    return meant;
  }
  logbook::Corrected fact;
  fact.entry = named.name;
  fact.because = correction.because;
  fact.instead = logbook::InnerSaid(*meant.read.said);
  meant.read.said = logbook::Said{};
  meant.read.said->day = *reading.today;
  meant.read.said->fact = std::move(fact);
  return meant;
}

ExitCode run_correct(const Typed& typed, World& world) {
  const auto because = typed.text("--because");
  if (typed.operands.size() < 2 || !because) {
    *world.err << "A correction names the entry, what is right, and why. Say for example: timeworn "
                  "correct K7QXM-123 '1.8 h' --because 'typed 1.3, was 1.8'\n";
    return typed_wrongly;
  }
  Typed rest = typed;
  rest.operands.erase(rest.operands.begin());
  Entering entering;
  entering.lines = {
      {typed.operands.front() + separator + *because + separator + rest.joined(), ""}};
  entering.may_leave_out_the_day = true;
  entering.meaning = correction_meaning;
  entering.because = typed.text("--although-because");
  return enter(entering, typed, world);
}

}  // namespace

const Command correct_command{
    "correct",
    "put an entry right; the old one stays readable",
    "ENTRY WHAT-IS-RIGHT",
    "  timeworn correct K7QXM-123 '1.8 h' --because 'typed 1.3, was 1.8'\n"
    "  timeworn correct K7QXM-123 '2026-03-04 ZZ-KIT flew 1.8 h, 1 start, 3 landings' --because "
    "'wrong day'\n",
    {{"--because", "REASON", "why; it stands in the correction for ever"},
     {"--although-because", "REASON", "why a doubt about the corrected entry is right"},
     json_option},
    run_correct};

}  // namespace command
