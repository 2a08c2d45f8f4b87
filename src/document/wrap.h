#pragma once
// Lines for a screen: broken at blanks, padded by what is seen, never cut inside a word.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "document/document.h"
#include "text/unicode.h"

namespace document {

// How wide words are, in whatever the lines are counted in.
using Measure = std::size_t (*)(std::string_view);

// The words on lines of at most `columns`, or so much of another measure. Only the ASCII blank is a
// place to break, so a number stays whole, and so does a number with the short word behind it (2.8
// h, 30 June). What is wider than the screen stands alone and reaches over its edge. At least one
// line. Control characters, line feeds among them, are shown visibly.
std::vector<std::string> wrapped(std::string_view words, std::size_t columns,
                                 Measure measure = text::columns);

// The words with blanks behind (left) or before (right), `columns` wide if they were not wider.
std::string padded(std::string_view words, std::size_t columns, Align align);

std::string without_end_blanks(std::string line);

// The columns of the widest piece that is not broken: no line can be made narrower than that.
std::size_t widest_piece(std::string_view words);

}  // namespace document
