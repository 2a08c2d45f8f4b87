// command/the_book.h: the book that the world names, opened for a question or for an entry.
#pragma once

#include "command/command.h"
#include "store/book.h"

namespace command {

store::Surroundings surroundings(const World& world);
store::Book open_to_read(const World& world);
store::Book open_to_write(const World& world);

}  // namespace command
