// The names of counters, as the record language writes them.
#include <array>

#include "words/words.h"

namespace words {

namespace {

using logbook::CounterKind;

struct CounterName {
  CounterKind kind;
  std::string_view one;
  std::string_view many;
};

constexpr std::array counter_names = {
    CounterName{CounterKind::starts, "start", "starts"},
    CounterName{CounterKind::flights, "flight", "flights"},
    CounterName{CounterKind::landings, "landing", "landings"},
    CounterName{CounterKind::lifts, "lift", "lifts"},
    CounterName{CounterKind::transitions, "transition", "transitions"},
    CounterName{CounterKind::torque_events, "torque event", "torque events"},
    CounterName{CounterKind::hoist_lifts, "hoist lift", "hoist lifts"},
    CounterName{CounterKind::run_on_landings, "run-on landing", "run-on landings"},
    CounterName{CounterKind::gas_generator_cycles, "gas-generator cycle", "gas-generator cycles"},
    CounterName{CounterKind::power_turbine_cycles, "power-turbine cycle", "power-turbine cycles"},
    CounterName{CounterKind::full_cycles, "full cycle", "full cycles"},
    CounterName{CounterKind::abbreviated_cycles, "abbreviated cycle", "abbreviated cycles"},
    CounterName{CounterKind::cycles, "cycle", "cycles"},
};

}  // namespace

std::string counter_name(const logbook::Counter& counter, bool one) {
  for (const CounterName& name : counter_names) {
    if (name.kind == counter.kind) return std::string(one ? name.one : name.many);
  }
  return counter.own_name;
}

}  // namespace words
