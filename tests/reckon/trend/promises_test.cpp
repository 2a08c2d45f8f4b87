// What the lines and slopes promise to be asked for, and slopes that differ by rounding alone. No
// source: points that are not finite, columns of different length and ranks that do not exist are
// faults of the caller and stop the program before anything is told.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <limits>
#include <random>

#include "quantity/expect.h"
#include "reckon/trend/levels.h"
#include "reckon/trend/pair_slopes.h"
#include "reckon/trend/regression.h"

namespace {

using namespace reckon::trend;
using quantity::BrokenPromise;

constexpr double endless = std::numeric_limits<double>::infinity();
constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

const std::vector<Point> unsound = {
    {endless, 1.0}, {1.0, -endless}, {no_number, 1.0}, {1.0, no_number}};

std::vector<double> all_slopes(const Group& group) {
  std::vector<double> slopes;
  for (std::size_t from = 0; from < group.size(); ++from) {
    for (std::size_t to = from + 1; to < group.size(); ++to) {
      if (group[from].x == group[to].x) continue;
      slopes.push_back(slope_between(group[from], group[to]));
    }
  }
  std::ranges::sort(slopes);
  return slopes;
}

BOOST_AUTO_TEST_SUITE(trend_promises)

BOOST_AUTO_TEST_CASE(points_that_are_not_finite_are_no_readings) {
  for (const Point& point : unsound) {
    const std::vector<Group> groups{{{0.0, 0.0}, {1.0, 1.0}, {2.0, 2.0}, point}};
    BOOST_CHECK_THROW(PairSlopes{groups}, BrokenPromise);
    BOOST_CHECK_THROW(fit_levels(groups), BrokenPromise);
  }
}

BOOST_AUTO_TEST_CASE(levels_have_readings) {
  BOOST_CHECK_THROW(fit_levels({}), BrokenPromise);
  const std::vector<Group> with_none{{{0.0, 0.0}, {1.0, 1.0}, {2.0, 2.5}}, {}};
  BOOST_CHECK_THROW(fit_levels(with_none), BrokenPromise);
  const std::vector<Group> one{{{0.0, 0.0}, {1.0, 1.0}, {2.0, 2.5}}};
  const auto line = std::get<LevelledLine>(fit_levels(one));
  BOOST_CHECK_THROW(deciding_readings(with_none, line, {0.95, 0.0}), BrokenPromise);
}

BOOST_AUTO_TEST_CASE(a_rank_is_one_of_the_pairs) {
  const std::vector<Group> groups{{{0.0, 0.0}, {1.0, 1.0}, {2.0, 4.0}}};
  const PairSlopes slopes(groups);
  BOOST_REQUIRE_EQUAL(slopes.count(), 3U);
  BOOST_TEST(slopes.at_rank(2) == 3.0);
  BOOST_TEST(slopes.between_ranks(0.5) == 1.5);
  BOOST_CHECK_THROW(slopes.at_rank(3), BrokenPromise);
  const std::vector<Group> at_one_x{{{1.0, 0.0}, {1.0, 1.0}}};
  BOOST_CHECK_THROW(PairSlopes(at_one_x).median(), BrokenPromise);
}

BOOST_AUTO_TEST_CASE(columns_of_a_regression_fit_together) {
  const std::vector<double> y = {1.0, 2.0, 4.0, 4.0};
  const TermColumn x = {1.0, 2.0, 3.0, 4.0};
  const auto with = [&](std::vector<TermColumn> terms, const std::vector<double>& figures) {
    return regress(terms, figures, Constant::fitted);
  };
  BOOST_CHECK_THROW(with({}, y), BrokenPromise);
  BOOST_CHECK_THROW(with({{1.0, 2.0}}, y), BrokenPromise);
  BOOST_CHECK_THROW(with({{1.0, 2.0, endless, 4.0}}, y), BrokenPromise);
  BOOST_CHECK_THROW(with({x}, {1.0, 2.0, no_number, 4.0}), BrokenPromise);
  const Regression fit = std::get<Regression>(with({x}, y));
  const std::vector<double> two_terms = {1.0, 2.0};
  BOOST_CHECK_THROW(predicted(fit, two_terms), BrokenPromise);
  BOOST_CHECK_THROW(leverage(fit, two_terms), BrokenPromise);
}

// Source: R. A. Fisher's definition of r2 (share of the sum of squares about the mean): where all
// readings are the same there is nothing to share.
BOOST_AUTO_TEST_CASE(readings_that_are_all_the_same_leave_nothing_to_explain) {
  const std::vector<TermColumn> x = {{1.0, 2.0, 3.0, 4.0}};
  const std::vector<double> flat = {0.0, 0.0, 0.0, 0.0};
  const Regression fit = std::get<Regression>(regress(x, flat, Constant::fitted));
  BOOST_CHECK(!fit.r2);
  BOOST_TEST(fit.coefficients.front() == 0.0);
  const Regression through = std::get<Regression>(regress(x, flat, Constant::none));
  BOOST_TEST(leverage(through, std::vector<double>{0.0}) == 0.0);
}

// The answer is the very slope that a sorted list of all pairs holds, to the last bit, also where
// the slopes of one straight line differ by rounding alone.
BOOST_AUTO_TEST_CASE(slopes_that_differ_by_rounding_alone_have_their_ranks) {
  const unsigned seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937 random(seed);
  std::uniform_real_distribution<double> any(0.0, 1.0);
  for (int round = 0; round < 40; ++round) {
    const double slope = any(random);
    const double high = round % 2 == 0 ? 0.0 : 1e9 * any(random);
    Group group;
    for (int i = 0; i < 9; ++i) group.push_back({0.1 * i, high + slope * (0.1 * i)});
    const std::vector<double> sorted = all_slopes(group);
    const std::vector<Group> groups{group};
    const PairSlopes slopes(groups);
    BOOST_TEST_REQUIRE(slopes.count() == sorted.size());
    for (std::size_t rank = 0; rank < sorted.size(); ++rank) {
      BOOST_TEST(slopes.at_rank(rank) == sorted[rank], "seed " << seed << " rank " << rank);
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
