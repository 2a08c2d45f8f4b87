// reckon/item.h: a limit or a due point with its sides, as values.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "logbook/fact.h"
#include "reckon/histories.h"
#include "reckon/life_used.h"
#include "reckon/rules_in_force.h"

namespace reckon {

enum class State { ok, soon, due, over, not_known };

// Why a side or an item is not known.
enum class Lack {
  nothing,
  total,           // the thing's use on the side's clock, since its basis
  total_at_least,  // that use is known only as "at least": what is left is at most so much
  total_at_start,  // what it had on the day after which the side counts
  basis_day,       // the day made, released, overhauled …: Side::since says which
  last_done,       // a task with no done, no next due and no first limit on record
  total_at_done,   // what the thing had where the task was last done
  due_point,       // next due is stated, but not for this side
  shared_lives,    // it was on several models whose limits differ, and no policy is on record
  model,           // its limit holds on a model of which nothing is on record
  two_policies,    // two that differ are on record
  not_shareable,   // its policy does not say how a limit of this form is shared
  terms,           // the limit or task says no amount that could be counted
  undecided,       // it rests on corrections made apart, of which more are open than are reckoned
};

// Warn "soon" within these; the command's --within may widen them.
struct Soon {
  quantity::Hours hours = quantity::Hours::of(25 * 3600);
  quantity::Cycles count = quantity::whole_cycles(25);
  quantity::Days days = quantity::Days::of(30);
};

// What was used while so much was the whole life.
struct PartUsed {
  Term term;
  Figure whole;
};

// One side of a limit or task: one amount against one clock or the calendar.
struct Side {
  Clock clock;  // for a calendar side unused
  bool is_calendar = false;
  std::optional<logbook::Basis> since;
  std::optional<Day> after;     // counted from the end of this day, instead of a basis
  Total used;                   // since the basis; a calendar side: days since the basis day
  std::optional<Figure> limit;  // the amount (a calendar side: in days)
  std::optional<logbook::Period> period;  // a calendar side: the amount as it is stated
  std::optional<Figure> excess;           // flown past the last due point, taken from this interval
  std::optional<Figure> left;             // absent: not known. Negative: over by so much
  bool left_is_at_most = false;           // some use is missing: "at most"
  std::optional<Figure> due_at;           // on the subject's own clock
  std::optional<Figure> due_at_airframe;  // in airframe hours, when it is aboard and counts hours
  // Of limits that several models or counters use up together: the part of the life that is used,
  // and, where it was used on several models, what was used of which whole.
  std::optional<LifeUsed> life_used;
  std::vector<PartUsed> parts;
  std::optional<Day> basis_day;
  std::optional<Day> last_legal;  // calendar: the last day that may be flown
  std::optional<Day> expected;    // the day on which it runs out; calendar: the last legal day
  std::int64_t days_left = 0;     // for order only; without a forecast one hour or event a day
  State state = State::ok;
  Lack lack = Lack::nothing;
};

// A limit, or a task's next due point: its sides, combined first or latest.
struct Item {
  std::string id;  // stable: "task:annual inspection:ZZ-KIT"
  enum class Kind { limit, on_condition, task } kind = Kind::limit;
  logbook::EntryId entry;                     // the definition
  std::vector<logbook::EntryId> because;      // the entries it rests on
  logbook::Thing thing;                       // subject
  std::optional<logbook::Aircraft> aircraft;  // where it is now
  std::optional<logbook::PlaceName> place;    // of the thing in its host
  const logbook::Limit* limit = nullptr;
  const logbook::MixedLimit* mixed = nullptr;  // its sides are used up together
  Sharing sharing = Sharing::not_stated;       // by which it was reckoned, if lives are shared
  const logbook::Task* task = nullptr;
  std::string source;
  logbook::Combine combine = logbook::Combine::first;
  std::vector<Side> sides;
  int governs = -1;  // index of the side that runs out first (or last, for latest)
  State state = State::ok;
  bool when_exceeding = false;
  std::optional<logbook::EntryId> last_done;
  std::optional<Day> last_done_day;
  std::optional<SignState> last_done_signed;  // absent where nobody signs
  // Work that would move it, if it were signed as the record asks.
  std::vector<logbook::EntryId> not_counted;
  std::optional<Day> expected;  // by forecast: the day on which it is reached; over: absent
  Lack lack = Lack::nothing;    // not known: of the side that governs, or of the item
};

}  // namespace reckon
