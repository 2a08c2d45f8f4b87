// sentence/prepare.h: what must hold of the bytes of a line before it is read as language.
#pragma once

#include <string_view>
#include <vector>

#include "sentence/sentence.h"

namespace sentence {

inline constexpr std::size_t most_bytes = 4096;

// Too long, characters that act instead of being seen, quotes that are not closed.
std::vector<Misreading> faults_of_bytes(std::string_view text);
// Where the language of the line ends: without blanks and without its final point.
std::size_t end_of_language(std::string_view text);

}  // namespace sentence
