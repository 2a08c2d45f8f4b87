// command/the_book.h: the book that the world names, opened for a question or for an entry.
#pragma once

#include "command/command.h"
#include "store/book.h"

namespace command {

store::Surroundings surroundings(const World& world);
// Each warns once a command on standard error if the book's place speaks against it.
store::Book open_to_read(World& world);
store::Book open_to_write(World& world);
// For check: what is wrong with the file is a finding and keeps nobody from looking.
store::Book open_to_prove(World& world);
void warn_of_place(const std::string& path, World& world);

}  // namespace command
