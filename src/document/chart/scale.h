#pragma once
// Axes with round figures: ticks at 1, 2 or 5 times a power of ten.

#include <cstddef>
#include <string>
#include <vector>

namespace document {

// From low to high, both included.
struct Extent {
  double low, high;
};

struct Tick {
  double at;
  std::string words;  // as many digits behind the point as the step needs
};

struct Scale {
  double low, high;         // low < high
  std::vector<Tick> ticks;  // upward, from low to high
};

// The smallest extent that holds both.
Extent joined(Extent extent, double at);

// The extent itself, or if it has (nearly) no width, one around it that has.
Extent widened(Extent extent);

// At most `most_steps` round steps over the extent, plus what rounding outward adds: the scale
// begins and ends at a tick.
Scale round_scale(Extent extent, std::size_t most_steps);

// The scale of the extent as it is; ticks at the round figures inside, at least one of them.
Scale tight_scale(Extent extent, std::size_t most_steps);

}  // namespace document
