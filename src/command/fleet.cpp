#include "command/book_view.h"
#include "command/commands.h"
#include "report/fleet_list.h"

namespace command {

Answering answer_fleet(const Typed& typed, const BookView& view) {
  if (!typed.operands.empty()) {
    return Unanswerable{
        "fleet takes no name; it shows all. Write: timeworn trend " + typed.joined(),
        typed_wrongly};
  }
  report::Fleet fleet;
  for (const logbook::Thing& thing : view.histories().things()) {
    const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
    if (aircraft == nullptr) continue;
    fleet.aircraft.push_back(
        {*aircraft, view.due(*aircraft),
         reckon::open_exceedances(view.histories(), view.standing, *aircraft)});
  }
  fleet.series = reckon::trend::margin_series(view.histories(), view.standing);
  fleet.exceedances = reckon::open_exceedances(view.histories(), view.standing);
  fleet.charts_too = typed.has("--charts");
  return answered(report::fleet_list(view.histories(), std::move(fleet), view.sheet_with_gaps({})),
                  view);
}

const Command fleet_command{
    "fleet",
    "every aircraft and engine at a glance, the worst first",
    "",
    "  timeworn fleet\n"
    "  timeworn fleet --charts --as-of 2026-03-04\n"
    "\nThe exit code is 1 if anything is due, over or not known, or an engine is losing margin.\n",
    {{"--charts", "", "draw the margins of every engine"},
     as_of_option,
     known_option,
     known_on_option,
     json_option},
    run_asking<answer_fleet>};

}  // namespace command
