// The Mann-Kendall count against published ones, against the plain sum over all pairs, and its
// variance against every order the readings could have come in.
#include "reckon/trend/mann_kendall.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "quantity/expect.h"
#include "reckon/trend/published.h"
#include "reckon/trend/student.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::seeded;
using trend_test::series;
using trend_test::tied_series;

MannKendall kendall(const std::vector<Point>& points, double serial_correlation = 0.0) {
  const std::vector<Group> groups{points};
  return mann_kendall(groups, serial_correlation);
}

int sign(double difference) { return difference > 0.0 ? 1 : difference < 0.0 ? -1 : 0; }

// The definition.
std::int64_t plain_sum(const std::vector<Point>& points) {
  std::int64_t s = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (std::size_t j = i + 1; j < points.size(); ++j) {
      s += sign(points[j].x - points[i].x) * sign(points[j].y - points[i].y);
    }
  }
  return s;
}

BOOST_AUTO_TEST_SUITE(mann_kendall_count)

// Source: EPA Unified Guidance 2009, example 17-6: z 5.107322, p 3.267574e-07, and tau without
// correction for ties 0.7667984, which is S / 253.
BOOST_AUTO_TEST_CASE(the_guidances_example_is_met_to_all_printed_digits) {
  const MannKendall trend = kendall(trend_test::epa_17_6());
  BOOST_TEST(trend.s == 194);
  BOOST_TEST(is_printed_as(static_cast<double>(trend.s) / 253.0, 0.7667984, 7));
  BOOST_TEST(std::abs(trend.variance - 1428.0) < 0.5);
  BOOST_TEST(is_printed_as(trend.z, 5.107322, 6));
  BOOST_TEST(is_printed_as(trend.p, 3.267574e-07, 13));
}

// Source: EPA QA/G-9S, page 109 (with ties); the further digits are derived.
BOOST_AUTO_TEST_CASE(the_example_with_ties_is_met) {
  const MannKendall trend = kendall(series(1, 1, {10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15}));
  BOOST_TEST(trend.s == 22);
  BOOST_TEST(is_printed_as(trend.variance, 155.33, 2));
  BOOST_TEST(is_printed_as(trend.z, 1.684950, 6));
  BOOST_TEST(is_printed_as(trend.p, 0.091998, 6));
}

// Practice cases F9, E1 (the split) and Sen 1968, derived. Sen's readings only rise: 21 pairs.
BOOST_AUTO_TEST_CASE(the_practice_cases_are_met) {
  const MannKendall uneven = kendall(trend_test::uneven_margins());
  BOOST_TEST(uneven.s == -38);
  BOOST_TEST(is_printed_as(uneven.variance, 206.0, 0));
  BOOST_TEST(is_printed_as(uneven.z, -2.5779, 4));
  const auto split = kendall(series(0, 10, {-2, -2, -2, -3, -3, -4, -4, -4, -5, -5, -6, -6}));
  BOOST_TEST(split.s == -57);
  BOOST_TEST(is_printed_as(split.variance, 202.33, 2));
  BOOST_TEST(is_printed_as(split.z, -3.937, 3));
  BOOST_TEST(kendall(trend_test::sen()).s == 21);
  BOOST_TEST(is_printed_as(kendall(trend_test::sen()).variance, 44.333333, 6));
}

BOOST_AUTO_TEST_CASE(the_count_is_the_sum_over_all_pairs_in_any_order) {
  std::mt19937_64 random = seeded("kendall");
  for (int round = 0; round < 300; ++round) {
    std::vector<Point> points = tied_series(random, 120);
    const MannKendall trend = kendall(points);
    BOOST_TEST(trend.s == plain_sum(points));
    std::ranges::shuffle(points, random);
    BOOST_TEST(kendall(points).s == trend.s);
    BOOST_TEST(kendall(points).variance == trend.variance);
    for (Point& point : points) point.y = -point.y;
    BOOST_TEST(kendall(points).s == -trend.s);
    BOOST_TEST(kendall(points).z == -trend.z);
  }
}

