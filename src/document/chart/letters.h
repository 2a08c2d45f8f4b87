#pragma once
// How wide words are in a drawing, before anyone knows the typeface: by the wider usual ones, so
// that text finds its room everywhere.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace document {

constexpr double letter_height = 15;  // units of a drawing
constexpr double line_height = 20;
constexpr double bold_widening = 1.12;

// Units of a drawing, rounded up. The measures of single letters are those of DejaVu Sans, taken
// in groups; of the common typefaces it is among the widest.
std::size_t drawn_width(std::string_view words);

// Lines no wider than that; a word that is wider is broken, since a drawing has an edge.
std::vector<std::string> boxed(std::string_view words, double width);

}  // namespace document
