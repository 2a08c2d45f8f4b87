#include <algorithm>
#include <ostream>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/derive.h"
#include "command/enter.h"
#include "command/the_book.h"
#include "words/signings.h"
#include "words/words.h"

namespace command {

namespace {

constexpr std::size_t most_named = 5;

// The new digests are of what stands now, so this is the last time that it can be told.
void say_changed(const std::vector<logbook::EntryId>& changed, World& world) {
  if (changed.empty()) return;
  std::vector<std::string> named;
  for (std::size_t i = 0; i < std::min(changed.size(), most_named); ++i) {
    named.push_back(words::entry_name(changed[i]));
  }
  *world.out << words::some_text(
                    "When these came is not what was noted then: {}. It was left as it "
                    "is; a copy may tell better.",
                    named, changed.size())
             << '\n';
}

ExitCode run(const Typed&, World& world) {
  store::Book book = open_to_write(world);
  store::Pen pen(book);
  const auto entries = pen.entries();
  take_the_record_clock(entries, world);
  const auto changed = pen.clear_derived();
  put_all_derived(entries, world.today, pen);
  pen.commit();
  world.has_saved = true;
  *world.out << "Rebuilt every derived table from " << entries.size()
             << " entries. The entries themselves were not touched.\n";
  say_changed(changed, world);
  if (book.began_a_new_writer()) *world.out << copy_notice << '\n';
  return done;
}

}  // namespace

const Command rebuild_command{"rebuild", "work out all derived figures anew from the entries",
                              "",        "  timeworn rebuild\n",
                              {},        run};

}  // namespace command
