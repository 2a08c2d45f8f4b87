// reckon/use.h: how much a thing used between two places of its history. What it had when it came
// on record drops out of a difference, so use since then is known even where the total is not.
#pragma once

#include <optional>

#include "reckon/histories.h"

namespace reckon {

// The value alone, as if it were known exactly.
Figure plain(const Figure& figure);

// Where a thing first came on record: brought forward or fitted. Empty: it was always there.
std::optional<Mark> first_on_record(const Histories& histories, const logbook::Thing& thing);

// A place on a thing's own clock, as a plain figure: what is known of its total at the mark. Empty
// before it came on record, unless it had nothing then, or the mark is the very end of the day
// before (what is brought forward holds at the start of its day).
std::optional<Figure> place_on_clock(const Histories& histories, const logbook::Thing& thing,
                                     const Clock& clock, const Mark& mark);

// How surely the use is known that stands in a total, leaving out what it began with.
Sureness sureness_of_use(const Total& total);

// Used from the mark until now, with its working; unknown where the place is not on the clock.
Total used_after(const Histories& histories, const logbook::Thing& thing, const Clock& clock,
                 const Mark& mark);

}  // namespace reckon
