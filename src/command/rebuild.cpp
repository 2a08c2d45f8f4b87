#include <ostream>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/derive.h"
#include "store/book.h"

namespace command {

namespace {

ExitCode run(const Typed&, World& world) {
  store::Book book = store::Book::open(world.book_path, store::Access::write,
                                       {world.now, world.state_folder, std::nullopt});
  store::Pen pen(book);
  const auto entries = pen.entries();
  take_the_record_clock(entries, world);
  pen.clear_derived();
  put_all_derived(entries, world.today, pen);
  pen.commit();
  *world.out << "Rebuilt every derived table from " << entries.size()
             << " entries. The entries themselves were not touched.\n";
  return done;
}

}  // namespace

const Command rebuild_command{
    "rebuild",
    "work out all derived figures anew from the entries",
    "",
    "  timeworn rebuild\n",
    {},
    run};

}  // namespace command
