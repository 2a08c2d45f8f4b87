#include "house/functions.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>
#include <utility>

#include "house/scanned.h"
#include "house/source.h"

namespace house {

namespace {

enum class Kind { space, type, function, block, initialiser };

// A brace that is open, and what to go on with when it closes.
struct Scope {
  Kind kind = Kind::space;
  bool is_control = false;
  bool resumes = false;  // the heading goes on after the closing brace
  int parentheses = 0;
  std::string heading;
  std::size_t heading_line = 0;
};

bool has_any_word(std::string_view text, const std::vector<std::string_view>& words) {
  return std::any_of(words.begin(), words.end(), [&](std::string_view word) {
    return find_word(text, word) != std::string_view::npos;
  });
}

// The first word of the text, without what follows it.
std::string_view first_word(std::string_view text) {
  const auto end = std::find_if(text.begin(), text.end(), [](char c) {
    return std::isalpha(static_cast<unsigned char>(c)) == 0 && c != '_';
  });
  return text.substr(0, static_cast<std::size_t>(end - text.begin()));
}

std::size_t end_of_angles(std::string_view text, std::size_t open) {
  int depth = 0;
  for (auto at = open; at < text.size(); ++at) {
    if (text[at] == '<') ++depth;
    if (text[at] == '>' && --depth == 0) return at + 1;
  }
  return text.size();
}

std::string_view without_template(std::string_view heading) {
  while (first_word(heading) == "template") {
    heading.remove_prefix(end_of_angles(heading, heading.find('<')));
    heading = trimmed(heading);
  }
  return heading;
}

// A colon after the parameters that is no part of `::` begins the member initialisers.
bool has_member_initialisers(std::string_view heading) {
  for (auto at = heading.find(')'); at != std::string_view::npos && at + 1 < heading.size(); ++at) {
    if (heading[at] == ':' && heading[at - 1] != ':' && heading[at + 1] != ':') return true;
  }
  return false;
}

bool opens_member(std::string_view heading) {
  const char last = heading.back();
  return has_member_initialisers(heading) && last != ')' && last != '}';
}

Kind kind_of(std::string_view full_heading) {
  const auto heading = without_template(full_heading);
  if (has_any_word(heading, {"namespace"}) || first_word(heading) == "extern") return Kind::space;
  const auto open = std::min(heading.find('('), heading.size());
  if (has_any_word(heading.substr(0, open), {"class", "struct", "union", "enum"}))
    return Kind::type;
  if (heading.find(')') == std::string_view::npos || heading.ends_with('=')) {
    return Kind::initialiser;
  }
  return opens_member(heading) ? Kind::initialiser : Kind::function;
}

bool is_control(std::string_view heading) {
  static constexpr std::array<std::string_view, 8> words = {"if", "for",  "while", "switch",
                                                            "do", "else", "try",   "catch"};
  return std::find(words.begin(), words.end(), first_word(heading)) != words.end();
}

class FunctionScanner {
 public:
  explicit FunctionScanner(std::string code) : code_(std::move(code)) {}

  std::vector<Function> run() {
    for (const char c : code_) {
      step(c);
      if (c == '\n') ++line_;
    }
    return std::move(functions_);
  }

 private:
  void step(char c) {
    if (c == '{') return open();
    if (c == '}') return close();
    if (ends_heading(c)) return heading_.clear();
    if (c == '(') ++parentheses_;
    if (c == ')') --parentheses_;
    if (heading_.empty() && std::isspace(static_cast<unsigned char>(c)) != 0) return;
    if (heading_.empty()) heading_line_ = line_;
    heading_ += c;
  }

  bool ends_heading(char c) const {
    if (parentheses_ > 0) return false;
    if (c == ';') return true;
    if (c == ',') return !scopes_.empty() && scopes_.back().kind == Kind::initialiser;
    if (c == ':') return heading_ == "public" || heading_ == "private" || heading_ == "protected";
    return c == '\n' && heading_.starts_with("BOOST_") &&
           heading_.find("_SUITE") != std::string::npos;
  }

  void open() {
    const std::string heading(trimmed(heading_));
    Scope scope;
    scope.kind = function_ ? Kind::block : kind_of(heading);
    scope.is_control = function_.has_value() && parentheses_ == 0 && is_control(heading);
    scope.resumes = parentheses_ > 0 || (!function_ && !heading.empty() && opens_member(heading));
    scope.parentheses = std::exchange(parentheses_, 0);
    scope.heading = heading_;
    scope.heading_line = heading_line_;
    if (scope.kind == Kind::function) begin_function(heading);
    scopes_.push_back(std::move(scope));
    note_nesting();
    heading_.clear();
  }

  void begin_function(const std::string& heading) {
    function_ = Function{heading, heading_line_, 0, parameters_of(heading), 0};
  }

  void note_nesting() {
    if (!function_) return;
    const auto depth = std::count_if(scopes_.begin(), scopes_.end(),
                                     [](const Scope& scope) { return scope.is_control; });
    function_->nesting = std::max(function_->nesting, static_cast<std::size_t>(depth));
  }

  void close() {
    heading_.clear();
    if (scopes_.empty()) return;
    const auto scope = std::move(scopes_.back());
    scopes_.pop_back();
    parentheses_ = scope.parentheses;
    if (scope.kind == Kind::function) end_function();
    if (!scope.resumes) return;
    heading_ = scope.heading + "{}";
    heading_line_ = scope.heading_line;
  }

  void end_function() {
    function_->last_line = line_;
    functions_.push_back(std::move(*function_));
    function_.reset();
  }

  std::string code_;
  std::size_t line_ = 1;
  std::string heading_;
  std::size_t heading_line_ = 1;
  int parentheses_ = 0;
  std::vector<Scope> scopes_;
  std::optional<Function> function_;
  std::vector<Function> functions_;
};

// Where the parameters open: the first parenthesis that belongs to no decltype, explicit or
// operator().
std::size_t open_of_parameters(std::string_view heading) {
  auto open = heading.find('(');
  while (open != std::string_view::npos) {
    const auto before = trimmed(heading.substr(0, open));
    const bool is_other = before.ends_with("decltype") || before.ends_with("explicit") ||
                          before.ends_with("alignas") || before.ends_with("requires") ||
                          before.ends_with("operator");
    if (!is_other) return open;
    open = heading.find('(', heading.find(')', open));
  }
  return open;
}

}  // namespace

std::vector<Function> functions_of(std::string_view text) {
  return FunctionScanner(without_directives(scan(text).code)).run();
}

std::size_t parameters_of(std::string_view full_heading) {
  const auto heading = without_template(trimmed(full_heading));
  const auto open = open_of_parameters(heading);
  if (open == std::string_view::npos) return 0;
  int depth = 0;
  std::size_t commas = 0;
  bool is_empty = true;
  for (const char c : heading.substr(open)) {
    if (c == '(' || c == '<' || c == '[' || c == '{') ++depth;
    if (c == ')' || c == '>' || c == ']' || c == '}') --depth;
    if (depth == 0) break;
    if (c == ',' && depth == 1) ++commas;
    if (c != '(' && c != ' ' && c != '\n') is_empty = false;
  }
  return is_empty ? 0 : commas + 1;
}

}  // namespace house
