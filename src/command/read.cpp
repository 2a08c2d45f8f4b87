#include <algorithm>
#include <fstream>
#include <ostream>

#include "command/commands.h"
#include "command/enter.h"
#include "command/lines.h"
#include "text/visible.h"

namespace command {

namespace {

// Blank lines and lines that begin with # are no sentences.
bool is_sentence(const std::string& text) {
  const auto first = text.find_first_not_of(" \t\r");
  return first != std::string::npos && text[first] != '#';
}

// A line that holds a zero byte is no text, whatever else it is.
bool is_text(const std::vector<std::string>& lines) {
  return std::none_of(lines.begin(), lines.end(),
                      [](const std::string& line) { return line.find('\0') != line.npos; });
}

void add_sentences(const std::vector<std::string>& lines, const std::string& name,
                   std::vector<Line>& sentences) {
  for (std::size_t i = 0; i < lines.size(); ++i) {
    std::string text = lines[i];
    if (text.ends_with('\r')) text.pop_back();
    if (!is_sentence(text)) continue;
    sentences.push_back({text, name + ", line " + std::to_string(i + 1) + ": "});
  }
}

std::optional<std::vector<std::string>> lines_in(const std::string& name, World& world) {
  if (name == "-") return lines_of(*world.in);
  std::ifstream file(name);
  return file ? lines_of(file) : std::nullopt;
}

ExitCode run_read(const Typed& typed, World& world) {
  Entering entering;
  if (typed.operands.empty()) {
    *world.err << "Which file? Say timeworn read FILE, or timeworn read - for standard input.\n";
    return typed_wrongly;
  }
  for (const std::string& name : typed.operands) {
    const auto lines = lines_in(name, world);
    if (!lines) {
      tell(*world.err, (name == "-" ? "The input" : "The file " + text::visible_line(name)) +
                           " cannot be read. Nothing was saved.\n");
      return cannot_read_or_write;
    }
    if (!is_text(*lines)) {
      tell(*world.err, text::visible_line(name) +
                           " is no sheet of sentences: it holds bytes that "
                           "are no text. Nothing was saved.\n");
      return refused;
    }
    add_sentences(*lines, name == "-" ? "input" : name, entering.lines);
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
    run_read};

}  // namespace command
