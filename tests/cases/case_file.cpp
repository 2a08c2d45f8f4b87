#include "cases/case_file.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>

#include "cases/pieces.h"

namespace cases {

namespace {

struct Keyword {
  std::string_view word;
  Act act;
};

constexpr std::array keywords = {
    Keyword{"say", Act::say},     Keyword{"accept", Act::accept}, Keyword{"refuse", Act::refuse},
    Keyword{"doubt", Act::doubt}, Keyword{"typed", Act::type},    Keyword{"do", Act::perform},
    Keyword{"ask", Act::ask},
};

std::optional<Act> act_of(std::string_view word) {
  for (const Keyword& keyword : keywords) {
    if (keyword.word == word) return keyword.act;
  }
  return std::nullopt;
}

// source, today and settings; true if the word is one of them.
bool take_head(CaseFile& file, std::string_view word, const std::string& text) {
  if (word == "source") {
    file.source += (file.source.empty() ? "" : " ") + text;
  } else if (word == "today") {
    file.today = text;
  } else if (word == "settings") {
    file.settings = text;
  } else {
    return false;
  }
  return true;
}

Step step_of(Act act, Line line) {
  Step step;
  step.act = act;
  step.what = std::move(line);
  const bool has_label = act == Act::perform || act == Act::accept;
  if (has_label) step.label = take_label(step.what.text);
  return step;
}

std::string complaint(const Line& line) {
  return "line " + std::to_string(line.number) + " cannot be read: " + line.text;
}

// A line from the first column: "word: text".
void take_keyword(CaseFile& file, const Line& line) {
  const auto colon = line.text.find(':');
  const std::string word = line.text.substr(0, colon);
  const std::string text(colon == std::string::npos
                             ? std::string_view()
                             : trimmed(std::string_view(line.text).substr(colon + 1)));
  if (colon == std::string::npos) {
    file.wrong.push_back(complaint(line));
  } else if (const auto act = act_of(word)) {
    file.steps.push_back(step_of(*act, {line.number, text}));
  } else if (!take_head(file, word, text)) {
    file.wrong.push_back(complaint(line));
  }
}

}  // namespace

std::string take_label(std::string& text) {
  const auto sign = text.find(" = ");
  if (sign == std::string::npos || sign == 0 || sign > 12) return {};
  const std::string label = text.substr(0, sign);
  const bool is_label =
      std::all_of(label.begin(), label.end(), [](unsigned char c) { return std::isalnum(c) != 0; });
  if (!is_label) return {};
  text = std::string(trimmed(std::string_view(text).substr(sign + 3)));
  return label;
}

CaseFile read_case(const std::string& name, const std::string& text) {
  CaseFile file;
  file.name = name;
  std::size_t number = 0;
  for (const std::string& whole : lines_of(text)) {
    ++number;
    const std::string_view line = trimmed(whole);
    if (line.empty() || line.front() == '#') continue;
    const bool is_indented = whole.front() == ' ';
    if (!is_indented) {
      take_keyword(file, {number, std::string(line)});
    } else if (file.steps.empty()) {
      file.wrong.push_back(complaint({number, std::string(line)}));
    } else {
      file.steps.back().lines.push_back({number, std::string(line)});
    }
  }
  if (file.source.empty()) file.wrong.emplace_back("it names no source");
  if (file.steps.empty()) file.wrong.emplace_back("it has no step");
  return file;
}

}  // namespace cases
