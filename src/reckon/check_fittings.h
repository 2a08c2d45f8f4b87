// reckon/check_fittings.h: what is fitted where, so that no serial is in two places, no place holds
// two things, and nothing is removed that is not there.
#pragma once

#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "reckon/check_fact.h"

namespace reckon {

class FittingChecks {
 public:
  void add(const Placed& placed);
  void check(const Placed& placed, Against against, Objections& objections) const;

  // One fitting or removal.
  struct Move {
    Placed fact;
    logbook::Thing thing;
    logbook::Thing host;
    logbook::PlaceName place;
    bool is_fitting = false;
  };
  static std::optional<Move> move_in(const Placed& placed);
  // The aircraft at the root of the host.
  std::optional<logbook::Aircraft> aircraft_of(const Move& move) const;
  // All moves on the aircraft from one day up to another, which is left out.
  std::vector<Move> moves_on(const logbook::Aircraft& aircraft, Day from, Day until) const;

 private:
  using Moves = std::vector<Move>;  // by day, then as written
  using Where = std::pair<logbook::Thing, logbook::PlaceName>;

  static const Move* last_before(const Moves& moves, const Placed& placed);
  static const Move* next_after(const Moves& moves, const Placed& placed);
  const Move* fitting_of(const logbook::Thing& thing, const Placed& at) const;
  const Move* occupant_of(const Where& where, const Placed& at) const;
  bool is_moved_between(const Move& move, const Move& other) const;
  bool is_inside(const logbook::Thing& host, const Move& move) const;

  void check_fitted(const Move& move, Objections& objections) const;
  void check_removed(const Move& move, Objections& objections) const;
  void check_next_of_thing(const Move& move, Objections& objections) const;
  void check_next_in_place(const Move& move, Objections& objections) const;
  void check_serial(const Placed& placed, Objections& objections) const;

  std::map<logbook::Thing, Moves> by_thing_;
  std::map<Where, Moves> by_place_;
};

}  // namespace reckon
