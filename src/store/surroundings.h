// store/surroundings.h: how a book is opened, and where time and chance come from.
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
#include "store/trouble.h"

namespace store {

enum class Access {
  read,
  write,
  prove,  // reads, and leaves it to check to tell what is wrong with the file
};

// Where time and chance come from. A record begun for tests takes the clock and the seed from its
// first entry; every other record has a random id and random writers, whatever the seed here.
struct Surroundings {
  quantity::Instant now;
  std::string state_folder;            // holds the mark of each book's writer on this machine
  std::optional<std::int64_t> seed;    // records for tests only: mixed with the record's own
  std::optional<quantity::Day> today;  // the day in the book's place; absent: the UTC day of now
};

}  // namespace store
