// reckon/readiness.h: a trip, what is missing for a yes, what stops it, and the answer, as values.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/due.h"

namespace reckon {

enum class Answer { yes, no, not_known };

struct Trip {
  std::optional<quantity::Hours> hours;                 // absent: what could be flown is answered
  quantity::Cycles starts = quantity::whole_cycles(1);  // per engine
  quantity::Cycles landings = quantity::whole_cycles(1);
  quantity::Cycles flights = quantity::whole_cycles(1);
  std::optional<Day> by;                       // the day on which it ends; absent: as_of
  std::optional<logbook::MeterReading> meter;  // what the pilot sees
};

// The nine conditions of design 7, in their order, and that nothing past a limit is left open.
enum class Condition {
  totals,
  places,
  programme,
  limits,
  unknown_read,
  reviewed,
  questions,
  unread,
  bases_heard,
  looked_into,
};
// What is missing, as data: words makes of it the sentence that would supply it.
struct Missing {
  Condition condition = Condition::totals;
  std::optional<logbook::Thing> thing;      // totals, limits, programme, unknown_read, places: host
  std::optional<logbook::PlaceName> place;  // places: absent when no engine is aboard
  std::optional<logbook::TaskName> task;    // programme: absent when there is no task at all
  logbook::TaskClass task_class = logbook::TaskClass::task;
  Lack lack = Lack::nothing;   // programme and unknown_read
  std::optional<Clock> clock;  // of the side that is not known, unless calendar
  std::optional<logbook::Basis> since;
  // questions, unread, looked_into: what is open; else the definition of an item.
  std::vector<logbook::EntryId> entries;
  std::string question;    // the name of the open question
  std::optional<Day> day;  // reviewed: the last review, if there is one; looked_into: when it was
};
// An item that the trip would pass, or that is over already.
struct Obstacle {
  Item item;
  int side = 0;
  Figure left;    // after the gap on the pilot's meter
  Figure needed;  // of the trip on that side; calendar: days from as_of to the trip's end
  bool is_passed_already = false;
};

struct Ready {
  Answer answer = Answer::not_known;
  std::vector<Missing> missing;
  std::vector<Obstacle> obstacles;  // those that stop the trip, harshest first
  std::vector<Item> next;           // all others in order
  // The longest single trip as the pilot would log it, whole seconds at or below; zero when
  // something blocks that no shorter trip cures; absent: not known, or no limit by hours.
  std::optional<quantity::ServiceHours> allowed_hours;
  std::optional<Day> allowed_until;  // the last legal day of the first calendar side
  std::optional<Day> last_flight;
  std::optional<quantity::ServiceHours> gap;  // pilot's meter less the book's; negative: below it
  std::optional<quantity::ServiceHours> may_be_missing;  // no flight entered for some days
};

struct Book {  // what ready must know beyond the facts
  std::int64_t review_days = 30;
  bool all_bases_heard = true;
};

struct Asking {
  logbook::Aircraft aircraft;
  Trip trip;
  Book book;
};

}  // namespace reckon
