// store/arrivals.h: when what came into this book, and under which writers the book was written.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "logbook/entry.h"
#include "store/origin.h"
#include "store/sqlite.h"

namespace store {

// The writer under which the book was last written; absent before its first entry.
std::optional<logbook::WriterId> own_writer(Database& database);
// All of them, oldest first.
std::vector<logbook::WriterId> own_writers(Database& database);
// Begins a new one and returns it.
logbook::WriterId begin_writer(Database& database, const Origin& origin);
std::int64_t own_writer_count(Database& database);

// Returns the arrival's place.
std::int64_t arrive(Database& database, const logbook::EntryId& entry, std::int64_t command,
                    const Origin& origin);
std::int64_t next_command(Database& database);
// The place of the writer's newest arrival; 0 if there is none.
std::int64_t newest_place_of(Database& database, const logbook::WriterId& writer);
// True if all that this writer wrote after the number came with one command.
bool is_one_command_after(Database& database, const logbook::WriterId& writer, std::int64_t number);
logbook::Horizon horizon_on(Database& database, quantity::Day day);

// Finds an entry's place in arrived, from the newest backwards: what was derived anew lately stands
// near the end. What was passed on the way is remembered.
class Places {
 public:
  explicit Places(Database& database);
  // damaged if the entry never arrived.
  std::int64_t of(const logbook::EntryId& entry);
  void add(const logbook::EntryId& entry, std::int64_t place);

 private:
  bool read_further_back();
  Database& database_;
  std::int64_t next_;
  std::unordered_map<std::string, std::int64_t> known_;  // by digest
};

}  // namespace store
