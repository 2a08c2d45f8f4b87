// reckon/standing.h: which facts stand, once corrections and strikes are applied. An entry stands
// unless a standing entry corrects or strikes it; the newest of a chain gives its value.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "reckon/chains.h"
#include "reckon/knowledge.h"
#include "reckon/standing_fact.h"

namespace reckon {

// Corrections of one entry that were made apart; which of them counts nobody has decided.
struct MadeApart {
  logbook::EntryId root;
  std::vector<logbook::EntryId> corrections;  // by (writer, number); the last counts
};
// By first entry, the correction that is taken instead; absent: nothing of that entry counts.
using Decided = std::map<logbook::EntryId, std::optional<logbook::EntryId>>;

struct Standing {
  std::vector<StandingFact> facts;   // by (day, written)
  std::vector<StandingFact> struck;  // for history; said is the last value
  std::vector<Question> questions;
  std::vector<MadeApart> made_apart;
  // Entries that this version cannot read, with what they are about.
  std::vector<const logbook::Entry*> unread;
  // For reckoning the book as it stood when an entry was written.
  Knowledge knowledge;
  std::vector<Chain> chains;
  // Whether anyone signs at all: a person with a key, a signature, or work that must be signed.
  bool has_signing = false;
};

// The entries must outlive the result. Facts whose day is after as_of are left out; corrections and
// strikes have no day of their own (design 2).
Standing standing(const std::vector<logbook::Entry>& entries, quantity::Day as_of,
                  const Decided& decided = {});

}  // namespace reckon