// The mean of s squared over every order in which six y can come.
double mean_square(const std::vector<double>& x, const std::vector<double>& y) {
  std::vector<std::size_t> order{0, 1, 2, 3, 4, 5};
  double sum = 0.0;
  do {
    std::vector<Point> points;
    for (std::size_t place = 0; place < x.size(); ++place) {
      points.push_back({x[place], y[order[place]]});
    }
    sum += std::pow(static_cast<double>(plain_sum(points)), 2.0);
  } while (std::ranges::next_permutation(order).found);
  return sum / 720.0;
}

// If there is no trend every order of the y is as likely, so that mean is the variance, whatever is
// tied.
BOOST_AUTO_TEST_CASE(the_variance_is_that_of_all_orders_with_ties_in_either) {
  const auto close = boost::test_tools::tolerance(1e-12);
  const std::vector<std::vector<double>> all_x{
      {1, 2, 3, 4, 5, 6}, {1, 1, 2, 3, 3, 3}, {1, 1, 2, 2, 4, 5}};
  const std::vector<std::vector<double>> all_y{{1, 2, 3, 4, 5, 6}, {1, 1, 2, 2, 2, 3}};
  for (const auto& x : all_x) {
    for (const auto& y : all_y) {
      BOOST_TEST(kendall(series(x, y)).variance == mean_square(x, y), close);
    }
  }
}

BOOST_AUTO_TEST_CASE(groups_add_their_counts_and_their_variances) {
  const std::vector<Group> groups = trend_test::washed();
  const MannKendall both = mann_kendall(groups, 0.0);
  BOOST_TEST(both.s == -20);
  BOOST_TEST(is_printed_as(both.variance, 2.0 * 16.666667, 5));
  BOOST_TEST(both.z == -19.0 / std::sqrt(both.variance), boost::test_tools::tolerance(1e-12));
  std::vector<Point> as_one = groups[0];
  as_one.insert(as_one.end(), groups[1].begin(), groups[1].end());
  BOOST_TEST(kendall(as_one).s > both.s);
}

BOOST_AUTO_TEST_CASE(neighbours_that_resemble_each_other_prove_less) {
  const MannKendall plain = kendall(trend_test::uneven_margins());
  const MannKendall related = kendall(trend_test::uneven_margins(), 0.6);
  BOOST_TEST(related.s == plain.s);
  BOOST_TEST(related.z == plain.z / 2.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(related.p > plain.p);
}

BOOST_AUTO_TEST_CASE(without_any_difference_nothing_is_shown) {
  for (const auto& points : {series(0, 1, {}), series(0, 1, {5}), series(0, 1, {5, 5, 5, 5}),
                             series({3, 3, 3}, {1, 2, 3})}) {
    const MannKendall trend = kendall(points);
    BOOST_TEST(trend.s == 0);
    BOOST_TEST(trend.z == 0.0);
    BOOST_TEST(trend.p == 1.0);
    BOOST_TEST(std::abs(trend.variance) < 1e-12);
  }
  BOOST_CHECK_THROW(kendall(series(0, 1, {1, std::nan("")})), quantity::BrokenPromise);
}

// Source: the normal table, 1.959964 and 2.575829 (common knowledge, from memory).
BOOST_AUTO_TEST_CASE(the_normal_law_is_met_as_printed) {
  BOOST_TEST(is_printed_as(two_sided_normal(0.95), 1.959964, 6));
  BOOST_TEST(is_printed_as(two_sided_normal(0.99), 2.575829, 6));
  for (const double z : {0.0, 0.3, 1.0, 2.5, 6.0}) {
    const auto close = boost::test_tools::tolerance(1e-12);
    BOOST_TEST(two_sided_normal_p(z) == std::erfc(z / std::sqrt(2.0)), close);
    BOOST_TEST(two_sided_normal_p(-z) == two_sided_normal_p(z));
  }
  BOOST_CHECK_THROW(two_sided_normal(1.0), quantity::BrokenPromise);
  BOOST_CHECK_THROW(two_sided_normal_p(std::nan("")), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
