#include "command/command_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>
#include <ostream>

#include "command/commands.h"
#include "command/help.h"
#include "command/version.h"
#include "store/trouble.h"
#include "text/nearest.h"
#include "text/visible.h"
#include "words/words.h"

namespace command {

namespace {

using Words = std::vector<std::string>;

bool asks_for_help(const Words& words) {
  return std::any_of(words.begin(), words.end(),
                     [](const std::string& word) { return word == "-h" || word == "--help"; });
}

ExitCode say_misuse(const std::string& sentence, const std::string& advice, World& world) {
  tell(*world.err, text::visible_line(sentence) + " Nothing was done.\n" + advice + "\n");
  return typed_wrongly;
}

std::string nearest_of(const std::string& word, const std::vector<std::string>& candidates) {
  const auto near = text::nearest(word, candidates, 1);
  return near.empty() ? std::string() : near.front();
}

std::vector<std::string> command_names() {
  std::vector<std::string> names{"help"};
  for (const Group& group : groups()) {
    for (const Command* command : group.commands) names.emplace_back(command->name);
  }
  return names;
}

ExitCode unknown_command(const std::string& word, World& world) {
  const std::string near = nearest_of(word, command_names());
  return say_misuse("There is no command \"" + word + "\".",
                    near.empty()
                        ? "Say timeworn help for the list."
                        : "Did you mean the command " + near + "? Say timeworn help " + near + ".",
                    world);
}

// Every value typed lands in `typed`; the parser keeps pointers into it.
struct Parser {
  CLI::App app;
  Typed typed;
  std::map<std::string, bool, std::less<>> flags;
};

void declare(Parser& parser, const Option& option) {
  const std::string name(option.name);
  if (option.value.empty()) {
    parser.app.add_flag(name, parser.flags[name], std::string(option.purpose));
  } else {
    parser.app.add_option(name, parser.typed.options[name], std::string(option.purpose))
        ->allow_extra_args(false);
  }
}

void collect(Parser& parser) {
  for (const auto& [name, given] : parser.flags) {
    if (given) parser.typed.options[name] = {};
  }
  std::erase_if(parser.typed.options, [&](const auto& option) {
    const auto flag = parser.flags.find(option.first);
    return option.second.empty() && (flag == parser.flags.end() || !flag->second);
  });
}

std::string unknown_option_advice(const Command& command, const std::string& word) {
  std::vector<std::string> names;
  for (const Option& option : command.options) names.emplace_back(option.name);
  for (const Option& option : common_options()) names.emplace_back(option.name);
  const std::string near = nearest_of(word, names);
  const std::string help = "Say timeworn help " + std::string(command.name) + ".";
  return near.empty() ? help : "Did you mean the option " + near + "? " + help;
}

ExitCode run_command(const Command& command, Words words, World& world) {
  Parser parser;
  parser.app.set_help_flag();
  for (const Option& option : command.options) declare(parser, option);
  for (const Option& option : common_options()) declare(parser, option);
  if (!command.operands.empty()) parser.app.add_option("operands", parser.typed.operands);
  std::reverse(words.begin(), words.end());
  try {
    parser.app.parse(words);
  } catch (const CLI::ExtrasError&) {
    const Words extra = parser.app.remaining();
    const std::string word = extra.empty() ? std::string() : extra.front();
    const bool is_option = word.starts_with("-");
    return say_misuse((is_option ? "There is no option " : "There is one word too many: ") + word +
                          (is_option ? " here." : "."),
                      unknown_option_advice(command, word), world);
  } catch (const CLI::ParseError& error) {
    return say_misuse("The command line could not be read: " + std::string(error.what()) + ".",
                      "Say timeworn help " + std::string(command.name) + ".", world);
  }
  collect(parser);
  if (const auto book = parser.typed.text("--book")) world.book_path = *book;
  if (parser.typed.has("--no-input")) world.can_ask = false;
  return command.run(parser.typed, world);
}

ExitCode help_for(const Words& words, World& world) {
  if (words.size() < 2) return say_overview(*world.out), done;
  const Command* command = find_command(words[1]);
  if (command == nullptr) return unknown_command(words[1], world);
  say_help(*command, *world.out);
  return done;
}

ExitCode run_words(const Words& words, World& world) {
  if (words.empty()) return say_overview(*world.out), done;
  const std::string& first = words.front();
  if (first == "--version") {
    *world.out << "timeworn " << version << '\n';
    return done;
  }
  if (first == "help") return help_for(words, world);
  if (first == "-h" || first == "--help") return say_overview(*world.out), done;
  const Command* command = find_command(first);
  if (command == nullptr) return unknown_command(first, world);
  const Words rest(words.begin() + 1, words.end());
  if (asks_for_help(rest)) {
    say_help(*command, *world.out);
    return done;
  }
  return run_command(*command, rest, world);
}

// What stands is said first, and then what does not.
ExitCode say_trouble(const logbook::Trouble& trouble, World& world) {
  world.out->flush();
  if (world.has_saved) *world.err << words::unfinished_text() << '\n';
  *world.err << words::trouble_text(trouble, world.has_saved ? "no more was done" : world.undone)
             << '\n';
  return static_cast<ExitCode>(words::trouble_exit_code(trouble));
}

}  // namespace

ExitCode run(const std::vector<std::string>& words, World& world) {
  try {
    return run_words(words, world);
  } catch (const store::Trouble& trouble) {
    return say_trouble(trouble.what(), world);
  }
}

}  // namespace command
