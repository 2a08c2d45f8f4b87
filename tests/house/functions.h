// house/functions.h: where functions begin and end, found by their braces. It knows namespaces,
// classes, initialisers, member initialisers and lambdas well enough for our own code.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace house {

struct Function {
  std::string heading;  // the text before the opening brace, spaces as written
  std::size_t first_line = 0;
  std::size_t last_line = 0;
  std::size_t parameters = 0;
  std::size_t nesting = 0;  // the deepest of its if, for, while, switch, do and try blocks

  std::size_t lines() const { return last_line - first_line + 1; }
};

std::vector<Function> functions_of(std::string_view text);

// How many parameters a heading such as `int add(int a, int b) const` has.
std::size_t parameters_of(std::string_view heading);

}  // namespace house
