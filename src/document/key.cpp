#include "document/key.h"

namespace document {

bool is_key(std::string_view words) {
  constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz0123456789_";
  return !words.empty() && words.find_first_not_of(letters) == words.npos;
}

}  // namespace document
