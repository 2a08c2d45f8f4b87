// reckon/trend/margins.h: an engine's margins as points over its own hours, cut into segments where
// something was done to it, levelled where it was washed, and graded.
#pragma once

#include <set>
#include <vector>

#include "reckon/histories.h"
#include "reckon/trend/series.h"

namespace reckon::trend {

// Every series that has a reading, by engine and check.
std::vector<Series> margin_series(const Histories& histories, const Standing& standing);
// Only of these engines.
std::vector<Series> margin_series(const Histories& histories, const Standing& standing,
                                  const std::set<logbook::Engine>& only);

// Readings taken where no engine was on record in that place; they are in no series.
std::vector<logbook::EntryId> readings_of_no_engine(const Histories& histories,
                                                    const Standing& standing);

// What must not be passed over: the last reading lies past what is allowed, the line is at its
// floor or may be, or it is clearly falling.
enum class Worry { none, falling, at_the_floor, past_what_is_allowed };
Worry worry_of(const Series& series);

}  // namespace reckon::trend
