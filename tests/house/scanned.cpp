#include "house/scanned.h"

#include <algorithm>
#include <cctype>

#include "house/source.h"

namespace house {

namespace {

class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) { result_.code.reserve(text.size()); }

  Scanned run() {
    while (at_ < text_.size()) step();
    return std::move(result_);
  }

 private:
  void step() {
    if (rest().starts_with("//")) {
      blank(std::min(text_.find('\n', at_), text_.size()));
    } else if (rest().starts_with("/*")) {
      blank(after("*/", at_ + 2));
    } else if (rest().starts_with("R\"") && !follows_word()) {
      raw();
    } else if (rest().front() == '"' || (rest().front() == '\'' && !follows_word())) {
      quoted(rest().front());
    } else {
      keep();
    }
  }

  std::string_view rest() const { return text_.substr(at_); }

  // A quote after a digit separates digits (1'000); an R after a letter ends a word.
  bool follows_word() const {
    return at_ > 0 && std::isalnum(static_cast<unsigned char>(text_[at_ - 1])) != 0;
  }

  std::size_t after(std::string_view mark, std::size_t from) const {
    const auto found = text_.find(mark, from);
    return found == std::string_view::npos ? text_.size() : found + mark.size();
  }

  void keep() { result_.code += text_[at_++]; }

  void blank(std::size_t end) {
    for (; at_ < end; ++at_) result_.code += text_[at_] == '\n' ? '\n' : ' ';
  }

  void raw() {
    const auto open = std::min(text_.find('(', at_), text_.size() - 1);
    const auto mark = ")" + std::string(text_.substr(at_ + 2, open - at_ - 2)) + "\"";
    const auto end = after(mark, open);
    take(open + 1, end > mark.size() ? end - mark.size() : end);
    blank(end);
  }

  void quoted(char quote) {
    auto end = at_ + 1;
    while (end < text_.size() && text_[end] != quote) end += text_[end] == '\\' ? 2U : 1U;
    end = std::min(end, text_.size() - 1);
    if (quote == '"') take(at_ + 1, end);
    keep();
    blank(end);
    if (at_ < text_.size()) keep();
  }

  void take(std::size_t begin, std::size_t end) {
    const auto line_begin = result_.code.find_last_of('\n') + 1;
    if (trimmed(std::string_view(result_.code).substr(line_begin)).starts_with('#')) return;
    result_.literals.push_back(
        {line_at(text_, begin), std::string(text_.substr(begin, end > begin ? end - begin : 0))});
  }

  std::string_view text_;
  std::size_t at_ = 0;
  Scanned result_;
};

}  // namespace

Scanned scan(std::string_view text) { return Scanner(text).run(); }

std::vector<Include> includes_of(std::string_view text) {
  const auto code = scan(text).code;
  const auto code_lines = lines_of(code);
  const auto lines = lines_of(text);
  std::vector<Include> includes;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!trimmed(code_lines[i]).starts_with("#include")) continue;
    const auto begin = lines[i].find_first_of("\"<");
    const auto end = lines[i].find_first_of("\">", begin + 1);
    if (begin == std::string_view::npos || end == std::string_view::npos) continue;
    includes.push_back(
        {i + 1, std::string(lines[i].substr(begin + 1, end - begin - 1)), lines[i][begin] == '"'});
  }
  return includes;
}

std::string without_directives(std::string code) {
  bool is_continued = false;
  std::size_t begin = 0;
  while (begin < code.size()) {
    const auto end = std::min(code.find('\n', begin), code.size());
    const auto line = trimmed(std::string_view(code).substr(begin, end - begin));
    const bool is_directive = is_continued || line.starts_with('#');
    is_continued = is_directive && line.ends_with('\\');
    if (is_directive)
      std::fill_n(code.begin() + static_cast<std::ptrdiff_t>(begin), end - begin, ' ');
    begin = end + 1;
  }
  return code;
}

}  // namespace house
