// reckon/flown.h: what one standing entry used: only flew, ran, tried and unaccounted count. How
// many hours it counts is decided here; so is what stands for an amount that it does not state.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "logbook/entry.h"
#include "reckon/figure.h"

namespace reckon {

// Which clock counts an aircraft's hours on a day.
struct Source {
  std::optional<logbook::MeterName> meter;  // absent: hours as typed
  bool is_clock = false;                    // counts from took off and landed
  quantity::Factor factor = quantity::factor_one;
};
// An aircraft's declarations of its source, each from its day on.
class Sources {
 public:
  // In the order in which they were said within a day.
  void add(quantity::Day day, const logbook::CountsHours& counts);
  Source on(quantity::Day day) const;
  // The sources that held on any day from one to another, each once at least.
  std::vector<Source> within(quantity::Day first, quantity::Day last) const;

 private:
  struct From {
    quantity::Day day;
    Source source;
  };
  std::vector<From> from_;  // by day
};

struct Use {
  logbook::EntryId root;
  const logbook::Said* said = nullptr;
  std::int64_t written = 0;
  Source source;
  quantity::Hours raw;  // time in service before the factor
  const logbook::Flew* flew = nullptr;
  const logbook::Ran* ran = nullptr;
  const logbook::Tried* tried = nullptr;
  const logbook::Unaccounted* unaccounted = nullptr;

  quantity::Day day() const { return said->day; }
  quantity::Day first_day() const;  // of several days in one entry
  std::int64_t flights() const;     // whole flights flown
  const std::vector<logbook::MeterRun>& meters() const;
};

// The aircraft that a fact uses; empty for all kinds that count nothing.
std::optional<logbook::Aircraft> aircraft_used(const logbook::Fact& fact);
// The fact must be one that counts. Of several days in one entry that source counts, of those that
// held in them, by which it has the most hours.
Use use_of(const logbook::Said& said, const Sources& sources);

const logbook::MeterRun* run_of(const Use& use, const logbook::MeterName& meter);

// What an aircraft can run at most on one day.
constexpr quantity::Hours a_day = quantity::Hours::of(24 * 3600);

// Hours after the factor. A flight timed by clock where a meter is the source takes no factor that
// would make it shorter: the factor is about the meter.
quantity::ServiceHours service(const Use& use, quantity::Hours raw);

// Where amounts are read: the airframe, or one of its places; engine_places are all of the
// aircraft's, since a count without a place holds for each engine.
struct Spot {
  std::optional<logbook::PlaceName> place;
  bool is_engine_place = false;
  const std::vector<logbook::PlaceName>* engine_places = nullptr;
};
using Amount = quantity::Known<std::int64_t>;  // thousandths of a second, or of a count

Amount hours_used(const Use& use, const Spot& spot);
// Hours on a meter that runs beside the source.
Amount meter_used(const Use& use, const logbook::MeterName& meter);
Amount count_used(const Use& use, const logbook::Counter& counter, const Spot& spot);
// Whether the entry itself states the counter anywhere.
bool states(const Use& use, const logbook::Counter& counter);
// Whether it states it for the spot: at its place, or without a place.
bool states_at(const Use& use, const logbook::Counter& counter, const Spot& spot);

}  // namespace reckon
