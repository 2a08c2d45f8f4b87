#include "logbook/amounts.h"

namespace logbook {

bool takes_fractions(const Counter& counter) {
  switch (counter.kind) {
    case CounterKind::gas_generator_cycles:
    case CounterKind::power_turbine_cycles:
    case CounterKind::full_cycles:
    case CounterKind::abbreviated_cycles:
    case CounterKind::cycles:
      return true;
    case CounterKind::starts:
    case CounterKind::flights:
    case CounterKind::landings:
    case CounterKind::lifts:
    case CounterKind::transitions:
    case CounterKind::torque_events:
    case CounterKind::hoist_lifts:
    case CounterKind::run_on_landings:
    case CounterKind::own:
      return false;
  }
  return false;
}

}  // namespace logbook
