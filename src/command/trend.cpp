#include <algorithm>
#include <set>

#include "command/book_view.h"
#include "command/commands.h"
#include "reckon/trend/worst_first.h"
#include "report/engine_trend.h"
#include "words/words.h"

namespace command {

namespace {

using reckon::trend::Series;

// The engine itself, or what is on the aircraft now.
bool is_of(const std::optional<logbook::Engine>& engine, const logbook::Thing& thing,
           const reckon::Histories& histories) {
  if (!engine) return false;
  if (logbook::Thing(*engine) == thing) return true;
  const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
  return aircraft != nullptr && histories.aircraft_now(logbook::Thing(*engine)) == *aircraft;
}

void keep_only(const logbook::Thing& thing, const reckon::Histories& histories,
               report::EngineTrend& trend) {
  trend.title_of = words::thing_name(thing);
  std::erase_if(trend.series,
                [&](const Series& one) { return !is_of(one.engine, thing, histories); });
  std::erase_if(trend.starts, [&](const reckon::StartJudged& one) {
    return !is_of(one.engine, thing, histories);
  });
  std::erase_if(trend.exceedances, [&](const reckon::Exceedance& one) {
    const bool is_there = !one.engine && logbook::Thing(one.aircraft) == thing;
    return !is_there && !is_of(one.engine, thing, histories);
  });
}

// What is known not to be counted: of the aircraft, if all engines are on one.
report::Sheet sheet_for(const report::EngineTrend& trend, const BookView& view) {
  std::set<logbook::Aircraft> carried;
  for (const Series& series : trend.series) {
    const auto aircraft = view.histories().aircraft_now(logbook::Thing(series.engine));
    if (!aircraft) return view.sheet_with_gaps({});
    carried.insert(*aircraft);
  }
  return carried.size() == 1 ? view.sheet_with_gaps(*carried.begin()) : view.sheet_with_gaps({});
}

}  // namespace

Answering answer_trend(const Typed& typed, const BookView& view) {
  report::EngineTrend trend;
  trend.title_of = "the whole record";
  trend.series = reckon::trend::margin_series(view.histories(), view.standing);
  trend.starts = reckon::judged_starts(view.histories(), view.standing);
  trend.exceedances = reckon::open_exceedances(view.histories(), view.standing);
  trend.of_no_engine = reckon::trend::readings_of_no_engine(view.histories(), view.standing);
  trend.readings_too = typed.has("--readings");
  trend.charts_too = !typed.operands.empty() || typed.has("--charts");
  if (!typed.operands.empty()) {
    const auto found = find_thing(view, typed.joined());
    if (const auto* why = std::get_if<Unanswerable>(&found)) return *why;
    keep_only(std::get<logbook::Thing>(found), view.histories(), trend);
  }
  reckon::trend::worst_first(trend.series);
  return answered(report::engine_trend(trend, sheet_for(trend, view)));
}

const Command trend_command{
    "trend",
    "is an engine losing temperature margin",
    "[ENGINE|AIRCRAFT]",
    "  timeworn trend E-1001\n"
    "  timeworn trend ZZ-KIT --readings\n"
    "\nThe exit code is 1 if a margin is clearly falling or at its floor, or if something was past "
    "a\nlimit and nobody has looked into it.\n",
    {{"--readings", "", "list the readings and starts, and why any reading was left out"},
     {"--charts", "", "draw the charts of all engines, not only of the one asked about"},
     as_of_option,
     known_option,
     known_on_option,
     json_option},
    run_asking<answer_trend>};

}  // namespace command
