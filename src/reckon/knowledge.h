// reckon/knowledge.h: what each entry's writer had before it when it was written. So "this was
// written without knowing that" is decided for ever, without a clock.
#pragma once

#include <cstdint>
#include <map>
#include <utility>
#include <vector>

#include "logbook/entry.h"

namespace reckon {

// The book as it stood when an entry was written: the newest number of each writer.
using Seen = std::map<logbook::WriterId, std::int64_t>;
bool is_seen(const Seen& seen, const logbook::EntryId& id);

class Knowledge {
 public:
  Knowledge() = default;
  explicit Knowledge(const std::vector<logbook::Entry>& entries);

  // Its own writer's earlier entries, and what that writer had learned of the others by then.
  Seen seen_by(const logbook::EntryId& id) const;
  // Whether `by` was written with `of` in its writer's book.
  bool knew(const logbook::EntryId& by, const logbook::EntryId& of) const;

 private:
  // Per writer and other writer: (own number, the other's newest known number), both rising.
  using Learned = std::vector<std::pair<std::int64_t, std::int64_t>>;
  static std::int64_t newest(const Learned& learned, std::int64_t number);

  std::map<logbook::WriterId, std::map<logbook::WriterId, Learned>> learned_;
};

}  // namespace reckon
