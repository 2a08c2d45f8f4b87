#pragma once
// Names inside a record line, where blanks, commas, colons and bars have a meaning of their own.

#include <optional>
#include <string>
#include <string_view>

namespace text {

// Percent-encodes (RFC 3986 section 2.1, upper-case digits) the blank , : | % and every byte of:
// control characters (text/visible.h) and characters without any width (U+00AD, U+200B-D,
// U+2060-4, U+FEFF, U+FFF9-B, U+E0000-7F). All other UTF-8 stays as it is. The list is fixed,
// because the result is digested. Bytes that are not UTF-8 are encoded as well, but not read back.
std::string percent_encoded(std::string_view name);

// The name again. Refused: whatever percent_encoded would not have written, so that a name has
// one form only (a lone %, lower-case digits, a letter encoded without need, bytes not UTF-8).
std::optional<std::string> percent_decoded(std::string_view encoded);

}  // namespace text
