// tests/faults/deeds.h: the writing commands, each with the book before it and what the book
// answers before and after. A new writing command gets a line in the table of deeds.cpp.
#pragma once

#include <string>
#include <vector>

#include "faults/clerk.h"

namespace faults {

// What there is before a deed. A copy has no mark on this machine, so a new writer begins. kept:
// only a copy of the book lies there, and this machine knows it.
enum class Start { nothing, book, copy, kept };

struct Deed {
  std::string name;
  std::vector<std::string> words;
  std::string input;
  std::string success;  // what the answer says only when it is done
  Start start = Start::book;
  bool makes_copy = false;  // what the copy answers is part of what there is
};

bool says_done(const Deed& deed, const Told& told);
// What the book answers, and for a deed that makes a copy what that one answers.
std::string answers(const Clerk& clerk, const Deed& deed);

struct Prepared {
  Deed deed;
  Clerk::Files before;
  std::string answers_before;
  std::string answers_after;
};

// Does every deed once, untouched, in the clerk's folder.
std::vector<Prepared> prepared(const Clerk& clerk);

// A number from the environment, as for TIMEWORN_LONG=1 and TIMEWORN_SEED=17.
unsigned long told(const char* variable, unsigned long otherwise);
bool is_long();
// Printed, so that a run can be repeated.
unsigned long seed_of(const char* test);

}  // namespace faults
