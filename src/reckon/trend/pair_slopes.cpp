#include "reckon/trend/pair_slopes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <random>
#include <set>
#include <tuple>

#include "quantity/expect.h"
#include "reckon/trend/inversions.h"

// Each point becomes the line y - t x over t. Two such lines cross where t is the slope of the two
// points, so the lines' order at t tells which pairs have a slope below t: those that stand in the
// wrong order. The order is worked out in rounded figures; pairs too close to call are looked at
// one by one, so every count is exact.

namespace reckon::trend {

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

using Order = std::vector<std::size_t>;

// How many slopes are less than a figure, and how many equal to it.
struct Rank {
  std::size_t less = 0;
  std::size_t equal = 0;
};

// The slopes between two figures, both left out. `before` is how many slopes are at or below low,
// `within` how many lie between.
struct Window {
  double low = -endless;
  double high = endless;
  std::size_t before = 0;
  std::size_t within = 0;
};

std::vector<long double> heights_at(const Group& group, double t) {
  std::vector<long double> heights;
  heights.reserve(group.size());
  for (const Point& point : group) {
    heights.push_back(static_cast<long double>(point.y) -
                      static_cast<long double>(t) * static_cast<long double>(point.x));
  }
  return heights;
}

// The places of the group's points in the order of their lines at t.
Order order_at(const Group& group, double t) {
  Order order(group.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  if (t == -endless) return order;
  if (t == endless) {
    std::ranges::stable_sort(order, [&](auto a, auto b) { return group[a].x > group[b].x; });
    return order;
  }
  const auto heights = heights_at(group, t);
  std::ranges::stable_sort(order, [&](auto a, auto b) { return heights[a] < heights[b]; });
  return order;
}

// Heights nearer to each other than this may stand in the wrong order by rounding alone: of the
// heights, and of the slope that slope_between gives.
long double doubtful_height(const Group& group, double t) {
  double x = 0.0;
  double y = 0.0;
  for (const Point& point : group) {
    x = std::max(x, std::abs(point.x));
    y = std::max(y, std::abs(point.y));
  }
  return 16.0L * static_cast<long double>(epsilon) *
         (static_cast<long double>(y) +
          std::abs(static_cast<long double>(t)) * static_cast<long double>(x));
}

// Pairs too close to call by their order are taken out of its count and looked at.
Rank rank_in(const Group& group, double t) {
  const Order order = order_at(group, t);
  const auto heights = heights_at(group, t);
  const long double doubtful = doubtful_height(group, t);
  Rank rank{inversions(order).count, 0};
  for (std::size_t below = 0; below < order.size(); ++below) {
    for (std::size_t above = below + 1; above < order.size(); ++above) {
      if (heights[order[above]] - heights[order[below]] > doubtful) break;
      const auto [from, to] = std::minmax(order[below], order[above]);
      if (group[from].x == group[to].x) continue;
      const double slope = slope_between(group[from], group[to]);
      if (order[below] > order[above]) --rank.less;
      if (slope < t) ++rank.less;
      if (slope == t) ++rank.equal;
    }
  }
  return rank;
}

Rank rank_of(std::span<const Group> groups, double t) {
  Rank sum;
  for (const Group& group : groups) {
    const Rank rank = rank_in(group, t);
    sum.less += rank.less;
    sum.equal += rank.equal;
  }
  return sum;
}

// The lines of one group that cross in a window: the order they have at its high end, told in
// places of the order at its low end.
struct Crossings {
  const Group* group;
  Order at_low;
  Order sequence;
  std::size_t count;
};

Crossings crossings_in(const Group& group, const Window& window) {
  Crossings crossings{&group, order_at(group, window.low), order_at(group, window.high), 0};
  Order place_at_low(group.size());
  for (std::size_t place = 0; place < group.size(); ++place) {
    place_at_low[crossings.at_low[place]] = place;
  }
  for (std::size_t& place : crossings.sequence) place = place_at_low[place];
  crossings.count = inversions(crossings.sequence).count;
  return crossings;
}

bool is_within(const Window& window, double slope) {
  return slope > window.low && slope < window.high;
}

// The slopes of the crossings with these numbers, as far as they lie in the window.
void add_slopes(const Crossings& crossings, std::span<const std::size_t> wanted,
                const Window& window, std::vector<double>& slopes) {
  const Group& group = *crossings.group;
  for (const Inversion& pair : inversions(crossings.sequence, wanted).picked) {
    const auto [from, to] =
        std::minmax(crossings.at_low[pair.greater], crossings.at_low[pair.smaller]);
    if (group[from].x == group[to].x) continue;
    const double slope = slope_between(group[from], group[to]);
    if (is_within(window, slope)) slopes.push_back(slope);
  }
}

// So many numbers below a limit, rising; all of them if there are no more.
std::vector<std::size_t> drawn(std::size_t limit, std::size_t how_many, std::mt19937_64& random) {
  std::vector<std::size_t> numbers(std::min(limit, how_many));
  std::iota(numbers.begin(), numbers.end(), std::size_t{0});
  if (limit <= how_many) return numbers;
  std::uniform_int_distribution<std::size_t> below_limit(0, limit - 1);
  for (std::size_t& number : numbers) number = below_limit(random);
  std::ranges::sort(numbers);
  return numbers;
}

// Slopes from the window in rising order: all, or a fair sample.
std::vector<double> sample_of(std::span<const Group> groups, const Window& window,
                              std::mt19937_64& random) {
  std::vector<Crossings> all;
  std::size_t total = 0;
  std::size_t points = 0;
  for (const Group& group : groups) {
    all.push_back(crossings_in(group, window));
    total += all.back().count;
    points += group.size();
  }
  std::vector<std::size_t> wanted = drawn(total, 2 * points + 32, random);
  std::vector<double> slopes;
  for (const Crossings& crossings : all) {
    const auto end = std::ranges::partition_point(
        wanted, [&](std::size_t number) { return number < crossings.count; });
    const auto here = static_cast<std::size_t>(end - wanted.begin());
    add_slopes(crossings, std::span(wanted).first(here), window, slopes);
    wanted.erase(wanted.begin(), end);
    for (std::size_t& number : wanted) number -= crossings.count;
  }
  std::ranges::sort(slopes);
  return slopes;
}

// Every different slope of the window, pair by pair: where slopes differ by rounding alone the
// lines' order shows none of them.
std::vector<double> each_of(std::span<const Group> groups, const Window& window) {
  std::set<double> slopes;
  for (const Group& group : groups) {
    for (std::size_t from = 0; from < group.size(); ++from) {
      for (std::size_t to = from + 1; to < group.size(); ++to) {
        if (group[from].x == group[to].x) continue;
        const double slope = slope_between(group[from], group[to]);
        if (is_within(window, slope)) slopes.insert(slope);
      }
    }
  }
  return {slopes.begin(), slopes.end()};
}

// Two slopes of the sample that the wanted one probably lies between.
std::array<double, 2> pivots_of(const std::vector<double>& sample, const Window& window,
                                std::size_t rank) {
  const double size = static_cast<double>(sample.size());
  const double share =
      static_cast<double>(rank - window.before) / static_cast<double>(window.within);
  const bool is_all = sample.size() == window.within;
  const double spread = is_all ? 0.0 : std::sqrt(size);
  const auto at = [&](double place) {
    return sample[static_cast<std::size_t>(std::clamp(place, 0.0, size - 1.0))];
  };
  const double place = is_all ? static_cast<double>(rank - window.before) : share * size;
  return {at(place - spread), at(place + spread)};
}

}  // namespace

PairSlopes::PairSlopes(Groups groups) : groups_(groups.begin(), groups.end()) {
  for (Group& group : groups_) {
    for (const Point& point : group) EXPECT(std::isfinite(point.x) && std::isfinite(point.y));
    std::ranges::sort(group,
                      [](Point a, Point b) { return std::tie(a.x, a.y) < std::tie(b.x, b.y); });
    count_ += inversions(order_at(group, endless)).count;
  }
}

double PairSlopes::at_rank(std::size_t rank) const {
  EXPECT(rank < count_);
  // The draw decides how long it takes, never what comes out.
  std::mt19937_64 random(1);
  Window window{-endless, endless, 0, count_};
  while (true) {
    std::vector<double> sample = sample_of(groups_, window, random);
    if (sample.empty()) sample = each_of(groups_, window);
    for (const double pivot : pivots_of(sample, window, rank)) {
      if (!is_within(window, pivot)) continue;
      const Rank found = rank_of(groups_, pivot);
      if (rank >= found.less && rank < found.less + found.equal) return pivot;
      const std::size_t end = window.before + window.within;
      if (rank < found.less)
        window = {window.low, pivot, window.before, found.less - window.before};
      if (rank >= found.less + found.equal) {
        const std::size_t before = found.less + found.equal;
        window = {pivot, window.high, before, end - before};
      }
    }
  }
}

double PairSlopes::between_ranks(double rank) const {
  const double whole = std::floor(rank);
  const double part = rank - whole;
  const double lower = at_rank(static_cast<std::size_t>(whole));
  if (part == 0.0) return lower;
  return lower + part * (at_rank(static_cast<std::size_t>(whole) + 1) - lower);
}

double PairSlopes::median() const {
  EXPECT(count_ > 0);
  const double upper = at_rank(count_ / 2);
  if (count_ % 2 == 1) return upper;
  return (at_rank(count_ / 2 - 1) + upper) / 2.0;
}

}  // namespace reckon::trend
