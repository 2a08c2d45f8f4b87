// reckon/ready.h: "can I fly this?": yes only when all nine conditions are on record (design 7).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/due.h"

namespace reckon {

enum class Answer { yes, no, not_known };

struct Trip {
  std::optional<quantity::Hours> hours;     // absent: what could be flown is answered
  quantity::Cycles starts = quantity::whole_cycles(1);    // per engine
  quantity::Cycles landings = quantity::whole_cycles(1);
  quantity::Cycles flights = quantity::whole_cycles(1);
  std::optional<Day> by;                    // the day on which it ends; absent: as_of
  std::optional<logbook::MeterReading> meter;  // what the pilot sees
};

// The nine conditions of design 7, in their order.
enum class Condition {
  totals, places, programme, limits, unknown_read, reviewed, questions, unread, bases_heard,
};
// What is missing, and the sentence that would supply it.
struct Missing {
  Condition condition = Condition::totals;
  std::string what;       // "totals of engine TS-40 E-1001"
  std::string sentence;   // canonical example, filled with the names at hand
};
// An item that the trip would pass, or that is over already.
struct Obstacle {
  Item item;
  int side = 0;
  Figure left;
  Figure needed;          // of the trip on that side
  bool is_passed_already = false;
};

struct Ready {
  Answer answer = Answer::not_known;
  std::vector<Missing> missing;
  std::vector<Obstacle> obstacles;             // those that stop the trip, harshest first
  std::vector<Item> next;                      // all others in order
  std::optional<quantity::ServiceHours> allowed_hours;  // the longest single trip; absent: not known
  std::optional<Day> allowed_until;            // the last legal day of the first calendar side
  std::optional<Day> last_flight;
  std::optional<quantity::ServiceHours> gap;   // pilot's meter against the book's
  std::optional<quantity::ServiceHours> may_be_missing;  // no flight entered for some days
};

struct Book {                // what ready must know beyond the facts
  std::int64_t review_days = 30;
  bool all_bases_heard = true;
};

Ready ready(const Histories& histories, const Standing& standing,
            const logbook::Aircraft& aircraft, const Trip& trip, const Book& book);

}  // namespace reckon
