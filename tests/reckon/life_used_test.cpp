#include "reckon/life_used.h"

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <random>

using reckon::LifeUsed;
using reckon::UsedOf;
using reckon::Wide;

BOOST_AUTO_TEST_SUITE(life_used)

BOOST_AUTO_TEST_CASE(parts_of_a_life_are_added_exactly) {  // rules 69
  const LifeUsed life({{3'000'000, 6'000'000}, {900'000, 4'500'000}});
  BOOST_TEST(life.in_ten_thousandths() == 7000);
  BOOST_TEST(life.is_exact_in_ten_thousandths());
  BOOST_TEST(life.left_of(4'500'000) == 1'350'000);
  BOOST_TEST(life.left_of(6'000'000) == 1'800'000);
}

BOOST_AUTO_TEST_CASE(what_is_left_in_the_same_share_ends_at_the_whole_life) {  // rules 89
  const LifeUsed life({{2'000'000, 5'000'000}, {8'000'000, 20'000'000}});
  BOOST_TEST(life.in_ten_thousandths() == 8000);
  BOOST_TEST(life.left_in_share(2'000'000) == 500'000);
  BOOST_TEST(life.left_in_share(8'000'000) == 2'000'000);
}

BOOST_AUTO_TEST_CASE(three_thirds_are_one_life) {
  const LifeUsed life({{1, 3}, {1, 3}, {1, 3}});
  BOOST_TEST(life.is_all());
  BOOST_TEST(!life.is_more_than_all());
  BOOST_TEST(life.left_of(1'000'000) == 0);
  BOOST_TEST(LifeUsed({{1, 3}}).in_ten_thousandths() == 3334);
  BOOST_TEST(!LifeUsed({{1, 3}}).is_exact_in_ten_thousandths());
}

BOOST_AUTO_TEST_CASE(nothing_used_leaves_the_whole) {
  BOOST_TEST(LifeUsed().is_nothing());
  BOOST_TEST(LifeUsed({{0, 7}}).left_of(7) == 7);
  BOOST_TEST(LifeUsed({{0, 7}}).left_in_share(0) == 0);
}

BOOST_AUTO_TEST_CASE(what_is_over_is_rounded_away_from_nothing) {
  const LifeUsed life({{4, 3}});
  BOOST_TEST(life.is_more_than_all());
  BOOST_TEST(life.left_of(10) == -4);  // -10/3, rounded down
  BOOST_TEST(life.left_in_share(4) == -1);
}

BOOST_AUTO_TEST_CASE(figures_without_end_are_rounded_to_the_safe_side) {
  constexpr std::int64_t most = 3'600'000'000'000'000;  // thousandths of a second in 999,999,999 h
  const std::vector<UsedOf> parts = {{most / 7 + 1, most - 1},
                                     {most / 9 + 2, most - 5},
                                     {most / 11 + 3, most - 11},
                                     {most / 13 + 4, most - 13}};
  const std::int64_t left = LifeUsed(parts).left_of(most);
  const long double exact =
      static_cast<long double>(most) * (1.0L - 1.0L / 7 - 1.0L / 9 - 1.0L / 11 - 1.0L / 13);
  BOOST_TEST(static_cast<long double>(left) < exact);
  BOOST_TEST(exact - static_cast<long double>(left) < 100.0L);
  BOOST_TEST(LifeUsed({{most, 1}}).left_of(most) < 0);
  BOOST_TEST(LifeUsed({{most, 1}}).is_more_than_all());
}

namespace {

constexpr int tries = 20'000;

// No more and no less: n of the whole fits into what is left, and n + 1 does not.
bool is_floor(std::int64_t n, std::int64_t whole, const std::vector<UsedOf>& parts) {
  Wide product = 1;
  for (const UsedOf& part : parts) product *= part.whole;
  Wide left = product;  // in parts of the product of all wholes
  for (const UsedOf& part : parts) left -= product / part.whole * part.used;
  return product * n <= left * whole && left * whole < product * (n + 1);
}

}  // namespace

BOOST_AUTO_TEST_CASE(what_is_left_is_the_largest_whole_amount_that_fits) {
  const char* given = std::getenv("TIMEWORN_SEED");
  const unsigned long seed = given == nullptr ? 20260304 : std::strtoul(given, nullptr, 10);
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937_64 engine(seed);
  const auto between = [&](std::int64_t low, std::int64_t high) {
    return std::uniform_int_distribution<std::int64_t>(low, high)(engine);
  };
  for (int i = 0; i < tries; ++i) {
    std::vector<UsedOf> parts;
    for (std::int64_t n = between(1, 4); n > 0; --n) {
      const std::int64_t whole = between(1, 1'000'000);
      parts.push_back({between(0, whole), whole});
    }
    const std::int64_t whole = between(1, 1'000'000);
    BOOST_TEST_REQUIRE(is_floor(LifeUsed(parts).left_of(whole), whole, parts));
  }
}

BOOST_AUTO_TEST_CASE(whole_counters_keep_whole_counts) {
  const logbook::Counter landings{logbook::CounterKind::landings, {}};
  const logbook::Counter cycles{logbook::CounterKind::cycles, {}};
  BOOST_TEST(reckon::in_whole_units(1'500, landings) == 1'000);
  BOOST_TEST(reckon::in_whole_units(-1'500, landings) == -2'000);
  BOOST_TEST(reckon::in_whole_units(1'500, cycles) == 1'500);
  BOOST_TEST(reckon::in_whole_units(1'500, reckon::service_clock) == 1'500);
}

BOOST_AUTO_TEST_SUITE_END()
