// cases/pieces.h: cutting lines of case and session files into words.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace cases {

std::string_view trimmed(std::string_view text);
std::vector<std::string> lines_of(std::string_view text);
// At every occurrence of the separator that stands outside quotes; each piece trimmed.
std::vector<std::string> pieces_of(std::string_view text, std::string_view separator);
// As a shell cuts a command line: 'one word', "one word", nothing is replaced.
std::vector<std::string> words_of(std::string_view text);
// `"annual inspection"` without its quotes; other text as it stands.
std::string unquoted(std::string_view text);
std::string lower(std::string_view text);
bool holds(std::string_view text, std::string_view words);

}  // namespace cases
