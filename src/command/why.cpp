#include <algorithm>

#include "command/book_view.h"
#include "command/commands.h"
#include "report/why_answer.h"
#include "text/pieces.h"
#include "words/signings.h"

namespace command {

namespace {

using Items = std::vector<reckon::Item>;

// Every item of the record once: what is due on each aircraft, then lives off any aircraft.
Items all_items(const BookView& view) {
  Items items;
  for (const auto& thing : view.histories().things()) {
    if (const auto* aircraft = std::get_if<logbook::Aircraft>(&thing)) {
      for (auto& item : view.due(*aircraft)) items.push_back(std::move(item));
    }
  }
  for (auto& item : view.lives()) {
    if (!item.aircraft) items.push_back(std::move(item));
  }
  return items;
}

bool is_of_task(const reckon::Item& item, const std::string& name) {
  return item.task != nullptr && text::upper(item.task->name.text) == text::upper(name);
}

std::variant<Items, Unanswerable> find_items(const BookView& view, const std::string& name) {
  Items items = all_items(view);
  Items of_task = items;
  std::erase_if(of_task, [&](const reckon::Item& item) { return !is_of_task(item, name); });
  if (!of_task.empty()) return of_task;
  const auto found = find_thing(view, name);
  if (const auto* why = std::get_if<Unanswerable>(&found)) return *why;
  const auto& thing = std::get<logbook::Thing>(found);
  std::erase_if(items, [&](const reckon::Item& item) { return item.thing != thing; });
  if (!items.empty()) return items;
  return Unanswerable{"No limit and no task is on record for \"" + name + "\".", no_such};
}

// With why the work that would move them does not count.
report::Sheet sheet_of(const BookView& view, const Items& items) {
  report::Sheet sheet = view.sheet();
  for (const reckon::StandingFact& fact : view.standing.facts) {
    const bool would_move_one =
        !fact.is_counted && std::any_of(items.begin(), items.end(), [&](const reckon::Item& item) {
          const auto& work = item.not_counted;
          return std::find(work.begin(), work.end(), fact.chain.back()) != work.end();
        });
    if (would_move_one) sheet.left_out.push_back(words::not_counted_text(fact));
  }
  return sheet;
}

ExitCode run_why(const Typed& typed, World& world) {
  auto looked = look(typed, world);
  if (const auto* why = std::get_if<Unanswerable>(&looked)) return say_unanswerable(*why, world);
  const BookView& view = *std::get<std::unique_ptr<BookView>>(looked);
  const auto found = find_items(view, typed.joined());
  if (const auto* why = std::get_if<Unanswerable>(&found)) return say_unanswerable(*why, world);
  const Items& items = std::get<Items>(found);
  const Answered answer =
      answered(report::why_answer(view.histories(), items, sheet_of(view, items)), view);
  say_answer(answer.answer, typed, world);
  return answer.code;
}

}  // namespace

const Command why_command{"why",
                          "how a figure was worked out, entry by entry",
                          "PART|TASK",
                          "  timeworn why 'disc T1-77'\n"
                          "  timeworn why '100-hour inspection'\n",
                          {as_of_option, known_option, known_on_option, json_option},
                          run_why};

}  // namespace command
