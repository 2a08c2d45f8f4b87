#include <algorithm>

#include "command/book_view.h"
#include "command/commands.h"
#include "report/history_list.h"
#include "sentence/sentence.h"
#include "words/words.h"

namespace command {

namespace {

using logbook::Entry;

// The frame lists all that a sentence touches.
bool touches(const Entry& entry, const logbook::About& thing) {
  return std::find(entry.frame.about.begin(), entry.frame.about.end(), thing) !=
         entry.frame.about.end();
}

struct AboutThing {
  logbook::About operator()(const logbook::Aircraft& it) const {
    return {"aircraft", {it.registration.text}};
  }
  logbook::About operator()(const logbook::Engine& it) const {
    return {"engine", {it.model.text, it.serial.text}};
  }
  logbook::About operator()(const logbook::Part& it) const {
    return {"part", {it.number.text, it.serial.text}};
  }
};

// Entries about the thing, and those that correct or strike them.
std::vector<const Entry*> entries_about(const BookView& view, const logbook::Thing& thing) {
  const logbook::About about = std::visit(AboutThing{}, thing);
  std::vector<const Entry*> found;
  std::vector<logbook::EntryId> ids;
  const auto refers_to_one = [&](const Entry& entry) {
    return std::any_of(entry.frame.refers.begin(), entry.frame.refers.end(),
                       [&](const logbook::EntryId& id) {
                         return std::find(ids.begin(), ids.end(), id) != ids.end();
                       });
  };
  for (const Entry& entry : view.entries) {
    if (!touches(entry, about) && !refers_to_one(entry)) continue;
    found.push_back(&entry);
    ids.push_back(entry.id);
  }
  return found;
}

}  // namespace

Answering answer_history(const Typed& typed, const BookView& view) {
  const auto found = find_thing(view, typed.joined());
  if (const auto* why = std::get_if<Unanswerable>(&found)) return *why;
  const auto& thing = std::get<logbook::Thing>(found);
  return answered(report::history_list(view.histories(), view.standing,
                                       {words::thing_name(thing), entries_about(view, thing)},
                                       view.sheet_with_work(thing)));
}

const Command history_command{"history",
                              "every entry about one thing, corrections shown",
                              "AIRCRAFT|ENGINE|PART",
                              "  timeworn history ZZ-KIT\n"
                              "  timeworn history 'part PN-4411 B-88'\n",
                              {as_of_option, known_option, known_on_option, json_option},
                              run_asking<answer_history>};

}  // namespace command
