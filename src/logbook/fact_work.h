// logbook/fact_work.h: work on record. Stated totals are statements: they place the entry in the
// history and are checked against the flights (design 4).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/amounts.h"
#include "logbook/fact_rules.h"
#include "logbook/names.h"

namespace logbook {

// task "100-hour inspection" done on aircraft ZZ-KIT, airframe 4323.3 h, by "B. Quill", method
// "paragraph f", returned to service, second inspection by "…".
struct Done {
  TaskClass class_ = TaskClass::task;
  TaskName name;
  Thing thing;
  std::optional<quantity::Hours> airframe;
  std::optional<quantity::Hours> engine;
  std::optional<MeterReading> meter;
  std::vector<Count> counts;
  std::optional<quantity::Day> begun;
  std::optional<PersonName> by;
  std::optional<std::string> method;
  bool returned_to_service = false;
  std::optional<PersonName> second_inspection_by;
  bool before_the_first_flight = false;
  bool after_the_last_flight = false;
  bool operator==(const Done&) const = default;
};
// part PN-4411 B-91 fitted to aircraft ZZ-KIT "main rotor blade 1", airframe 4323.3 h, with 2159.0
// h since new, paper "…".
struct Fitted {
  Thing thing;  // engine or part
  Thing host;
  PlaceName place;
  std::optional<quantity::Hours> airframe;
  std::optional<quantity::Hours> engine;
  std::optional<MeterReading> meter;
  std::vector<Had> with;
  bool before_the_first_flight = false;
  bool after_the_last_flight = false;
  bool operator==(const Fitted&) const = default;
};
// part PN-4411 B-88 removed from aircraft ZZ-KIT "main rotor blade 1", airframe 4323.3 h, because
// "loan".
struct Removed {
  Thing thing;
  Thing host;
  PlaceName place;
  std::optional<quantity::Hours> airframe;
  std::optional<quantity::Hours> engine;
  std::optional<MeterReading> meter;
  std::vector<Had> with;
  std::optional<std::string> because;
  bool before_the_first_flight = false;
  bool after_the_last_flight = false;
  bool operator==(const Removed&) const = default;
};
// engine TS-40 E-1001 overhauled, 1822.1 h since new, paper "…".
struct Overhauled {
  Thing thing;
  std::vector<Had> had;
  bool operator==(const Overhauled&) const = default;
};

}  // namespace logbook
