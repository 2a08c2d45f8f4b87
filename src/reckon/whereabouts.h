// reckon/whereabouts.h: what is fitted where, as the entries are walked one after another.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "logbook/fact.h"

namespace reckon {

class Whereabouts {
 public:
  void take(const logbook::Fact& fact);  // heeds fitted and removed

  // The aircraft at the root; an aircraft is its own. In two places at once: the newest counts.
  std::optional<logbook::Aircraft> aircraft_of(const logbook::Thing& thing) const;
  // The engine that the thing is, or lies in; of an aircraft: its only engine.
  std::optional<logbook::Engine> engine_of(const logbook::Thing& thing) const;

 private:
  struct Home {
    logbook::Thing host;
    logbook::PlaceName place;
    bool operator==(const Home&) const = default;
  };
  std::vector<logbook::Thing> way_up(const logbook::Thing& thing) const;

  std::map<logbook::Thing, std::vector<Home>> homes_;
};

}  // namespace reckon
