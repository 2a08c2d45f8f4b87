#include "command/the_book.h"

namespace command {

store::Surroundings surroundings(const World& world) {
  return {world.now, world.state_folder, std::nullopt, world.today};
}

store::Book open_to_read(const World& world) {
  return store::Book::open(world.book_path, store::Access::read, surroundings(world));
}

store::Book open_to_write(const World& world) {
  return store::Book::open(world.book_path, store::Access::write, surroundings(world));
}

}  // namespace command
