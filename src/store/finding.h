// store/finding.h: one finding of the check of a book, as a value.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "logbook/derived.h"
#include "logbook/entry.h"
#include "logbook/trouble.h"
#include "store/surroundings.h"
#include "store/trouble.h"

namespace store {

enum class Depth {
  quick,       // the file, the chain and its digests
  signatures,  // these and every signature
  whole,
};

// One finding of check: what is at fault, and which entry.
struct Finding {
  std::string what;  // a stable id: file, schema, guard, form, chain, gap, fork, mark, sentence …
  std::optional<logbook::EntryId> entry;
  std::string detail;
};
// "K7QXM-3, its digest does not follow from what it says".
std::string told(const Finding& finding);

}  // namespace store
