#include "command/command.h"

#include <ostream>

#include "text/visible.h"

namespace command {

std::optional<std::string> Typed::text(std::string_view option) const {
  const auto found = options.find(option);
  if (found == options.end() || found->second.empty()) return std::nullopt;
  return found->second.back();
}

void tell(std::ostream& stream, std::string_view words) { stream << text::visible(words); }

std::string Typed::joined() const {
  std::string all;
  for (const std::string& operand : operands) {
    if (!all.empty()) all += ' ';
    all += operand;
  }
  return all;
}

}  // namespace command
