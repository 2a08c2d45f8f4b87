#include "command/command.h"

namespace command {

std::optional<std::string> Typed::text(std::string_view option) const {
  const auto found = options.find(option);
  if (found == options.end() || found->second.empty()) return std::nullopt;
  return found->second.back();
}

std::string Typed::joined() const {
  std::string all;
  for (const std::string& operand : operands) {
    if (!all.empty()) all += ' ';
    all += operand;
  }
  return all;
}

}  // namespace command
