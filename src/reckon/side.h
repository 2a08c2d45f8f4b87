// reckon/side.h: one side of a limit or task, made from what is known of it, and its state. At
// nothing left no more may be started; the last legal day may be flown, all of it.
#pragma once

#include "reckon/view.h"

namespace reckon {

// What a side is about.
struct Subject {
  const View& view;
  const logbook::Thing& thing;
  bool when_exceeding = false;
};

// The clock of an amount; empty for a calendar period.
std::optional<Clock> clock_of(const logbook::Amount& amount);
// The amount as a figure; not for a period.
Figure figure_of(const logbook::Amount& amount);

bool counts_service_hours(const Side& side);

// Sets left (with all that follows from it) on a side by hours or by a count. sureness is that of
// the use; unknown makes the side not known for lack of it. Of at least so much nobody can say that
// it is well: unless it is reached for certain, the side is not known either, with its figure.
void set_left(const Subject& subject, Side& side, const Figure& left, Sureness sureness);
// Sets the last legal day, and all that follows, of a calendar side that counts from a day.
void set_last_legal(const Subject& subject, Side& side, Day last_legal);
void set_lack(Side& side, Lack lack);

// The state from what is left.
State state_of(const Side& side, const Soon& soon, bool when_exceeding);

}  // namespace reckon
