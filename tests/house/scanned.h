// house/scanned.h: C++ text taken apart into code and string literals, by a scanner that knows
// comments, quotes, raw strings and directives, and nothing else of the language.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace house {

struct Literal {
  std::size_t line = 0;
  std::string text;  // as written between the quotes, escapes left as they are
};

struct Include {
  std::size_t line = 0;
  std::string path;
  bool is_quoted = false;  // "path", so one of ours; else <path>
};

struct Scanned {
  std::string code;  // same length and lines as the text; comments and literals are blank
  std::vector<Literal> literals;  // of code, not of directives
};

Scanned scan(std::string_view text);

std::vector<Include> includes_of(std::string_view text);

// The code with directives blanked as well, continued lines included.
std::string without_directives(std::string code);

}  // namespace house
