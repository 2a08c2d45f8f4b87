// reckon/signing.h: how each standing fact was signed, whether that signature counts, and whether
// work counts without one. A signature holds the digests of what it signs, so it is of exactly the
// entries that it was given for; which key proved it, the book has worked out (entry.proved_with).
#pragma once

#include "reckon/keyholders.h"

namespace reckon {

// Fills in what is said about signatures in every fact, once all facts are gathered and sorted.
// all_ends: the standing ends of people and keys, also those of a later day.
// True if anyone signs at all: a person with a key, a signature, or work that must be signed.
bool judge_signatures(std::vector<StandingFact>& facts, const std::vector<StandingFact>& all_ends,
                      const std::vector<Chain>& chains, const Knowledge& knowledge);

// The people and keys of everything that stands.
Keyholders holders_now(const std::vector<StandingFact>& facts, const Knowledge& knowledge);

// Work that starts a life or an interval anew.
bool is_work_that_resets(const logbook::Fact& fact);
// What a certificated person signs by custom: work, and the rules by which it falls due.
bool wants_signature(const logbook::Fact& fact);
bool is_end(const logbook::Fact& fact);

}  // namespace reckon
