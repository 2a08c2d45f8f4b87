// reckon/work.h: the kinds of entry that have a place in an aircraft's history and count nothing,
// and what they state about that place.
#pragma once

#include <optional>

#include "logbook/fact.h"

namespace reckon {

struct WorkStated {
  std::optional<quantity::Hours> airframe;
  std::optional<quantity::Hours> engine;
  std::optional<logbook::MeterReading> meter;
  bool is_before_first = false;
  bool is_after_last = false;
  // Fitting, removal, overhaul and what was done move lives and due points; readings and events do
  // not, so that an untold order need not be asked about.
  bool moves_lives = false;
};
// Empty for a fact that counts, and for one that holds from the start of its day.
std::optional<WorkStated> work_in(const logbook::Fact& fact);

// What the work is about, or what its sheet is: its aircraft, or the thing that lies somewhere on
// one.
logbook::Thing subject_of_work(const logbook::Fact& fact);

}  // namespace reckon
