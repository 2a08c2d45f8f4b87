// logbook/fact_use.h: what was flown and run. Only flew, ran, tried and unaccounted count; all
// other kinds are statements about them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/amounts.h"
#include "logbook/names.h"
#include "quantity/calendar.h"

namespace logbook {

// Block times are kept and never counted: blocks 09:00-07:00 to 10:06-07:00.
struct Blocks {
  quantity::ClockTime off;
  quantity::ClockTime on;
  auto operator<=>(const Blocks&) const = default;
  bool operator==(const Blocks&) const = default;
};
// aircraft ZZ-KIT flew 1.7 h, 1 start, 3 landings, collective meter 1234.5 to 1236.2,
// took off 09:11-07:00, landed 10:53-07:00, pilot "A. Fenwick".
struct Flew {
  Aircraft aircraft;
  quantity::Hours hours;          // time in service (14 CFR 1.1)
  std::vector<HoursAt> hours_at;  // 0.9 h on engine 2
  std::vector<CountAt> counts;    // flights not stated: 1
  std::vector<MeterRun> meters;
  std::optional<quantity::ClockTime> took_off;
  std::optional<quantity::ClockTime> landed;  // earlier than took off: the next day
  std::optional<Blocks> blocks;
  std::optional<quantity::Day> since;  // several days in one entry: from this day on
  bool before_the_first_flight = false;
  bool after_the_last_flight = false;
  bool for_hire = false;
  bool by_clock = false;
  std::optional<PersonName> pilot;
  bool operator==(const Flew&) const = default;
};
// aircraft ZZ-KIT engine 1 E-1001 ran 0.2 h, 1 start. Ground hours are no time in service.
struct Ran {
  Aircraft aircraft;
  PlaceName place;
  std::optional<Serial> serial;  // the engine believed to be there: a statement
  std::optional<quantity::Hours> hours;
  std::vector<Count> counts;
  std::vector<MeterRun> meters;
  bool operator==(const Ran&) const = default;
};
// aircraft ZZ-KIT engine 1 E-1001 tried 2 starts.
struct Tried {
  Aircraft aircraft;
  PlaceName place;
  std::optional<Serial> serial;
  std::vector<Count> counts;
  bool operator==(const Tried&) const = default;
};
// aircraft ZZ-KIT unaccounted 2.3 h, collective meter 1236.2 to 1238.5. Hours count at once;
// starts and landings become "at least".
struct Unaccounted {
  Aircraft aircraft;
  quantity::Hours hours;
  std::vector<MeterRun> meters;
  bool operator==(const Unaccounted&) const = default;
};

}  // namespace logbook
