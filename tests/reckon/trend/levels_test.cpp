// One slope and several levels, against a practice case, against the plain line and against a
// second way.
#include "reckon/trend/levels.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "quantity/expect.h"
#include "reckon/trend/published.h"
#include "reckon/trend/second_way.h"
#include "reckon/trend/student.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::line_of;
using trend_test::random_groups;
using trend_test::random_series;
using trend_test::seeded;
using trend_test::series;

LevelledLine levelled(const std::vector<Group>& groups) {
  return std::get<LevelledLine>(fit_levels(groups));
}

bool is_near(double figure, long double expected, double size) {
  return std::abs(static_cast<long double>(figure) - expected) <= 1e-9L * size;
}

// Place for place, to the last digit.
void check_same(const Line& one, const Line& other) {
  BOOST_TEST(one.n == other.n);
  BOOST_TEST(one.x_mean == other.x_mean);
  BOOST_TEST(one.y_mean == other.y_mean);
  BOOST_TEST(one.sxx == other.sxx);
  BOOST_TEST(one.syy == other.syy);
  BOOST_TEST(one.slope == other.slope);
  BOOST_TEST(one.intercept == other.intercept);
  BOOST_TEST(one.residual_sum_of_squares == other.residual_sum_of_squares);
  BOOST_TEST(one.scatter == other.scatter);
  BOOST_TEST(one.slope_error == other.slope_error);
  BOOST_TEST(one.intercept_error == other.intercept_error);
  BOOST_TEST((one.r2 == other.r2));
  BOOST_TEST(one.degrees_of_freedom == other.degrees_of_freedom);
}

// Gains and bands of the newest level, by long double QR with a column for each level.
struct SecondWay {
  explicit SecondWay(const std::vector<Group>& groups)
      : fit(trend_test::qr_levels(groups)), levels(groups.size()) {
    const auto freedom = static_cast<long double>(points_in(groups) - levels - 1);
    scatter = std::sqrt(fit.residual_sum_of_squares / freedom);
  }
  std::vector<long double> nothing() const { return std::vector<long double>(levels + 1, 0.0L); }
  long double error(const std::vector<long double>& of) const {
    return scatter * std::sqrt(fit.variance_factor(of));
  }
  trend_test::QrFit fit;
  std::size_t levels;
  long double scatter = 0.0L;
};

void check_gains(const LevelledLine& line, const SecondWay& second, double t) {
  const std::vector<Gain> all = gains(line, {0.9, 0.2});
  BOOST_REQUIRE(all.size() == second.levels - 1);
  for (std::size_t place = 0; place < all.size(); ++place) {
    std::vector<long double> of = second.nothing();
    of[place] = -1.0L;
    of[place + 1] = 1.0L;
    const auto gain = second.fit.coefficients[place + 1] - second.fit.coefficients[place];
    const long double error = second.error(of);
    BOOST_TEST(is_near(all[place].gain, gain, 100.0));
    BOOST_TEST(is_near(all[place].error, error, 100.0));
    BOOST_TEST(is_near(all[place].between.low, gain - t * error, 100.0));
    BOOST_TEST(is_near(all[place].between.high, gain + t * error, 100.0));
  }
}

void check_bands(const Line& newest, const SecondWay& second, double t) {
  const double x = newest.x_mean + 200.0;
  std::vector<long double> of = second.nothing();
  of[second.levels - 1] = 1.0L;
  of[second.levels] = static_cast<long double>(x);
  const auto slope = second.fit.coefficients[second.levels];
  const auto at_x = second.fit.coefficients[second.levels - 1] + slope * of[second.levels];
  const long double mean = second.error(of);
  const long double reading = std::sqrt(mean * mean + second.scatter * second.scatter);
  BOOST_TEST(is_near(value_at(newest, x), at_x, 100.0));
  BOOST_TEST(is_near(mean_band(newest, x, {0.9, 0.2}).low, at_x - t * mean, 100.0));
  BOOST_TEST(is_near(mean_band(newest, x, {0.9, 0.2}).high, at_x + t * mean, 100.0));
  BOOST_TEST(is_near(new_reading_band(newest, x, {0.9, 0.2}).low, at_x - t * reading, 100.0));
  BOOST_TEST(is_near(new_reading_band(newest, x, {0.9, 0.2}).high, at_x + t * reading, 100.0));
}

BOOST_AUTO_TEST_SUITE(levels)

