#include <ostream>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/derive.h"
#include "command/enter.h"
#include "command/the_book.h"
#include "words/receipts.h"

namespace command {

namespace {

ExitCode run_rebuild(const Typed&, World& world) {
  store::Book book = open_to_write(world);
  store::Pen pen(book);
  const auto entries = pen.entries();
  take_the_record_clock(entries, world);
  pen.clear_derived();
  put_all_derived(entries, world.today, pen);
  pen.commit();
  world.has_saved = true;
  *world.out << "Rebuilt every derived table from " << entries.size()
             << " entries. The entries themselves were not touched.\n";
  if (!pen.changed_arrivals().empty()) {
    *world.out << words::changed_arrivals_text(pen.changed_arrivals()) << '\n';
  }
  if (book.began_a_new_writer()) *world.out << copy_notice << '\n';
  return done;
}

}  // namespace

const Command rebuild_command{"rebuild", "work out all derived figures anew from the entries",
                              "",        "  timeworn rebuild\n",
                              {},        run_rebuild};

}  // namespace command
