// reckon/standing_fact.h: a fact as it stands, and a question that a person must decide, as values.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "logbook/entry.h"

namespace reckon {

struct StandingFact {
  logbook::EntryId root;                // the chain's first entry: its name in answers
  std::vector<logbook::EntryId> chain;  // root … newest, those that gave its value
  const logbook::Said* said = nullptr;  // what stands; points into the entries given
  std::int64_t written = 0;             // place among all entries by (writer, number)
};

// One thing that a person must decide; it blocks a yes about the aircraft it touches (C5, C6 …).
struct Question {
  std::string name;    // short and stable: "4F7Q", from class and members
  std::string class_;  // "two corrections", "order within a day", "serial in two places" …
  std::vector<logbook::EntryId> entries;  // those that it is about
  std::vector<logbook::Thing> about;
  std::string figure;  // what it changes, canonical text ("1.4 h")
};

}  // namespace reckon
