// reckon/check_meters.h: one aircraft's meters: each reading against the one before and after it,
// wherever in the history it was entered.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "reckon/check_fact.h"

namespace reckon {

// A run of a meter, or a point of it: begin and end are equal, but for a change from old to new.
struct MeterMark {
  Placed fact;
  int rank = 1;  // in its day: brought forward, runs, a change, runs after it
  quantity::HourMeter begin;
  quantity::HourMeter end;
  bool is_change = false;
};

class MeterChecks {
 public:
  void add(const Placed& placed);
  // uses: the aircraft's flights and runs by day, for those that state no meter.
  void check(const Placed& placed, Against against, const std::vector<Placed>& uses,
             Objections& objections) const;
  // A reading that a work entry states must lie between those of the days before and after.
  void check_stated(const Placed& placed, const logbook::MeterReading& reading,
                    Objections& objections) const;
  std::vector<logbook::MeterName> names() const;

 private:
  struct Neighbours {
    const MeterMark* before = nullptr;
    const MeterMark* after = nullptr;
  };
  Neighbours neighbours(const logbook::MeterName& meter, const MeterMark& mark) const;
  int rank_in_day(const logbook::MeterName& meter, const MeterMark& mark) const;
  void add_change(const logbook::MeterName& meter, const MeterMark& change);

  std::map<logbook::MeterName, std::vector<MeterMark>> marks_;
  std::map<logbook::MeterName, std::vector<MeterMark>> changes_;
};

}  // namespace reckon
