// reckon/readings.h: what each meter showed, in the order in which it was read.
#pragma once

#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "reckon/timeline.h"

namespace reckon {

class Readings {
 public:
  Readings(const Standing& standing, const Timeline& timeline);

  // The newest reading at or before the mark.
  std::optional<logbook::MeterReading> newest(const logbook::Aircraft& aircraft,
                                              const logbook::MeterName& meter,
                                              const Mark& at) const;

 private:
  struct Read {
    Mark mark;
    quantity::HourMeter reading;
  };
  using Key = std::pair<logbook::Aircraft, logbook::MeterName>;

  std::map<Key, std::vector<Read>> read_;  // by mark
};

}  // namespace reckon
