// reckon/ledger.h: one aircraft's uses in the order in which they happened.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "reckon/flown.h"
#include "reckon/stay.h"

namespace reckon {

// A use of which nobody can tell on which of several days it was flown: one entry for several days,
// or hours that are missing since the use before it. It began after the mark.
struct SpreadUse {
  std::size_t use = 0;  // its place among the uses
  Mark began;
};

struct Ledger {
  logbook::Aircraft aircraft;
  std::optional<Day> begins;  // brought forward: before it there are no flights
  Sources sources;
  std::vector<Use> uses;
  std::vector<Mark> marks;  // of each use
  std::vector<logbook::PlaceName> engine_places;
  std::vector<SpreadUse> spread;

  // The use happened next.
  void add(Use use, const Mark& mark);
  // The spread uses that may lie on both sides of the mark.
  std::vector<SpreadUse> around(const Mark& mark) const;

  // The uses after one mark up to another, as places in uses.
  std::size_t first_after(const Mark& mark) const;
};
using Ledgers = std::map<logbook::Aircraft, Ledger>;

// An empty ledger for each aircraft on record, with its beginning, sources and engine places.
Ledgers empty_ledgers(const Standing& standing);

// engine 1 … engine 9 are places of engines.
bool is_engine_place(const logbook::PlaceName& place);

}  // namespace reckon
