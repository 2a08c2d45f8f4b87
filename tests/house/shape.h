// house/shape.h: the size of things. Small files and short functions are read; long ones are
// trusted.
#pragma once

#include <cstddef>

#include "house/source.h"

namespace house {

inline constexpr std::size_t file_lines_limit = 400;
inline constexpr std::size_t function_lines_limit = 50;
inline constexpr std::size_t line_columns_limit = 100;
inline constexpr std::size_t parameters_limit = 4;
inline constexpr std::size_t nesting_limit = 3;

// All limits above, over one file of code.
Findings check_shape(const Source& source);

// A header says once that it is read once, and opens with a comment on what lives there.
Findings check_header(const Source& source);

}  // namespace house
