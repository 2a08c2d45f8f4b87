#include <algorithm>

#include "command/book_view.h"
#include "command/commands.h"
#include "report/lives_list.h"
#include "words/words.h"

namespace command {

namespace {

using Items = std::vector<reckon::Item>;

bool concerns(const reckon::Item& item, const logbook::Thing& thing) {
  if (item.thing == thing) return true;
  const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
  return aircraft != nullptr && item.aircraft == *aircraft;
}

Items only_about(Items items, const logbook::Thing& thing) {
  std::erase_if(items, [&](const reckon::Item& item) { return !concerns(item, thing); });
  return items;
}

}  // namespace

Answering answer_lives(const Typed& typed, const BookView& view) {
  std::string title = "the whole record";
  Items items = view.lives();
  if (!typed.operands.empty()) {
    const auto found = find_thing(view, typed.joined());
    if (const auto* why = std::get_if<Unanswerable>(&found)) return *why;
    const auto& thing = std::get<logbook::Thing>(found);
    title = words::thing_name(thing);
    items = only_about(std::move(items), thing);
  }
  return answered(report::lives_list(view.histories(), title, items, view.sheet_with_work({})),
                  view);
}

const Command lives_command{"lives",
                            "limit, used and left of every limited part",
                            "[AIRCRAFT|PART]",
                            "  timeworn lives ZZ-KIT\n"
                            "  timeworn lives 'part PN-4411 B-88'\n"
                            "  timeworn lives --as-of 2026-03-04 --json\n",
                            {as_of_option, known_option, known_on_option, json_option},
                            run_asking<answer_lives>};

}  // namespace command
