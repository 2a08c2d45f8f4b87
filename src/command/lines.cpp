#include "command/lines.h"

#include <istream>

namespace command {

// A stream tells of a failing disk, and of memory that was refused, by nothing but its bad bit.
std::optional<std::string> next_line(std::istream& in) {
  std::string line;
  const bool is_read = static_cast<bool>(std::getline(in, line));
  return is_read && !in.bad() ? std::optional(std::move(line)) : std::nullopt;
}

std::optional<std::vector<std::string>> lines_of(std::istream& in) {
  std::vector<std::string> lines;
  while (auto line = next_line(in)) lines.push_back(*std::move(line));
  return in.bad() ? std::nullopt : std::optional(std::move(lines));
}

}  // namespace command
