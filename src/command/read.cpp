#include <fstream>
#include <istream>
#include <optional>
#include <ostream>

#include "command/commands.h"
#include "command/enter.h"
#include "text/visible.h"

namespace command {

namespace {

// Blank lines and lines that begin with # are no sentences.
bool is_sentence(const std::string& text) {
  const auto first = text.find_first_not_of(" \t\r");
  return first != std::string::npos && text[first] != '#';
}

// Absent if a line holds a zero byte: then it is no text, whatever else it is.
std::optional<std::vector<Line>> read_lines(std::istream& in, const std::string& name) {
  std::vector<Line> lines;
  std::string text;
  for (std::int64_t number = 1; std::getline(in, text); ++number) {
    if (!text.empty() && text.back() == '\r') text.pop_back();
    if (text.find('\0') != text.npos) return std::nullopt;
    if (!is_sentence(text)) continue;
    lines.push_back({text, name + ", line " + std::to_string(number) + ": "});
  }
  return lines;
}

ExitCode run(const Typed& typed, World& world) {
  Entering entering;
  if (typed.operands.empty()) {
    *world.err << "Which file? Say timeworn read FILE, or timeworn read - for standard input.\n";
    return typed_wrongly;
  }
  for (const std::string& name : typed.operands) {
    std::ifstream file;
    if (name != "-") file.open(name);
    if (name != "-" && !file) {
      tell(*world.err,
           "The file " + text::visible_line(name) + " cannot be read. Nothing was saved.\n");
      return cannot_read_or_write;
    }
    auto lines = read_lines(name == "-" ? *world.in : file, name == "-" ? "input" : name);
    if (!lines) {
      tell(*world.err, text::visible_line(name) +
                           " is no sheet of sentences: it holds bytes that "
                           "are no text. Nothing was saved.\n");
      return refused;
    }
    entering.lines.insert(entering.lines.end(), lines->begin(), lines->end());
  }
  if (entering.lines.empty()) {
    *world.err << "There is no sentence in it, so nothing was saved.\n";
    return typed_wrongly;
  }
  world.can_ask = false;  // a sheet's doubts are never answered wholesale at a prompt
  return enter(entering, typed, world);
}

}  // namespace

const Command read_command{
    "read",
    "log a sheet of sentences, all or none",
    "FILE|-",
    "  timeworn read sheet.txt\n"
    "  cat sheet.txt | timeworn read -\n"
    "\nOne dated sentence a line; lines that begin with # are left out. All faults are told at\n"
    "once, and then nothing is saved.\n",
    {json_option},
    run};

}  // namespace command
