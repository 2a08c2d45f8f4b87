#include "house/lists.h"

#include <algorithm>

#include "house/scanned.h"

namespace house {

namespace {

constexpr std::string_view word_characters = "abcdefghijklmnopqrstuvwxyz_0123456789";

std::size_t end_of_word(std::string_view text, std::size_t from) {
  return std::min(text.find_first_not_of(word_characters, from), text.size());
}

// The words of a CMake file: what stands between spaces, parentheses and quotes, comments left out.
std::vector<std::string_view> cmake_words(std::string_view text) {
  constexpr std::string_view separators = " \t()\"";
  std::vector<std::string_view> words;
  for (auto line : lines_of(text)) {
    line = line.substr(0, line.find('#'));
    for (auto at = line.find_first_not_of(separators); at != std::string_view::npos;) {
      const auto end = std::min(line.find_first_of(separators, at), line.size());
      words.push_back(line.substr(at, end - at));
      at = line.find_first_not_of(separators, end);
    }
  }
  return words;
}

std::string folder_of(std::string_view path) {
  const auto slash = path.rfind('/');
  return slash == std::string_view::npos ? std::string() : std::string(path.substr(0, slash));
}

const Source* find_source(const std::vector<Source>& sources, const std::string& path) {
  const auto found = std::find_if(sources.begin(), sources.end(),
                                  [&](const Source& source) { return source.path == path; });
  return found == sources.end() ? nullptr : &*found;
}

bool names(const Source& list, std::string_view path) {
  const auto words = cmake_words(list.text);
  return std::find(words.begin(), words.end(), path) != words.end();
}

// Does a CMakeLists.txt of this folder or of one above it name the path, as seen from there?
bool is_named_from(std::string folder, const std::string& path,
                   const std::vector<Source>& sources) {
  while (true) {
    const auto prefix = folder.empty() ? std::string() : folder + "/";
    const auto* list = find_source(sources, prefix + "CMakeLists.txt");
    if (list != nullptr && names(*list, path.substr(prefix.size()))) return true;
    if (folder.empty()) return false;
    folder = folder_of(folder);
  }
}

bool has_session(const std::string& command, const std::vector<Source>& sources) {
  return std::any_of(sources.begin(), sources.end(), [&](const Source& source) {
    return source.path.starts_with("tests/sessions/" + command) &&
           source.path.ends_with(".session");
  });
}

bool has_heading(const std::string& command, const Source* manual) {
  if (manual == nullptr) return false;
  const auto lines = lines_of(manual->text);
  return std::any_of(lines.begin(), lines.end(), [&](std::string_view line) {
    return line.starts_with('#') && find_word(line, command) != std::string_view::npos;
  });
}

}  // namespace

Findings check_cmake_lists(const std::vector<Source>& sources) {
  Findings findings;
  for (const auto& source : sources) {
    const auto folder = folder_of(source.path);
    const bool is_list = source.path.ends_with("/CMakeLists.txt");
    if (is_code(source.path) && !is_named_from(folder, source.path, sources)) {
      findings.push_back({source.path, 0, "no CMakeLists.txt names the file, so it is not built"});
    }
    if (is_list && !is_named_from(folder_of(folder), folder, sources)) {
      findings.push_back({source.path, 0, "no CMakeLists.txt above adds the folder"});
    }
  }
  return findings;
}

std::vector<std::string> commands_of(std::string_view table) {
  constexpr std::string_view ending = "_command";
  std::vector<std::string> commands;
  const auto code = scan(table).code;
  for (auto at = code.find('&'); at != std::string::npos; at = code.find('&', at + 1)) {
    const auto name = code.substr(at + 1, end_of_word(code, at + 1) - at - 1);
    if (name.size() > ending.size() && name.ends_with(ending)) {
      commands.push_back(name.substr(0, name.size() - ending.size()));
    }
  }
  return commands;
}

Findings check_commands(const std::vector<Source>& sources) {
  const std::string path = "src/command/commands.cpp";
  const auto* table = find_source(sources, path);
  const auto commands = table == nullptr ? std::vector<std::string>() : commands_of(table->text);
  if (commands.empty()) return {{path, 0, "there is no table of commands"}};
  const auto* manual = find_source(sources, "docs/manual.md");
  Findings findings;
  for (const auto& command : commands) {
    if (!has_session(command, sources)) {
      findings.push_back(
          {path, 0, command + " has no golden run tests/sessions/" + command + "*.session"});
    }
    if (!has_heading(command, manual)) {
      findings.push_back({path, 0, command + " has no heading in docs/manual.md"});
    }
  }
  return findings;
}

}  // namespace house
