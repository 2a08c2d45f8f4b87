#include "sentence/sorts/known.h"

#include <utility>

namespace sentence {

bool take_known(Cursor& cursor, std::string_view name) {
  const std::size_t start = cursor.skip_blanks();
  if (opens_quote(cursor.text(), start)) {
    const std::optional<std::string> quoted = cursor.take_quoted();
    if (quoted && *quoted == name) return true;
    cursor.go_to(start);
    return false;
  }
  Trace* trace = cursor.trace();
  cursor.trace_to(nullptr);
  const bool is_taken = cursor.take_words(name);
  cursor.trace_to(trace);
  return is_taken;
}

bool refuse_two_things(Cursor& cursor, std::size_t from, const std::string& first,
                       const std::string& second) {
  Misreading misreading;
  misreading.fault = Fault::two_things;
  misreading.from = static_cast<std::uint16_t>(from);
  misreading.to = static_cast<std::uint16_t>(cursor.at());
  misreading.read = std::string(cursor.text().substr(from, cursor.at() - from));
  misreading.first = first;
  misreading.second = second;
  return cursor.refuse(std::move(misreading));
}

}  // namespace sentence
