// reckon/trend/inversions.h: pairs that stand in the wrong order, counted while a sequence is
// merged into the right one. Both robust methods live on it: n (n - 1) / 2 pairs are counted in a
// time of n log n.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace reckon::trend {

struct Inversion {
  std::size_t greater;  // stands first
  std::size_t smaller;
};

struct Inversions {
  std::size_t count;
  std::vector<Inversion> picked;
};

// How many pairs of the sequence have the greater number first; equal ones are no such pair. They
// are met in an order that depends on the sequence alone; `wanted` names by number, from 0 and
// rising, the ones to be handed back.
Inversions inversions(std::vector<std::size_t> sequence, std::span<const std::size_t> wanted = {});

}  // namespace reckon::trend