// Practice cases B3 and S62: 28 C at first, -0.10 C/h, and the wash gave 11 C back.
BOOST_AUTO_TEST_CASE(a_wash_between_two_falls_is_told_from_the_slope) {
  const LevelledLine line = levelled(trend_test::washed());
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(line.n == 10u);
  BOOST_TEST(line.levels[0].intercept == 28.0, close);
  BOOST_TEST(line.newest().intercept == 39.0, close);
  BOOST_TEST(line.newest().slope == -0.10, close);
  BOOST_TEST(line.newest().degrees_of_freedom == 7u);
  BOOST_TEST(std::abs(line.newest().scatter) < 1e-12);
  const std::vector<Gain> all = gains(line, {0.95, 0.0});
  BOOST_REQUIRE(all.size() == 1u);
  BOOST_TEST(all[0].gain == 11.0, close);
  BOOST_TEST(std::abs(all[0].error) < 1e-12);
  BOOST_TEST(value_at(line.newest(), 290.0) == 10.0, close);
}

BOOST_AUTO_TEST_CASE(one_group_is_the_plain_line_to_the_last_digit) {
  std::mt19937_64 random = seeded("one level");
  for (int round = 0; round < 300; ++round) {
    const std::vector<Group> groups{random_series(random)};
    const LevelledLine line = levelled(groups);
    check_same(line.newest(), line_of(groups[0]));
    BOOST_TEST(gains(line, {0.95, 0.2}).empty());
    BOOST_TEST(deciding_readings(groups, line, {0.95, 0.2}) ==
               deciding_readings(groups[0], line.newest(), {0.95, 0.2}));
  }
}

BOOST_AUTO_TEST_CASE(a_second_way_gives_the_same_slope_levels_gains_and_bands) {
  std::mt19937_64 random = seeded("levels by a second way");
  for (int round = 0; round < 200; ++round) {
    const std::vector<Group> groups = random_groups(random, 2 + round % 3);
    const LevelledLine line = levelled(groups);
    const SecondWay second(groups);
    const Line& newest = line.newest();
    const double t =
        two_sided_t(0.9, static_cast<double>(newest.degrees_of_freedom)) * std::sqrt(1.5);
    std::vector<long double> of = second.nothing();
    of.back() = 1.0L;
    BOOST_TEST(is_near(newest.slope, second.fit.coefficients.back(), 1.0));
    BOOST_TEST(is_near(newest.slope_error, second.error(of), 1.0));
    BOOST_TEST(is_near(newest.scatter, second.scatter, 1.0));
    for (std::size_t place = 0; place < groups.size(); ++place) {
      BOOST_TEST(is_near(line.levels[place].intercept, second.fit.coefficients[place], 1e3));
    }
    check_gains(line, second, t);
    check_bands(newest, second, t);
  }
}

BOOST_AUTO_TEST_CASE(without_a_reading_it_is_the_fit_of_the_rest) {
  std::mt19937_64 random = seeded("levels without");
  for (int round = 0; round < 40; ++round) {
    const std::vector<Group> groups = random_groups(random, 2);
    const LevelledLine line = levelled(groups);
    for (std::size_t place = 0; place < groups[1].size(); ++place) {
      std::vector<Group> rest = groups;
      rest[1].erase(rest[1].begin() + static_cast<std::ptrdiff_t>(place));
      const Line expected = levelled(rest).newest();
      const Line found = std::get<Line>(without(line.newest(), groups[1][place]));
      BOOST_TEST(found.n == expected.n);
      BOOST_TEST(found.degrees_of_freedom == expected.degrees_of_freedom);
      BOOST_TEST(std::abs(found.slope - expected.slope) < 1e-9);
      BOOST_TEST(std::abs(found.slope_error - expected.slope_error) < 1e-8);
      BOOST_TEST(std::abs(found.intercept - expected.intercept) < 1e-6);
    }
  }
}

BOOST_AUTO_TEST_CASE(deciding_readings_are_those_a_new_fit_of_all_levels_names) {
  std::mt19937_64 random = seeded("deciding in levels");
  std::size_t named = 0;
  for (int round = 0; round < 150; ++round) {
    const std::vector<Group> groups = random_groups(random, 2);
    const LevelledLine line = levelled(groups);
    const Certainty certainty{0.95, 0.2};
    const auto shown = direction_shown(line.newest(), certainty);
    std::vector<std::size_t> expected;
    for (std::size_t place = 0; place < points_in(groups); ++place) {
      std::vector<Group> rest = groups;
      const std::size_t group = place < groups[0].size() ? 0 : 1;
      const std::size_t within = group == 0 ? place : place - groups[0].size();
      rest[group].erase(rest[group].begin() + static_cast<std::ptrdiff_t>(within));
      if (direction_shown(levelled(rest).newest(), certainty) != shown) expected.push_back(place);
    }
    named += expected.size();
    BOOST_TEST(deciding_readings(groups, line, certainty) == expected);
  }
  BOOST_TEST(named > 0u);
}

