// reckon/day_order.h: the order of one aircraft's day (design 4): by the meter or total stated;
// entries without one by clock time; then as their writer wrote them, work after the flights
// written before it.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "reckon/flown.h"
#include "reckon/knowledge.h"
#include "reckon/stay.h"

namespace reckon {

// The source meter was changed on the day: readings of the new one go on where the old one stopped.
struct MeterStep {
  quantity::HourMeter out;
  quantity::HourMeter in;
};

// The uses of one aircraft on one day, in order.
std::vector<Use> in_order(std::vector<Use> uses, const Knowledge& knowledge,
                          const std::optional<MeterStep>& step);

// An entry that counts nothing: where it tells to stand, from the surest to the weakest.
struct Work {
  logbook::EntryId root;
  bool is_before_first = false;
  bool is_after_last = false;
  std::optional<quantity::HourMeter> reading;  // of the source meter
  std::optional<std::int64_t> utc_minute;
  bool is_ordered_strictly = true;  // whether an order that nothing tells must be asked about
};
struct WorkPlace {
  std::size_t after = 0;                // how many of the day's uses come before it
  std::vector<logbook::EntryId> apart;  // uses of other writers that nothing tells the order of
};
WorkPlace place_of(const Work& work, const std::vector<Use>& uses, const Knowledge& knowledge,
                   Ambiguous policy);

// When a fact's own clock time or take-off says that it began.
std::optional<std::int64_t> began_at(const logbook::Said& said);

}  // namespace reckon
