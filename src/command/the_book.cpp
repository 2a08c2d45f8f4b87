#include "command/the_book.h"

#include "store/place.h"
#include "text/visible.h"

namespace command {

namespace {

std::string warning(store::PlaceDoubt doubt, const std::string& path) {
  switch (doubt) {
    case store::PlaceDoubt::others_may_write_file:
      return "others on this machine may write to " + path + ". Take that right away with chmod.";
    case store::PlaceDoubt::others_may_write_folder:
      return "others on this machine may write in the folder of " + path +
             ", so they could put another book in its place.";
    case store::PlaceDoubt::network:
      return path +
             " lies on a network or in a synchronised folder, where a book can be damaged. Keep it "
             "on a disk of this machine; timeworn backup makes copies.";
    case store::PlaceDoubt::stick:
      return path +
             " lies on a stick. Work on a disk of this machine; timeworn backup makes copies on "
             "the "
             "stick.";
  }
  return {};
}

store::Book opened(World& world, store::Access access) {
  store::Book book = store::Book::open(world.book_path, access, surroundings(world));
  const bool is_first_time = !world.has_warned_of_place;
  warn_of_place(world.book_path, world);
  if (is_first_time && book.is_of_newer_version()) {
    tell(*world.err, "Warning: " + text::visible_line(world.book_path) +
                         " was written by a newer Timeworn. It is only read, and what this version "
                         "cannot read is not counted.\n");
  }
  return book;
}

}  // namespace

store::Surroundings surroundings(const World& world) {
  return {world.now, world.state_folder, std::nullopt, world.today};
}

void warn_of_place(const std::string& path, World& world) {
  if (world.has_warned_of_place) return;
  world.has_warned_of_place = true;
  for (const store::PlaceDoubt doubt : store::doubts_of_place(path)) {
    tell(*world.err, "Warning: " + warning(doubt, text::visible_line(path)) + "\n");
  }
}

store::Book open_to_read(World& world) { return opened(world, store::Access::read); }
store::Book open_to_write(World& world) { return opened(world, store::Access::write); }
store::Book open_to_prove(World& world) { return opened(world, store::Access::prove); }

}  // namespace command
