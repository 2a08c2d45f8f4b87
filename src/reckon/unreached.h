// reckon/unreached.h: rules laid upon a model or part number of which nothing is on record, or that
// hold on such a model only. That is right while a book is being filled, and a slip of the finger
// when it is full.
#pragma once

#include <string>
#include <vector>

#include "reckon/histories.h"

namespace reckon {

struct Unreached {
  enum class Named { model, part_number, on_model } named = Named::model;
  std::string name;
  std::vector<std::string> near;  // of those on record, at most three
};

// Empty if the fact is no such rule, or something on record is reached by it. A correction is
// looked into.
std::vector<Unreached> unreached(const logbook::Fact& fact, const Histories& histories,
                                 const Standing& standing);

}  // namespace reckon
