// reckon/standing.h: which facts stand, once corrections and strikes are applied. An entry stands
// unless a standing entry corrects or strikes it; the newest of a chain gives its value.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "reckon/chains.h"
#include "reckon/knowledge.h"

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

struct Standing {
  std::vector<StandingFact> facts;   // by (day, written)
  std::vector<StandingFact> struck;  // for history; said is the last value
  std::vector<Question> questions;
  // Entries that this version cannot read, with what they are about.
  std::vector<const logbook::Entry*> unread;
  // For reckoning the book as it stood when an entry was written.
  Knowledge knowledge;
  std::vector<Chain> chains;
};

// The entries must outlive the result. Facts whose day is after as_of are left out; corrections and
// strikes have no day of their own (design 2).
Standing standing(const std::vector<logbook::Entry>& entries, quantity::Day as_of);

}  // namespace reckon
