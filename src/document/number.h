#pragma once
// The two shapes that an exact value may have. Only shapes: text becomes a number in quantity
// alone.

#include <string_view>

namespace document {

// Digits with at most one sign in front and one point inside: 12, -12.5. No plus, no blanks, no
// exponent. These are safe in a spreadsheet and exact in every reader.
bool is_plain_number(std::string_view words);

// Four digits, two, two, with hyphens between: 2026-03-04. The calendar is not asked.
bool looks_like_day(std::string_view words);

}  // namespace document
