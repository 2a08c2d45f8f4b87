// Theil-Sen's slope and limits against published ones, and its way of finding a rank against the
// sorted list of all pairs.
#include "reckon/trend/theil_sen.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "quantity/expect.h"
#include "reckon/trend/inversions.h"
#include "reckon/trend/pair_slopes.h"
#include "reckon/trend/published.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::random_series;
using trend_test::seeded;
using trend_test::series;
using trend_test::tied_series;

TheilSen robust(const std::vector<Point>& points, Certainty certainty) {
  const std::vector<Group> groups{points};
  return theil_sen(groups, certainty).value();
}
TheilSen robust(const std::vector<Point>& points) { return robust(points, {0.95, 0.0}); }

// Every pair's slope, sorted: the definition.
std::vector<double> all_slopes(const std::vector<Group>& groups) {
  std::vector<double> slopes;
  for (Group group : groups) {
    std::ranges::stable_sort(group, {}, &Point::x);
    for (std::size_t i = 0; i < group.size(); ++i) {
      for (std::size_t j = i + 1; j < group.size(); ++j) {
        if (group[i].x == group[j].x) continue;
        slopes.push_back((group[j].y - group[i].y) / (group[j].x - group[i].x));
      }
    }
  }
  std::ranges::sort(slopes);
  return slopes;
}

double middle(const std::vector<double>& sorted) {
  const std::size_t half = sorted.size() / 2;
  return sorted.size() % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2.0;
}

BOOST_AUTO_TEST_SUITE(theil_sen_line)

// Source: Sen 1968: slope 4, limits at 93 % 26/7 and 35/8 with the ranks rounded to 4 and 18. With
// ranks interpolated the limits are 3.730995 and 4.284619 (derived). The intercept by medians is 4;
// by the median of y - 4 x it would be 6.
BOOST_AUTO_TEST_CASE(the_papers_own_example_is_met) {
  const TheilSen line = robust(trend_test::sen(), {0.93, 0.0});
  BOOST_TEST(line.pairs == 21u);
  BOOST_TEST(line.slope == 4.0);
  BOOST_TEST(line.intercept == 4.0);
  BOOST_TEST(is_printed_as(line.interval.value().low, 3.730995, 6));
  BOOST_TEST(is_printed_as(line.interval.value().high, 4.284619, 6));
  const std::vector<Group> groups{trend_test::sen()};
  BOOST_TEST(PairSlopes(groups).at_rank(3) == 26.0 / 7.0);
  BOOST_TEST(PairSlopes(groups).at_rank(17) == 35.0 / 8.0);
}

// Source: EPA Unified Guidance 2009, example 17-6, with ranks interpolated.
BOOST_AUTO_TEST_CASE(the_guidances_example_is_met_to_all_printed_digits) {
  const TheilSen line = robust(trend_test::epa_17_6());
  BOOST_TEST(is_printed_as(line.slope, 26.6666667, 7));
  BOOST_TEST(is_printed_as(line.intercept, -1909.3333333, 7));
  BOOST_TEST(is_printed_as(line.interval.value().low, 20.00000, 5));
  BOOST_TEST(is_printed_as(line.interval.value().high, 35.71182, 5));
}

// Source: Anscombe 1973; the slopes are derived. In the third set one wild point turns the line of
// least squares to 0.4997 and not this one.
BOOST_AUTO_TEST_CASE(one_wild_reading_does_not_turn_it) {
  BOOST_TEST(is_printed_as(robust(trend_test::anscombe(1)).slope, .501667, 6));
  BOOST_TEST(is_printed_as(robust(trend_test::anscombe(2)).slope, .500000, 6));
  BOOST_TEST(is_printed_as(robust(trend_test::anscombe(3)).slope, .345556, 6));
  BOOST_TEST(is_printed_as(robust(trend_test::anscombe(4)).slope, .503182, 6));
  BOOST_TEST(robust(trend_test::anscombe(4)).pairs == 10u);
}

// Practice case F9 and the split of practice case E1, derived.
BOOST_AUTO_TEST_CASE(uneven_margins_and_the_split_of_two_engines_are_met) {
  BOOST_TEST(is_printed_as(robust(trend_test::uneven_margins()).slope, -0.049221, 6));
  const auto split = series(0, 10, {-2, -2, -2, -3, -3, -4, -4, -4, -5, -5, -6, -6});
  BOOST_TEST(is_printed_as(robust(split).slope, -0.040, 3));
}

