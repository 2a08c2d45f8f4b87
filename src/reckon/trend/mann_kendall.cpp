#include "reckon/trend/mann_kendall.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "quantity/expect.h"
#include "reckon/trend/inversions.h"
#include "reckon/trend/student.h"

namespace reckon::trend {

namespace {

// Sums over the runs of equal figures, each run of t: of pairs, t (t - 1); of t (t - 1) (t - 2);
// and of t (t - 1) (2 t + 5).
struct Ties {
  double twos = 0.0;
  double threes = 0.0;
  double weighted = 0.0;
};

Ties ties_of(std::vector<double> figures) {
  std::ranges::sort(figures);
  Ties ties;
  for (auto run = figures.begin(); run != figures.end();) {
    const auto end = std::upper_bound(run, figures.end(), *run);
    const double t = static_cast<double>(end - run);
    ties.twos += t * (t - 1.0);
    ties.threes += t * (t - 1.0) * (t - 2.0);
    ties.weighted += t * (t - 1.0) * (2.0 * t + 5.0);
    run = end;
  }
  return ties;
}

double variance_of(double n, const Ties& in_x, const Ties& in_y) {
  if (n < 2.0) return 0.0;
  double variance = (n * (n - 1.0) * (2.0 * n + 5.0) - in_x.weighted - in_y.weighted) / 18.0;
  variance += in_x.twos * in_y.twos / (2.0 * n * (n - 1.0));
  if (n > 2.0) variance += in_x.threes * in_y.threes / (9.0 * n * (n - 1.0) * (n - 2.0));
  return variance;
}

// The y as their places among the different y.
std::vector<std::size_t> places_of(const Group& group, std::vector<double> y) {
  std::ranges::sort(y);
  std::vector<std::size_t> places;
  places.reserve(group.size());
  for (const Point& point : group) {
    places.push_back(static_cast<std::size_t>(std::ranges::lower_bound(y, point.y) - y.begin()));
  }
  return places;
}

std::int64_t pairs_of(std::int64_t n) { return n * (n - 1) / 2; }

// Pairs alike in both, where like stands next to like.
std::int64_t pairs_at_one_place(const Group& group) {
  std::int64_t pairs = 0;
  std::int64_t run = 0;
  for (std::size_t place = 1; place < group.size(); ++place) {
    const Point before = group[place - 1];
    run = before.x == group[place].x && before.y == group[place].y ? run + 1 : 0;
    pairs += run;
  }
  return pairs;
}

void add(MannKendall& sum, Group group) {
  std::ranges::sort(group,
                    [](Point a, Point b) { return std::tie(a.x, a.y) < std::tie(b.x, b.y); });
  std::vector<double> x;
  std::vector<double> y;
  for (const Point& point : group) {
    EXPECT(std::isfinite(point.x) && std::isfinite(point.y));
    x.push_back(point.x);
    y.push_back(point.y);
  }
  const Ties in_x = ties_of(x);
  const Ties in_y = ties_of(y);
  sum.variance += variance_of(static_cast<double>(group.size()), in_x, in_y);

  // With y rising within one x, a pair in the wrong order is one that falls.
  const auto falling = static_cast<std::int64_t>(inversions(places_of(group, y)).count);
  const auto same_x = static_cast<std::int64_t>(in_x.twos) / 2;
  const auto same_y = static_cast<std::int64_t>(in_y.twos) / 2;
  const std::int64_t rising_or_falling = pairs_of(static_cast<std::int64_t>(group.size())) -
                                         same_x - same_y + pairs_at_one_place(group);
  sum.s += rising_or_falling - 2 * falling;
}

}  // namespace

MannKendall mann_kendall(Groups groups, double serial_correlation) {
  MannKendall sum{};
  for (const Group& group : groups) add(sum, group);
  const double error = std::sqrt(sum.variance) * widening(serial_correlation);
  const double towards_zero = sum.s > 0 ? -1.0 : 1.0;
  if (sum.s != 0 && error > 0.0) sum.z = (static_cast<double>(sum.s) + towards_zero) / error;
  sum.p = two_sided_normal_p(sum.z);
  return sum;
}

}  // namespace reckon::trend
