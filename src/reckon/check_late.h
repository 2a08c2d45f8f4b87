// reckon/check_late.h: totals that were signed further on in the history. A flight entered late
// before one of them moves it; where the signed total then lies below the flights, it is asked
// about.
#pragma once

#include <map>
#include <vector>

#include "reckon/check_fact.h"

namespace reckon {

class LateChecks {
 public:
  // The fact was appended, and adds so much to its aircraft's total.
  void note(const Placed& placed);
  void add_hours(const Placed& placed, const logbook::Aircraft& aircraft,
                 quantity::ServiceHours hours);
  // Whether a total of the aircraft is stated on a later day.
  bool are_before_a_total(const logbook::Aircraft& aircraft, Day day) const;
  bool needs_loading() const { return !is_loaded_; }
  void load(const Histories& histories);
  void check(const logbook::Aircraft& aircraft, Day day, quantity::ServiceHours hours,
             Objections& objections) const;

 private:
  struct Signed {
    Day day;
    logbook::EntryId entry;
    Figure stated;
    Figure reckoned;
  };
  std::map<logbook::Aircraft, std::vector<Signed>> signed_;
  std::map<logbook::Aircraft, Day> last_stated_;
  Day last_on_thing_;
  bool has_any_on_thing_ = false;
  bool is_loaded_ = false;
};

}  // namespace reckon
