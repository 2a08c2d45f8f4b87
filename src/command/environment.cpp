#include "command/environment.h"

namespace command {

namespace {

std::string folder(const Variable& variable, const std::string& name, const std::string& below) {
  const auto set = variable(name);
  if (set && !set->empty() && set->front() == '/') return *set + "/timeworn";
  return variable("HOME").value_or("") + below + "/timeworn";
}

}  // namespace

std::string default_book_path(const Variable& variable) {
  const auto named = variable("TIMEWORN_BOOK");
  if (named && !named->empty()) return *named;
  return folder(variable, "XDG_DATA_HOME", "/.local/share") + "/book.db";
}

std::string default_state_folder(const Variable& variable) {
  return folder(variable, "XDG_STATE_HOME", "/.local/state");
}

std::string default_config_folder(const Variable& variable) {
  return folder(variable, "XDG_CONFIG_HOME", "/.config");
}

}  // namespace command
