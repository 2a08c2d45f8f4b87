// reckon/check_stated.h: one total that a fact states, against what the record gives at its place.
#pragma once

#include <optional>
#include <vector>

#include "reckon/check_fact.h"

namespace reckon {

struct Stated {
  logbook::Thing thing;
  Clock clock;
  Figure figure;
  logbook::Basis since = logbook::Basis::new_;
  logbook::Grade grade = logbook::Grade::exact;
};

// The places of its day at which the fact may stand; an entry on record has its one place.
struct StatedAt {
  const Placed& placed;
  const Histories& histories;
  std::vector<Mark> places;

  const Mark& last_place() const { return places.back(); }
};

bool is_on_record(const Histories& histories, const logbook::Thing& thing);

// Whether the two may both be right: what is "at least" may be more.
bool is_met_by(const Stated& stated, const Figure& reckoned);

// Whether the fact may be the first word about what a thing has.
bool may_begin(const logbook::Fact& fact);

// What the record gives at a mark, by what was said of the thing before the fact was written.
Figure reckoned_at(const StatedAt& at, const Stated& stated, const Mark& mark);

// What the record has at the fact's place without it, unless it is met there, or nothing is known
// there.
std::optional<Figure> unmet(const StatedAt& at, const Stated& stated);

}  // namespace reckon
