// reckon/check_uses.h: one aircraft's flights and runs in their order, what it flew on each day,
// and its meters: all that a new flight is checked against, without a walk through the record.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "reckon/check_fact.h"
#include "reckon/check_flight.h"
#include "reckon/check_meters.h"
#include "reckon/flown.h"

namespace reckon {

class UseChecks {
 public:
  // Facts about the aircraft's use and meters; others change nothing.
  void add(const Placed& placed);
  void check(const Placed& placed, Against against, bool is_twin, Objections& objections) const;

  const std::vector<Placed>& all() const { return uses_; }
  const MeterChecks& meters() const { return meters_; }
  std::vector<Placed> on(Day day) const;
  // The first day on which the use may have been flown: several days in one entry, or hours missing
  // since the use before it.
  Day began(const Placed& use) const;
  // Uses of later days that may have begun by the day.
  std::vector<Placed> spread_over(Day day) const;
  // What a flight or missing time adds to the airframe's total.
  quantity::ServiceHours counted(const Placed& placed) const;

 private:
  // Flown over several days, or over midnight.
  struct Span {
    Day from;
    Day to;
    quantity::Hours hours;
    Placed fact;
  };
  static std::optional<Span> span_of(const Placed& placed);
  quantity::Hours flown_on(Day day) const;
  quantity::Hours room_in(const Span& span, const Span* also) const;
  std::vector<logbook::EntryId> entries_on(Day day, const Placed& but) const;
  bool is_followed_that_day(const Placed& placed) const;
  HoursSource source_on(Day day) const;

  void check_day(const Placed& placed, Objections& objections) const;
  void check_span(const Span& span, Objections& objections) const;
  void check_one_day(const Span& span, Objections& objections) const;
  void check_runs(const Placed& placed, Objections& objections) const;
  void check_begin(const Placed& placed, Objections& objections) const;
  void check_year(const Placed& placed, Objections& objections) const;
  void check_twice(const Placed& placed, Against against, Objections& objections) const;

  std::vector<Placed> uses_;              // by day, then as written
  std::map<Day, quantity::Hours> flown_;  // flights of one day
  std::vector<Span> spans_;
  MeterChecks meters_;
  std::vector<Placed> sources_;  // which clock counts, by day
  Sources clocks_;               // the same, for counting
  std::vector<Placed> begins_;   // brought forward, by day
};

}  // namespace reckon
