// tests/sentence/random_facts.h: random facts of every kind, made by walking the declarations:
// every option, clause and leaf of the language comes up, with names and texts chosen to hurt.
#pragma once

#include <cstdint>

#include "sentence/kinds/kinds.h"
#include "sentence/random_leaves.h"

namespace random_facts {

// Fills a value in a way that its sort may write. False if the value has no such way.
void fill(Dice& dice, const sentence::Sort& sort, void* value);
// What someone may have said of this kind: canonical in its order, with the clauses it needs.
logbook::Said said_of(Dice& dice, const sentence::Kind& kind);

// The seed and the number of facts for a test; TIMEWORN_SEED and TIMEWORN_FACTS change them.
std::uint64_t seed();
std::int64_t facts(std::int64_t ordinary);

}  // namespace random_facts
