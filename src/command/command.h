// command/command.h: what a command is: its name, its options as plain data, and what it does. One
// file a command, with its help inside. Never here: SQL, formulas, the command-line library.
#pragma once

#include <cstddef>
#include <iosfwd>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/calendar.h"

namespace command {

// Exit codes (docs/manual.md lists them with an example each).
enum ExitCode : int {
  done = 0,       // done, yes, nothing needs attention
  attention = 1,  // done, and the answer needs attention; ready: no
  typed_wrongly = 2,
  not_known = 3,  // ready: not known
  refused = 65,   // nothing saved
  no_such = 66,   // no such book or thing
  our_fault = 70,
  cannot_create = 73,
  cannot_read_or_write = 74,
  in_use = 75,
  not_allowed = 77,
  bad_settings = 78,
};

// The world around a command, read once in main: no command asks the clock or the environment.
struct World {
  std::istream* in = nullptr;
  std::ostream* out = nullptr;
  std::ostream* err = nullptr;
  quantity::Instant now;
  quantity::Day today;
  std::string book_path;
  std::string state_folder;
  std::string config_folder;  // holds the keys of this machine
  bool can_ask = false;       // a person sits at a terminal
  std::size_t columns = 80;
  bool has_warned_of_place = false;  // once a command, however often it opens the book
  bool has_saved = false;  // what was asked for stands on the disk, whatever becomes of the answer
  std::string undone = "nothing was saved";  // what is said of it until then, if trouble comes
};

// An option: "--as-of" takes a value named DAY; one without a value name is a flag.
struct Option {
  std::string_view name;
  std::string_view value;
  std::string_view purpose;
};

// What was typed after the command's name.
struct Typed {
  std::vector<std::string> operands;
  std::map<std::string, std::vector<std::string>, std::less<>> options;

  bool has(std::string_view option) const { return options.find(option) != options.end(); }
  // The last value given.
  std::optional<std::string> text(std::string_view option) const;
  // All operands joined by blanks, so that a sentence needs no quotes.
  std::string joined() const;
};

struct Command {
  std::string_view name;
  std::string_view purpose;   // one line of the list of commands
  std::string_view operands;  // "SENTENCE", "[AIRCRAFT]"; empty: none are taken
  std::string_view examples;  // shown first in the command's help
  std::vector<Option> options;
  ExitCode (*run)(const Typed& typed, World& world) = nullptr;
};

// Writes words to a screen or a pipe: whatever would act on a terminal is made visible.
void tell(std::ostream& stream, std::string_view words);

// Options that mean the same everywhere.
inline constexpr Option json_option{"--json", "", "answer as JSON"};
inline constexpr Option as_of_option{
    "--as-of", "DAY", "the state at the end of that day, with all that is known now"};
inline constexpr Option known_option{"--known", "HORIZON",
                                     "count only entries inside it: \"K7QXM-130 M2ABC-88\""};
inline constexpr Option known_on_option{
    "--known-on", "DAY", "count only what this book had received by the end of that day"};

}  // namespace command
