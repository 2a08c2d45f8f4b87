#include "document/number.h"

#include <algorithm>

namespace document {
namespace {

bool is_digits(std::string_view words) {
  return !words.empty() && std::all_of(words.begin(), words.end(),
                                       [](char byte) { return byte >= '0' && byte <= '9'; });
}

}  // namespace

bool is_plain_number(std::string_view words) {
  if (words.starts_with('-')) words.remove_prefix(1);
  const std::size_t point = words.find('.');
  if (point == words.npos) return is_digits(words);
  return is_digits(words.substr(0, point)) && is_digits(words.substr(point + 1));
}

bool looks_like_day(std::string_view words) {
  return words.size() == 10 && words[4] == '-' && words[7] == '-' &&
         is_digits(words.substr(0, 4)) && is_digits(words.substr(5, 2)) &&
         is_digits(words.substr(8));
}

}  // namespace document
