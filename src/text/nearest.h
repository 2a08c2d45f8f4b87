#pragma once
// Which known word a mistyped one may have been meant for.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace text {

// The least number of single edits that turn one into the other: a character put in, left out,
// exchanged, or two neighbours swapped (Damerau 1964; no part is edited twice).
// Characters are code points; case counts.
std::size_t edit_distance(std::string_view left, std::string_view right);

// At most `most` of the candidates that `word` may stand for, the likeliest first, without regard
// to case. A candidate is near if at most a third of the typed characters (at least one) were
// edited, or if at least three characters were typed and it begins with them. Equally near ones
// are ordered by whether the first character agrees, then as they were given; none comes twice.
std::vector<std::string> nearest(std::string_view word, const std::vector<std::string>& candidates,
                                 std::size_t most);

}  // namespace text
