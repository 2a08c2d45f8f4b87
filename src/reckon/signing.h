// reckon/signing.h: how each standing fact was signed, whether that signature counts, and whether
// work counts without one. A signature holds the digests of what it signs, so it is of exactly the
// entries that it was given for; which key proved it, the book has worked out (entry.proved_with).
#pragma once

#include "reckon/keyholders.h"
#include "reckon/standing.h"

namespace reckon {

// Fills in what is said about signatures in every fact, once all facts are gathered and sorted.
// all_ends: the standing ends of people and keys, also those of a later day.
void judge_signatures(Standing& standing, const std::vector<StandingFact>& all_ends);

// The people and keys of everything that stands.
Keyholders holders_now(const Standing& standing);

// Work that starts a life or an interval anew.
bool is_work_that_resets(const logbook::Fact& fact);
// What a certificated person signs by custom: work, and the rules by which it falls due.
bool wants_signature(const logbook::Fact& fact);
bool is_end(const logbook::Fact& fact);

}  // namespace reckon
