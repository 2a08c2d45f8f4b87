// command/clock.h: the machine's clock and the local day, asked once by main.
#pragma once

#include "quantity/calendar.h"

namespace command {

quantity::Instant machine_now();
// The civil day at that instant in the zone of the environment (TZ), by the system's zone data.
quantity::Day local_day(quantity::Instant instant);

}  // namespace command
