#include "document/chart/scale.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

#include "document/chart/decimal.h"

namespace document {
namespace {

// Against steps that miss a round figure by the last bit of a double.
constexpr double hair = 1e-9;

struct Step {
  std::int64_t mantissa;
  int exponent;

  // Divided where the exponent is negative, since powers like 0.1 are not exact.
  double times(std::int64_t count) const {
    const auto number = static_cast<double>(count * mantissa);
    const double power = std::pow(10.0, std::abs(exponent));
    return exponent < 0 ? number / power : number * power;
  }

  std::string words(std::int64_t count) const { return scaled(count * mantissa, exponent); }
};

Step round_step(double least) {
  const int exponent = static_cast<int>(std::floor(std::log10(least)));
  for (const std::int64_t mantissa : {1, 2, 5}) {
    const Step step{mantissa, exponent};
    if (step.times(1) >= least * (1 - hair)) return step;
  }
  return {1, exponent + 1};
}

Step step_over(Extent extent, std::size_t most_steps) {
  return round_step((extent.high - extent.low) /
                    static_cast<double>(std::max<std::size_t>(most_steps, 1)));
}

struct Counts {
  std::int64_t first, last;
};

std::vector<Tick> ticks_of(const Step& step, Counts counts) {
  std::vector<Tick> ticks;
  for (std::int64_t count = counts.first; count <= counts.last; ++count) {
    ticks.push_back({step.times(count), step.words(count)});
  }
  return ticks;
}

// The steps in which an extent is counted, rounded outward or inward.
Counts outward(const Step& step, Extent extent) {
  const double one = step.times(1);
  return {static_cast<std::int64_t>(std::floor(extent.low / one + hair)),
          static_cast<std::int64_t>(std::ceil(extent.high / one - hair))};
}

Counts inward(const Step& step, Extent extent) {
  const double one = step.times(1);
  return {static_cast<std::int64_t>(std::ceil(extent.low / one - hair)),
          static_cast<std::int64_t>(std::floor(extent.high / one + hair))};
}

}  // namespace

Extent joined(Extent extent, double at) {
  return {std::min(extent.low, at), std::max(extent.high, at)};
}

Extent widened(Extent extent) {
  const double greatest = std::max(std::abs(extent.low), std::abs(extent.high));
  if (extent.high - extent.low > 1e-9 * std::max(greatest, 1.0)) return extent;
  const double around = greatest > 1e-9 ? 0.05 * greatest : 1.0;
  return {extent.low - around, extent.high + around};
}

Scale round_scale(Extent extent, std::size_t most_steps) {
  extent = widened(extent);
  const Step step = step_over(extent, most_steps);
  const Counts counts = outward(step, extent);
  return {step.times(counts.first), step.times(counts.last), ticks_of(step, counts)};
}

Scale tight_scale(Extent extent, std::size_t most_steps) {
  extent = widened(extent);
  // A wide step may find no round figure inside; a finer one does.
  for (std::size_t steps = std::max<std::size_t>(most_steps, 1);; ++steps) {
    const Step step = step_over(extent, steps);
    const Counts counts = inward(step, extent);
    if (counts.first <= counts.last) return {extent.low, extent.high, ticks_of(step, counts)};
  }
}

}  // namespace document
