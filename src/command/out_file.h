// command/out_file.h: how a page or a table becomes a file: where the user said, whole or not at
// all, and never over a book or through a link.
#pragma once

#include <optional>
#include <string>

#include "command/book_view.h"

namespace command {

// Durable when it returns. What stands there already is replaced, unless it is a book or no plain
// file. Throws store::Trouble not_allowed if a symbolic link of another user lies on the way.
std::optional<Unanswerable> write_file(const std::string& path, const std::string& bytes);

}  // namespace command
