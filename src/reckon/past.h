// reckon/past.h: an aircraft's day in the book as it stood when an entry was written. A stated
// total is placed, and judged, by what its writer could see.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "reckon/day_order.h"
#include "reckon/standing.h"

namespace reckon {

// The flights of one day, and the airframe's total before the first and after each.
struct DayThen {
  std::vector<logbook::EntryId> flights;
  std::vector<quantity::ServiceHours> totals;  // one more than flights
};

class Past {
 public:
  explicit Past(const Standing& standing);
  ~Past();

  // Empty where the book did not know the airframe's total: before it was brought forward. step is
  // the day's change of the source meter.
  std::optional<DayThen> day_then(const logbook::Aircraft& aircraft, quantity::Day day,
                                  const logbook::EntryId& written,
                                  const std::optional<MeterStep>& step) const;

  // What was added to the days before since `written`, and accepted: with a doubt that was
  // answered, or by a correction that takes hours away.
  quantity::ServiceHours accepted_since(const logbook::Aircraft& aircraft, quantity::Day day,
                                        const logbook::EntryId& written) const;

  // The newest entry about the aircraft's use up to the day that the writer of `written` could not
  // see.
  std::optional<logbook::EntryId> newest_unseen(const logbook::Aircraft& aircraft,
                                                quantity::Day day,
                                                const logbook::EntryId& written) const;

 private:
  struct Reckoning;
  struct Airframe;
  class Then;
  const Standing& standing_;
  std::map<logbook::Aircraft, std::unique_ptr<Airframe>> airframes_;
};

// A total stated in whole tenths agrees with one that lies within half a tenth of it; any other
// must be met exactly.
bool agrees(quantity::Hours stated, quantity::ServiceHours total);

}  // namespace reckon
