// tests/reckon/flyable.h: a book on which all nine conditions of `ready` hold on 2025-03-10, so
// that a test may take one away.
#pragma once

#include <string>
#include <vector>

#include "definitions.h"
#include "reckon/ready.h"

namespace flyable {

inline const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
inline const logbook::Engine engine = support::engine("TS-40", "E-1001");

// What complete_book leaves out.
enum class Without {
  nothing,
  airframe_total,
  engine_total,
  place,
  no_engine,
  programme,
  last_done,
  limit,
  review
};
support::Book complete_book(Without without = Without::nothing);

// A task on the aircraft, done at the beginning of the book.
void add_task(support::Book& book, const std::string& name, std::vector<logbook::Term> every);

reckon::Ready ask(const support::Book& book, const std::string& as_of, const reckon::Trip& trip,
                  const reckon::Book& known = {});

}  // namespace flyable
