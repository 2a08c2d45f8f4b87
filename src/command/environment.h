// command/environment.h: where a person's book and the marks of its writers lie, by the XDG base
// directory rules: variables that are not absolute paths are ignored.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace command {

using Variable = std::function<std::optional<std::string>(const std::string& name)>;

// $TIMEWORN_BOOK, else $XDG_DATA_HOME/timeworn/book.db, else ~/.local/share/timeworn/book.db.
std::string default_book_path(const Variable& variable);
// $XDG_STATE_HOME/timeworn, else ~/.local/state/timeworn.
std::string default_state_folder(const Variable& variable);
// $XDG_CONFIG_HOME/timeworn, else ~/.config/timeworn.
std::string default_config_folder(const Variable& variable);

}  // namespace command
