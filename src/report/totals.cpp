#include "report/totals.h"

#include <array>

#include "report/pieces.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/words.h"

namespace report {

namespace {

using logbook::CounterKind;
using quantity::Sureness;
using reckon::Figure;

constexpr std::array counters = {
    CounterKind::flights,
    CounterKind::starts,
    CounterKind::landings,
    CounterKind::lifts,
    CounterKind::transitions,
    CounterKind::torque_events,
    CounterKind::hoist_lifts,
    CounterKind::run_on_landings,
    CounterKind::full_cycles,
    CounterKind::abbreviated_cycles,
    CounterKind::cycles,
    CounterKind::gas_generator_cycles,
    CounterKind::power_turbine_cycles,
};

// Flights and landings of an aircraft, starts of an engine are told even when they are not known.
bool is_always_told(const logbook::Thing& thing, CounterKind kind) {
  if (std::holds_alternative<logbook::Aircraft>(thing)) return kind == CounterKind::landings;
  return std::holds_alternative<logbook::Engine>(thing) && kind == CounterKind::starts;
}

bool is_told(const logbook::Thing& thing, CounterKind kind, const Figure& figure) {
  return is_always_told(thing, kind) || (!figure.is_unknown() && figure.raw() != 0);
}

std::string sureness_word(Sureness sureness) {
  switch (sureness) {
    case Sureness::exact:
      return "exact";
    case Sureness::by_default:
      return "default";
    case Sureness::at_least:
      return "at least";
    case Sureness::unknown:
      return "unknown";
  }
  return "unknown";
}

void add_counts(const reckon::Histories& histories, const logbook::Thing& thing,
                bool is_since_overhaul, std::vector<ThingTotal>& totals) {
  for (const CounterKind kind : counters) {
    const reckon::Clock clock = logbook::Counter{kind, {}};
    const Figure figure = is_since_overhaul
                              ? histories.since_overhaul(thing, clock, histories.now()).figure
                              : histories.total(thing, clock, histories.now()).figure;
    const bool is_wanted = is_since_overhaul ? !figure.is_unknown() && figure.raw() != 0
                                             : is_told(thing, kind, figure);
    if (is_wanted) totals.push_back({clock, figure, is_since_overhaul});
  }
}

std::string shown(const ThingTotal& total) {
  if (!total.figure.is_unknown()) return words::figure_used(total.figure, total.clock);
  return words::clock_name(total.clock) + " not known";
}

std::string listed(const std::vector<ThingTotal>& totals, bool is_since_overhaul) {
  std::vector<std::string> figures;
  for (const ThingTotal& total : totals) {
    if (total.is_since_overhaul == is_since_overhaul) figures.push_back(shown(total));
  }
  return words::listed(figures, "and");
}

}  // namespace

std::vector<ThingTotal> totals_of(const reckon::Histories& histories, const logbook::Thing& thing) {
  const reckon::Clock& hours = reckon::service_clock;
  std::vector<ThingTotal> totals{
      {hours, histories.total(thing, hours, histories.now()).figure, false}};
  add_counts(histories, thing, false, totals);
  const Figure since_overhaul = histories.since_overhaul(thing, hours, histories.now()).figure;
  if (since_overhaul.is_unknown()) return totals;
  totals.push_back({hours, since_overhaul, true});
  add_counts(histories, thing, true, totals);
  return totals;
}

std::string totals_text(const std::vector<ThingTotal>& totals) {
  const std::string overhaul = listed(totals, true);
  const std::string text = words::fill("Total: {}.", {listed(totals, false)});
  return overhaul.empty() ? text : words::fill("{} Since overhaul: {}.", {text, overhaul});
}

document::Json totals_json(const std::vector<ThingTotal>& totals) {
  document::Json array = document::Json::array();
  for (const ThingTotal& total : totals) {
    reckon::Side side;
    side.clock = total.clock;
    document::Json object = document::Json::object();
    object.set("unit", words::unit_key(side));
    object.set("amount", figure_json(total.figure, Toward::up));
    object.set("sureness", sureness_word(total.figure.sureness()));
    object.set("since", total.is_since_overhaul ? "overhaul" : "new");
    array.add(object.set("shown", shown(total)));
  }
  return array;
}

}  // namespace report
