#include <algorithm>

#include "command/book_view.h"
#include "command/commands.h"
#include "report/engine_trend.h"
#include "words/words.h"

namespace command {

namespace {

using reckon::trend::Series;

bool is_of(const Series& series, const logbook::Thing& thing, const reckon::Histories& histories) {
  const logbook::Thing engine(series.engine);
  if (engine == thing) return true;
  const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
  return aircraft != nullptr && histories.aircraft_now(engine) == *aircraft;
}

ExitCode run(const Typed& typed, World& world) {
  auto looked = look(typed, world);
  if (const auto* why = std::get_if<Unanswerable>(&looked)) return say_unanswerable(*why, world);
  const BookView& view = *std::get<std::unique_ptr<BookView>>(looked);
  auto all = reckon::trend::margin_series(view.histories(), view.standing);
  std::string title = "the whole record";
  if (!typed.operands.empty()) {
    const auto found = find_thing(view, typed.joined());
    if (const auto* why = std::get_if<Unanswerable>(&found)) return say_unanswerable(*why, world);
    const auto& thing = std::get<logbook::Thing>(found);
    title = words::thing_name(thing);
    std::erase_if(all, [&](const Series& one) { return !is_of(one, thing, view.histories()); });
  }
  return say_answer(report::engine_trend(all, title, typed.has("--readings"), view.sheet()), typed,
                    world);
}

}  // namespace

const Command trend_command{
    "trend",
    "is an engine losing temperature margin",
    "[ENGINE|AIRCRAFT]",
    "  timeworn trend E-1001\n"
    "  timeworn trend ZZ-KIT --readings\n"
    "\nThe exit code is 1 if a margin is clearly falling or at its floor.\n",
    {{"--readings", "", "list the readings, and why any was left out"},
     as_of_option,
     known_option,
     known_on_option,
     json_option},
    run};

}  // namespace command
