#include "house/source.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace house {

namespace {

namespace fs = std::filesystem;

bool is_left_out(const fs::path& folder) {
  static const std::array<std::string, 4> names = {".git", "build", "__pycache__", ".cache"};
  return std::find(names.begin(), names.end(), folder.filename().string()) != names.end();
}

std::string content(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

bool continues_word(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

}  // namespace

std::string told(const Findings& findings) {
  std::string text;
  for (const auto& finding : findings) {
    text += "\n" + finding.path + ":" + std::to_string(finding.line) + ": " + finding.what;
  }
  return text;
}

void append(Findings& findings, const Findings& more) {
  findings.insert(findings.end(), more.begin(), more.end());
}

std::vector<Source> read_tree(const std::string& root) {
  std::vector<Source> sources;
  for (auto at = fs::recursive_directory_iterator(root); at != fs::end(at); ++at) {
    if (at->is_directory()) {
      if (is_left_out(at->path())) at.disable_recursion_pending();
      continue;
    }
    // In a linked work tree .git is a file.
    if (!at->is_regular_file() || is_left_out(at->path())) continue;
    auto text = content(at->path());
    if (text.find('\0') != std::string::npos) continue;
    sources.push_back({fs::relative(at->path(), root).generic_string(), std::move(text)});
  }
  std::sort(sources.begin(), sources.end(),
            [](const Source& a, const Source& b) { return a.path < b.path; });
  return sources;
}

std::vector<std::string_view> lines_of(std::string_view text) {
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const auto end = std::min(text.find('\n'), text.size());
    lines.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

std::size_t line_at(std::string_view text, std::size_t offset) {
  const auto before = text.substr(0, offset);
  return 1 + static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
}

bool is_under(std::string_view path, std::string_view folder) {
  return path.size() > folder.size() && path.starts_with(folder) && path[folder.size()] == '/';
}

bool is_code(std::string_view path) {
  return (is_under(path, "src") || is_under(path, "tests")) &&
         (path.ends_with(".h") || path.ends_with(".cpp"));
}

std::string floor_of(std::string_view path) {
  if (!is_under(path, "src")) return {};
  const auto rest = path.substr(std::string_view("src/").size());
  const auto slash = rest.find('/');
  return slash == std::string_view::npos ? "main" : std::string(rest.substr(0, slash));
}

std::size_t find_word(std::string_view text, std::string_view word, std::size_t from) {
  for (auto at = text.find(word, from); at != std::string_view::npos;
       at = text.find(word, at + 1)) {
    const auto end = at + word.size();
    const bool begins = at == 0 || !continues_word(text[at - 1]) || !continues_word(word.front());
    const bool ends =
        end == text.size() || !continues_word(text[end]) || !continues_word(word.back());
    if (begins && ends) return at;
  }
  return std::string_view::npos;
}

}  // namespace house
