#include "reckon/trend/theil_sen.h"

#include <algorithm>
#include <cmath>

#include "quantity/expect.h"
#include "reckon/trend/mann_kendall.h"
#include "reckon/trend/pair_slopes.h"
#include "reckon/trend/student.h"

namespace reckon::trend {

namespace {

double median_of(std::vector<double> figures) {
  EXPECT(!figures.empty());
  std::ranges::sort(figures);
  const std::size_t half = figures.size() / 2;
  if (figures.size() % 2 == 1) return figures[half];
  return (figures[half - 1] + figures[half]) / 2.0;
}

double intercept_of(const Group& group, double slope) {
  std::vector<double> x;
  std::vector<double> y;
  for (const Point& point : group) {
    x.push_back(point.x);
    y.push_back(point.y);
  }
  return median_of(y) - slope * median_of(x);
}

std::optional<Interval> interval_of(const PairSlopes& slopes, double variance,
                                    Certainty certainty) {
  const double pairs = static_cast<double>(slopes.count());
  const double spread = two_sided_normal(certainty.confidence) * std::sqrt(variance) *
                        widening(certainty.serial_correlation);
  // Counted from 0: the limits lie equally far from either end of the list.
  const double low = (pairs - spread) / 2.0 - 1.0;
  if (low < 0.0) return std::nullopt;
  return Interval{slopes.between_ranks(low), slopes.between_ranks(pairs - 1.0 - low)};
}

}  // namespace

std::optional<TheilSen> theil_sen(Groups groups, Certainty certainty) {
  const PairSlopes slopes(groups);
  if (slopes.count() == 0) return std::nullopt;
  const double variance = mann_kendall(groups, certainty.serial_correlation).variance;
  TheilSen line{};
  line.pairs = slopes.count();
  line.slope = slopes.median();
  line.intercept = intercept_of(groups.back(), line.slope);
  line.interval = interval_of(slopes, variance, certainty);
  return line;
}

}  // namespace reckon::trend
