#include "text/pieces.h"

namespace text {

std::vector<std::string_view> split(std::string_view words, char separator) {
  std::vector<std::string_view> result;
  for (std::size_t end = words.find(separator); end != words.npos; end = words.find(separator)) {
    result.push_back(words.substr(0, end));
    words.remove_prefix(end + 1);
  }
  result.push_back(words);
  return result;
}

std::string join(const std::vector<std::string>& pieces, std::string_view between) {
  std::string result;
  for (const std::string& piece : pieces) {
    if (&piece != &pieces.front()) result += between;
    result += piece;
  }
  return result;
}

std::string_view trim(std::string_view words) {
  constexpr std::string_view blanks = " \t\n\r";
  const std::size_t first = words.find_first_not_of(blanks);
  if (first == words.npos) return {};
  return words.substr(first, words.find_last_not_of(blanks) - first + 1);
}

std::string upper(std::string_view words) {
  std::string result(words);
  for (char& letter : result) {
    if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
  }
  return result;
}

}  // namespace text
