// store/copies.h: what this machine remembers of the copies that were made of a record's books: one
// line for each in the state folder. Not in the book: a copy would not know of itself.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "logbook/entry.h"

namespace store {

struct MadeCopy {
  quantity::Instant made;
  bool is_elsewhere = false;  // on another file system than the book
  std::int64_t place = 0;     // the newest arrival in it
  logbook::Digest digest{};   // and the entry that arrived there
  std::string path;           // empty if it cannot stand in a line
};

// Oldest first. Lines that cannot be read are passed over: then the copy counts as not made.
std::vector<MadeCopy> made_copies(const std::string& state_folder, const logbook::RecordId& record);
// Durable when it returns; no_place_for_mark if the state folder fails.
void remember(const std::string& state_folder, const logbook::RecordId& record,
              const MadeCopy& copy);

}  // namespace store