// Between the groups the level jumps by 11; no pair across the wash may count.
BOOST_AUTO_TEST_CASE(only_pairs_between_two_washes_count) {
  const TheilSen line = theil_sen(trend_test::washed(), {0.95, 0.0}).value();
  BOOST_TEST(line.pairs == 20u);
  BOOST_TEST(line.slope == -0.1, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(line.intercept == 39.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(line.interval.value().high < 0.0);
}

BOOST_AUTO_TEST_CASE(the_middle_is_that_of_all_pairs_to_the_last_bit) {
  std::mt19937_64 random = seeded("all pairs");
  for (int round = 0; round < 150; ++round) {
    std::vector<Group> groups;
    const int how_many = 1 + round % 3;
    for (int left = how_many; left > 0; --left) {
      groups.push_back(round % 2 == 0 ? tied_series(random, 500 / how_many)
                                      : random_series(random));
    }
    const std::vector<double> sorted = all_slopes(groups);
    const PairSlopes slopes(groups);
    BOOST_REQUIRE(slopes.count() == sorted.size());
    if (sorted.empty()) continue;
    BOOST_TEST(slopes.median() == middle(sorted));
    std::uniform_int_distribution<std::size_t> ranks(0, sorted.size() - 1);
    for (const std::size_t rank : {std::size_t{0}, ranks(random), sorted.size() - 1}) {
      BOOST_TEST(slopes.at_rank(rank) == sorted[rank]);
    }
  }
}

BOOST_AUTO_TEST_CASE(the_order_of_the_readings_does_not_matter_to_the_last_bit) {
  std::mt19937_64 random = seeded("robust order");
  for (int round = 0; round < 100; ++round) {
    std::vector<Point> points = random_series(random);
    const TheilSen line = robust(points, {0.8, 0.2});
    std::ranges::shuffle(points, random);
    const TheilSen other = robust(points, {0.8, 0.2});
    BOOST_TEST(other.slope == line.slope);
    BOOST_TEST(other.intercept == line.intercept);
    BOOST_REQUIRE(other.interval.has_value() == line.interval.has_value());
    if (!line.interval) continue;
    BOOST_TEST(other.interval->low == line.interval->low);
    BOOST_TEST(other.interval->high == line.interval->high);
  }
}

BOOST_AUTO_TEST_CASE(the_interval_holds_the_slope_and_widens_with_confidence_and_correlation) {
  std::mt19937_64 random = seeded("robust interval");
  for (int round = 0; round < 100; ++round) {
    const std::vector<Point> points = random_series(random);
    const TheilSen narrow = robust(points, {0.5, 0.0});
    if (!narrow.interval) continue;
    BOOST_TEST(narrow.interval->low <= narrow.slope);
    BOOST_TEST(narrow.interval->high >= narrow.slope);
    for (const Certainty wider : {Certainty{0.8, 0.0}, Certainty{0.5, 0.4}}) {
      const auto interval = robust(points, wider).interval;
      if (!interval) continue;
      BOOST_TEST(interval->low <= narrow.interval->low);
      BOOST_TEST(interval->high >= narrow.interval->high);
    }
  }
}

// By hand: five readings make 10 pairs and a variance of 16.67; 1.96 standard deviations are 8.002,
// so the lower limit would need a rank of 0.999.
BOOST_AUTO_TEST_CASE(five_readings_have_no_interval_of_95_and_two_at_once_have_no_slope) {
  const auto five = series(0, 10, {30, 28, 27, 25, 24});
  BOOST_TEST(!robust(five).interval.has_value());
  BOOST_TEST(robust(five, {0.9, 0.0}).interval.has_value());
  const std::vector<Group> at_once{series({5, 5, 5}, {1, 2, 3}), series({7, 7}, {1, 2})};
  BOOST_TEST(!theil_sen(at_once, {0.95, 0.0}).has_value());
}

BOOST_AUTO_TEST_CASE(readings_all_alike_have_a_slope_of_zero_and_nothing_about_it) {
  const TheilSen line = robust(series(1204.3, 8.3, {39.7, 39.7, 39.7, 39.7, 39.7}));
  BOOST_TEST(line.slope == 0.0);
  BOOST_TEST(line.interval.value().low == 0.0);
  BOOST_TEST(line.interval.value().high == 0.0);
}

// Five thousand readings make twelve million pairs: looked through, as many lie below the slope as
// above.
BOOST_AUTO_TEST_CASE(many_readings_have_as_many_slopes_below_as_above) {
  std::mt19937_64 random = seeded("many");
  std::normal_distribution<double> scatter(0.0, 3.0);
  std::vector<Point> points;
  for (int place = 0; place < 5000; ++place) {
    points.push_back({0.7 * place, 40.0 - 0.01 * place + scatter(random)});
  }
  const std::vector<Group> groups{points};
  const double slope = PairSlopes(groups).median();
  std::size_t below = 0;
  std::size_t equal = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (std::size_t j = i + 1; j < points.size(); ++j) {
      const double one = (points[j].y - points[i].y) / (points[j].x - points[i].x);
      below += one < slope ? 1 : 0;
      equal += one == slope ? 1 : 0;
    }
  }
  const std::size_t half = points.size() * (points.size() - 1) / 4;
  BOOST_TEST(below <= half);
  BOOST_TEST(below + equal >= half);
}

BOOST_AUTO_TEST_CASE(a_reading_that_is_no_number_breaks_a_promise) {
  const std::vector<Group> bad{series(0, 1, {1, 2, std::nan(""), 4})};
  BOOST_CHECK_THROW(PairSlopes{bad}, quantity::BrokenPromise);
}

BOOST_AUTO_TEST_CASE(pairs_in_the_wrong_order_are_counted_and_each_can_be_picked_once) {
  std::mt19937_64 random = seeded("inversions");
  for (int round = 0; round < 100; ++round) {
    std::vector<std::size_t> sequence(static_cast<std::size_t>(round));
    for (std::size_t& number : sequence) number = random() % 20;
    std::vector<std::pair<std::size_t, std::size_t>> expected;
    for (std::size_t i = 0; i < sequence.size(); ++i) {
      for (std::size_t j = i + 1; j < sequence.size(); ++j) {
        if (sequence[i] > sequence[j]) expected.emplace_back(sequence[i], sequence[j]);
      }
    }
    std::vector<std::size_t> wanted;
    while (wanted.size() < expected.size()) wanted.push_back(wanted.size());
    const Inversions found = inversions(sequence, wanted);
    BOOST_TEST(found.count == expected.size());
    std::vector<std::pair<std::size_t, std::size_t>> picked;
    for (const Inversion& one : found.picked) picked.emplace_back(one.greater, one.smaller);
    std::ranges::sort(picked);
    std::ranges::sort(expected);
    BOOST_TEST((picked == expected));
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
