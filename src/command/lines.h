// command/lines.h: what is typed or piped in, line by line. Never here: what a line means.
#pragma once

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace command {

// Every line to the end, without line ends. Absent if the reading broke off before the end: half a
// sheet must never pass for a whole one.
std::optional<std::vector<std::string>> lines_of(std::istream& in);

// The next line; absent at the end, and if the reading broke off in the middle of it.
std::optional<std::string> next_line(std::istream& in);

}  // namespace command
