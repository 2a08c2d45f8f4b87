// sentence/sorts/counters.h: the words for what is counted.
#pragma once

#include <array>
#include <string_view>

#include "logbook/amounts.h"

namespace sentence {

struct CounterWord {
  logbook::CounterKind kind;
  std::string_view plural;
  std::string_view singular;
};

inline constexpr std::array<CounterWord, 13> counter_words = {{
    {logbook::CounterKind::starts, "starts", "start"},
    {logbook::CounterKind::flights, "flights", "flight"},
    {logbook::CounterKind::landings, "landings", "landing"},
    {logbook::CounterKind::lifts, "lifts", "lift"},
    {logbook::CounterKind::transitions, "transitions", "transition"},
    {logbook::CounterKind::torque_events, "torque events", "torque event"},
    {logbook::CounterKind::hoist_lifts, "hoist lifts", "hoist lift"},
    {logbook::CounterKind::run_on_landings, "run-on landings", "run-on landing"},
    {logbook::CounterKind::gas_generator_cycles, "gas-generator cycles", "gas-generator cycle"},
    {logbook::CounterKind::power_turbine_cycles, "power-turbine cycles", "power-turbine cycle"},
    {logbook::CounterKind::full_cycles, "full cycles", "full cycle"},
    {logbook::CounterKind::abbreviated_cycles, "abbreviated cycles", "abbreviated cycle"},
    {logbook::CounterKind::cycles, "cycles", "cycle"},
}};

// Further ways people write them.
inline constexpr std::array<CounterWord, 2> typed_counter_words = {{
    {logbook::CounterKind::landings, "ldgs", "ldg"},
    {logbook::CounterKind::landings, "lndgs", "lndg"},
}};

}  // namespace sentence
