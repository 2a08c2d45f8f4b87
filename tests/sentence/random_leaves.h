// tests/sentence/random_leaves.h: chance with a seed, and a random value for each leaf of the
// language.
#pragma once

#include <cstdint>
#include <random>
#include <string>

#include "sentence/table.h"

namespace random_facts {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  std::int64_t between(std::int64_t low, std::int64_t high) {
    return std::uniform_int_distribution<std::int64_t>(low, high)(engine_);
  }
  bool is_heads() { return between(0, 1) == 1; }
  std::mt19937_64& engine() { return engine_; }

 private:
  std::mt19937_64 engine_;
};

// A text or name that is likely to be taken for something else.
std::string hostile_text(Dice& dice);
// Fills the value of a leaf; a leaf that is not known here is a broken promise.
void fill_leaf(Dice& dice, const sentence::Sort& sort, void* value);

}  // namespace random_facts
