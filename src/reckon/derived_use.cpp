#include "reckon/derived_use.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace reckon {

namespace {

using Place = std::optional<logbook::PlaceName>;
using Keys = std::set<std::pair<Place, Clock>>;

void add_counts(const Use& use, Keys& keys) {
  if (use.flew != nullptr) {
    for (const logbook::CountAt& at : use.flew->counts) {
      keys.insert({std::nullopt, at.count.counter});
      if (at.place) keys.insert({at.place, at.count.counter});
    }
    for (const logbook::HoursAt& at : use.flew->hours_at) keys.insert({at.place, service_clock});
  }
  const auto* counts = use.ran ? &use.ran->counts : use.tried ? &use.tried->counts : nullptr;
  if (counts == nullptr) return;
  const logbook::PlaceName& place = use.ran ? use.ran->place : use.tried->place;
  for (const logbook::Count& count : *counts) {
    keys.insert({std::nullopt, count.counter});
    keys.insert({place, count.counter});
  }
}

Keys keys_of(const Ledger& ledger) {
  const Clock starts = logbook::Counter{logbook::CounterKind::starts, ""};
  Keys keys{{std::nullopt, service_clock},
            {std::nullopt, starts},
            {std::nullopt, logbook::Counter{logbook::CounterKind::flights, ""}},
            {std::nullopt, logbook::Counter{logbook::CounterKind::landings, ""}}};
  for (const logbook::PlaceName& place : ledger.engine_places) keys.insert({place, starts});
  for (const Use& use : ledger.uses) {
    add_counts(use, keys);
    for (const logbook::MeterRun& run : use.meters()) {
      keys.insert({std::nullopt, HoursClock{run.meter}});
    }
  }
  return keys;
}

// Rows of one key, and their running total at the end of each day that has one.
class Running {
 public:
  Running(const Ledger& ledger, Day from, logbook::DerivedUse& derived)
      : ledger_(ledger), from_(from), derived_(derived) {}

  void add(const Place& place, const Clock& clock) {
    const Line line{&ledger_, clock, place, {}};
    logbook::RunningTotal total;
    total.aircraft = ledger_.aircraft.registration.text;
    total.place = place ? place->text : "";
    total.key = key_of(clock);
    bool is_open = false;
    for (std::size_t at = 0; at < ledger_.uses.size(); ++at) {
      const Amount amount = Tally::amount(line, ledger_.uses[at]);
      if (amount.value == 0 && amount.sureness == Sureness::exact) continue;
      const Day day = ledger_.marks[at].day;
      if (is_open && total.day != day) keep(total);
      is_open = true;
      total.day = day;
      total.total = quantity::checked_add(total.total, amount.value);
      total.sureness = quantity::worse(total.sureness, amount.sureness);
      add_row(total, at, amount);
    }
    if (is_open) keep(total);
  }

 private:
  void keep(const logbook::RunningTotal& total) {
    if (!(total.day < from_)) derived_.totals.push_back(total);
  }
  void add_row(const logbook::RunningTotal& key, std::size_t at, const Amount& amount) {
    if (key.day < from_) return;
    logbook::UseRow row;
    row.aircraft = key.aircraft;
    row.place = key.place;
    row.key = key.key;
    row.day = key.day;
    row.order = static_cast<std::int64_t>(at - ledger_.first_after({key.day, 0})) + 1;
    row.entry = ledger_.uses[at].root;
    row.amount = amount.value;
    row.sureness = amount.sureness;
    derived_.uses.push_back(std::move(row));
  }

  const Ledger& ledger_;
  Day from_;
  logbook::DerivedUse& derived_;
};

std::string plural_of(const logbook::Counter& counter) {
  switch (counter.kind) {
    case logbook::CounterKind::starts:
      return "starts";
    case logbook::CounterKind::flights:
      return "flights";
    case logbook::CounterKind::landings:
      return "landings";
    case logbook::CounterKind::lifts:
      return "lifts";
    case logbook::CounterKind::transitions:
      return "transitions";
    case logbook::CounterKind::torque_events:
      return "torque events";
    case logbook::CounterKind::hoist_lifts:
      return "hoist lifts";
    case logbook::CounterKind::run_on_landings:
      return "run-on landings";
    case logbook::CounterKind::gas_generator_cycles:
      return "gas-generator cycles";
    case logbook::CounterKind::power_turbine_cycles:
      return "power-turbine cycles";
    case logbook::CounterKind::full_cycles:
      return "full cycles";
    case logbook::CounterKind::abbreviated_cycles:
      return "abbreviated cycles";
    case logbook::CounterKind::cycles:
      return "cycles";
    case logbook::CounterKind::own:
      break;
  }
  return counter.own_name;
}

}  // namespace

std::string key_of(const Clock& clock) {
  if (const auto* counter = std::get_if<logbook::Counter>(&clock)) return plural_of(*counter);
  const auto& meter = std::get<HoursClock>(clock).meter;
  return meter ? "meter " + meter->text : "hours";
}

logbook::DerivedUse derived_use(const Ledger& ledger, Day from) {
  logbook::DerivedUse derived;
  derived.aircraft = ledger.aircraft.registration.text;
  derived.from = from;
  Running running(ledger, from, derived);
  for (const auto& [place, clock] : keys_of(ledger)) running.add(place, clock);
  return derived;
}

}  // namespace reckon
