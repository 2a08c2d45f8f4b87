// reckon/unreached.h: rules laid upon a model or part number of which nothing is on record. That is
// right while a book is being filled, and a slip of the finger when it is full.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/histories.h"

namespace reckon {

struct Unreached {
  bool is_model = true;  // else a part number
  std::string name;
  std::vector<std::string> near;  // of those on record, at most three
};

// Absent if the fact is no such rule, or something on record is reached by it. A correction is
// looked into.
std::optional<Unreached> unreached(const logbook::Fact& fact, const Histories& histories,
                                   const Standing& standing);

}  // namespace reckon
