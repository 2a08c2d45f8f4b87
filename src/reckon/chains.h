// reckon/chains.h: a fact's first entry with all that was later said about it, and which value it
// has once corrections and strikes are applied. The same rules give the value now and the value in
// the book as it once stood.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "logbook/entry.h"
#include "reckon/knowledge.h"

namespace reckon {

// One entry of a chain. target is the place in the chain of the entry that it corrects or strikes.
struct Link {
  const logbook::Entry* entry = nullptr;
  std::size_t target = 0;  // of the first entry: itself
};
struct Chain {
  std::vector<Link> links;  // the first entry first; each after its target
  // Of corrections that stand beside each other, the one by which it is read; else the newest.
  std::optional<logbook::EntryId> taken;
  bool is_left_out = false;  // read as if nothing of it were on record
  const logbook::EntryId& root() const { return links.front().entry->id; }
};

struct ChainValue {
  const logbook::Said* said = nullptr;   // null: nothing of it stands
  const logbook::Said* last = nullptr;   // what was said last, also when it is struck
  std::vector<logbook::EntryId> chain;   // first … newest, those that gave the value
  std::vector<logbook::EntryId> apart;   // corrections that stand beside each other
  bool is_corrected_and_struck = false;  // struck by someone who did not know the correction
};

// What an entry says as a value: its own fact, or the one that a correction puts in its place. Null
// for a strike.
const logbook::Said* said_in(const logbook::Entry& entry);

// seen absent: everything counts.
ChainValue value_of(const Chain& chain, const Knowledge& knowledge, const Seen* seen);
// Whether every entry of the chain had been seen.
bool is_wholly_seen(const Chain& chain, const Seen& seen);

struct Chains {
  std::vector<Chain> all;  // by (writer, number) of the first entry
  std::vector<const logbook::Entry*> unread;
  // Corrections and strikes that name an entry which is not in the book or cannot be read.
  std::vector<const logbook::Entry*> without_target;
};
// The entries must outlive the result.
Chains chains_of(const std::vector<logbook::Entry>& entries);

}  // namespace reckon