// The only reading since a wash knows the level and nothing of the slope.
BOOST_AUTO_TEST_CASE(a_group_of_one_reading_changes_neither_slope_nor_scatter) {
  const auto before = series(0, 25, {30, 29, 29, 27, 26, 26, 24, 23});
  const std::vector<Group> groups{before, {{200.0, 31.0}}};
  const LevelledLine line = levelled(groups);
  const Line alone = line_of(before);
  BOOST_TEST(line.newest().slope == alone.slope);
  BOOST_TEST(line.newest().scatter == alone.scatter);
  BOOST_TEST(line.newest().degrees_of_freedom == alone.degrees_of_freedom);
  BOOST_TEST(value_at(line.newest(), 200.0) == 31.0);
  const Gain gain = gains(line, {0.95, 0.0}).at(0);
  BOOST_TEST(gain.gain == 31.0 - value_at(alone, 200.0), boost::test_tools::tolerance(1e-12));
  BOOST_TEST(gain.error == alone.scatter * std::sqrt(1.0 + leverage(alone, 200.0)),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::get<Line>(without(line.newest(), groups[1][0])).slope == alone.slope);
  BOOST_TEST(deciding_readings(groups, line, {0.95, 0.0}).empty());
}

BOOST_AUTO_TEST_CASE(the_levels_go_along_when_readings_are_shuffled_shifted_and_scaled) {
  std::mt19937_64 random = seeded("levels moved");
  for (int round = 0; round < 100; ++round) {
    std::vector<Group> groups = random_groups(random, 3);
    const LevelledLine line = levelled(groups);
    const std::vector<Gain> before = gains(line, {0.95, 0.2});
    for (Group& group : groups) {
      std::ranges::shuffle(group, random);
      for (Point& point : group) point = {60.0 * point.x + 500.0, 1.8 * point.y - 7.0};
    }
    const LevelledLine other = levelled(groups);
    BOOST_TEST(
        is_near(other.newest().slope, static_cast<long double>(line.newest().slope) * 0.03L, 1.0));
    const std::vector<Gain> after = gains(other, {0.95, 0.2});
    for (std::size_t place = 0; place < before.size(); ++place) {
      BOOST_TEST(
          is_near(after[place].gain, static_cast<long double>(before[place].gain) * 1.8L, 100.0));
      BOOST_TEST(
          is_near(after[place].error, static_cast<long double>(before[place].error) * 1.8L, 100.0));
    }
  }
}

BOOST_AUTO_TEST_CASE(too_few_readings_and_no_spread_are_refused) {
  const std::vector<Group> few{series(0, 10, {30, 29}), {{30.0, 35.0}}};
  BOOST_TEST((std::get<Refusal>(fit_levels(few)) == Refusal::fewer_than_three_points));
  const std::vector<Group> enough{series(0, 10, {30, 29, 27}), {{30.0, 35.0}}};
  BOOST_TEST(std::holds_alternative<LevelledLine>(fit_levels(enough)));
  const std::vector<Group> at_once{series({5, 5, 5}, {1, 2, 3}), series({9, 9}, {4, 5})};
  BOOST_TEST((std::get<Refusal>(fit_levels(at_once)) == Refusal::no_spread_in_x));
  const std::vector<Group> hollow{series(0, 10, {30, 29, 27}), {}};
  BOOST_CHECK_THROW(fit_levels(hollow), quantity::BrokenPromise);
  const std::vector<Group> bad{series(0, 10, {30, std::nan(""), 27})};
  BOOST_CHECK_THROW(fit_levels(bad), quantity::BrokenPromise);
}

// The gain is right on the mean, and its 95 % interval holds the truth so often. Fixed seed; 2000
// engines, bound by four standard errors of that share.
BOOST_AUTO_TEST_CASE(the_gain_of_a_wash_is_unbiased_and_its_interval_holds) {
  std::mt19937_64 random(20260514);
  std::normal_distribution<double> scatter(0.0, 3.0);
  constexpr int engines = 2000;
  double sum = 0.0;
  int held = 0;
  for (int engine = 0; engine < engines; ++engine) {
    std::vector<Group> groups(2);
    for (int place = 0; place < 24; ++place) {
      const double x = 5.0 * place;
      const bool is_after = place >= 10;
      const double y = 40.0 - 0.03 * x + (is_after ? 6.0 : 0.0) + scatter(random);
      groups[is_after ? 1 : 0].push_back({x, y});
    }
    const Gain gain = gains(levelled(groups), {0.95, 0.0}).at(0);
    sum += gain.gain;
    held += gain.between.low <= 6.0 && 6.0 <= gain.between.high ? 1 : 0;
  }
  // One engine's gain has a standard error of about 2.5 C.
  BOOST_TEST(std::abs(sum / engines - 6.0) < 4.0 * 2.5 / std::sqrt(2000.0));
  BOOST_TEST(std::abs(static_cast<double>(held) / engines - 0.95) < 0.02);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
