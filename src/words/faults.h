// words/faults.h: how much is told of what is wrong with one line. A line with more faults is no
// sentence at all, or names a range that is wrong as a whole; thousands would bury the first.
#pragma once

#include <cstddef>
#include <string>

namespace words {

inline constexpr std::size_t most_faults_told = 20;

// "The line has 4 more faults." Empty if all of them are told.
std::string more_faults_text(std::size_t faults);

}  // namespace words
