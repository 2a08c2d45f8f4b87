#include "document/chart/scale.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <iostream>
#include <random>

#include "document/chart/decimal.h"
#include "text/pieces.h"
#include "text/random_words.h"

namespace {

std::string words_of(const document::Scale& scale) {
  std::vector<std::string> words;
  for (const document::Tick& tick : scale.ticks) words.push_back(tick.words);
  return text::join(words, " ");
}

// Steps at 1, 2 or 5 times a power of ten: the common practice of axes. Figures worked by hand.
struct Case {
  double low, high;
  std::size_t most;
  const char* outward;
  const char* inward;
};

const Case cases[] = {
    {0, 100, 5, "0 20 40 60 80 100", "0 20 40 60 80 100"},
    {0, 100, 10, "0 10 20 30 40 50 60 70 80 90 100", "0 10 20 30 40 50 60 70 80 90 100"},
    {1200, 1300, 4, "1200 1250 1300", "1200 1250 1300"},
    {9.5, 32.3, 6, "5 10 15 20 25 30 35", "10 15 20 25 30"},
    {0.11, 0.19, 4, "0.10 0.12 0.14 0.16 0.18 0.20", "0.12 0.14 0.16 0.18"},
    {-42.3, -28.1, 3, "-45 -40 -35 -30 -25", "-40 -35 -30"},
    {-3, 4, 4, "-4 -2 0 2 4", "-2 0 2 4"},
    {0, 0.3, 3, "0.0 0.1 0.2 0.3", "0.0 0.1 0.2 0.3"},
    {1.1, 1.9, 1, "1 2", "1.5"},
    {123456789, 123456799, 5,
     "123456788 123456790 123456792 123456794 123456796 123456798 123456800",
     "123456790 123456792 123456794 123456796 123456798"},
};

}  // namespace

BOOST_AUTO_TEST_SUITE(scales)

BOOST_AUTO_TEST_CASE(decimals_are_short_and_never_minus_nothing) {
  BOOST_TEST(document::fixed(1.25, 1) == "1.2");  // IEEE 754: ties of exact halves go to even
  BOOST_TEST(document::fixed(1.35, 1) == "1.4");  // 1.35 is a little more than that as a double
  BOOST_TEST(document::fixed(-0.04, 1) == "0.0");
  BOOST_TEST(document::fixed(-0.06, 1) == "-0.1");
  BOOST_TEST(document::fixed(1e12, 0) == "1000000000000");
  BOOST_TEST(document::shortest(12.0, 1) == "12");
  BOOST_TEST(document::shortest(12.5, 2) == "12.5");
  BOOST_TEST(document::shortest(100, 0) == "100");
  BOOST_TEST(document::shortest(-0.001, 2) == "0");
  BOOST_TEST(document::scaled(15, -1) == "1.5");
  BOOST_TEST(document::scaled(-5, -2) == "-0.05");
  BOOST_TEST(document::scaled(2, 3) == "2000");
  BOOST_TEST(document::scaled(0, 3) == "0");
}

BOOST_AUTO_TEST_CASE(nothing_is_written_with_the_places_of_its_neighbours) {
  BOOST_TEST(document::scaled(0, -2) == "0.00");
}

BOOST_AUTO_TEST_CASE(plain_numbers_have_a_value_and_other_words_none) {
  BOOST_TEST(document::value_of("-12.5").value() == -12.5);
  BOOST_TEST(!document::value_of("1e5"));
  BOOST_TEST(!document::value_of(""));
}

BOOST_AUTO_TEST_CASE(ticks_are_round) {
  for (const Case& one : cases) {
    const document::Extent extent{one.low, one.high};
    BOOST_TEST(words_of(document::round_scale(extent, one.most)) == one.outward);
    BOOST_TEST(words_of(document::tight_scale(extent, one.most)) == one.inward);
  }
}

BOOST_AUTO_TEST_CASE(one_value_has_room_around_it) {
  for (const double at : {0.0, 30.0, -5.0, 1e9, -1e-12}) {
    const document::Scale scale = document::round_scale({at, at}, 5);
    BOOST_TEST(scale.low < at);
    BOOST_TEST(scale.high > at);
    BOOST_TEST(scale.ticks.size() >= 3U);
  }
}

// Over random extents: the ends hold them, neighbours stand equally far, the words are the values.
BOOST_AUTO_TEST_CASE(scales_hold_what_they_must) {
  std::mt19937_64 engine(text_test::printed_seed("scales hold what they must"));
  std::uniform_real_distribution<double> exponent(-6, 11);
  std::uniform_real_distribution<double> share(-1, 1);
  for (int round = 0; round < 20000; ++round) {
    const double size = std::pow(10.0, exponent(engine));
    const double low = size * share(engine);
    const document::Extent extent{low, low + size * std::abs(share(engine))};
    const std::size_t most = 1 + engine() % 9;
    const document::Scale outward = document::round_scale(extent, most);
    const document::Scale inward = document::tight_scale(extent, most);
    const double hair = 1e-7 * size;
    BOOST_REQUIRE(outward.low <= extent.low + hair && outward.high >= extent.high - hair);
    BOOST_REQUIRE(outward.ticks.size() <= most + 3 && outward.ticks.size() >= 2);
    BOOST_REQUIRE(!inward.ticks.empty());
    for (const document::Scale* scale : {&outward, &inward}) {
      BOOST_REQUIRE(scale->low < scale->high);
      for (const document::Tick& tick : scale->ticks) {
        BOOST_REQUIRE(tick.at >= scale->low - hair && tick.at <= scale->high + hair);
        BOOST_REQUIRE_EQUAL(document::value_of(tick.words).value(), tick.at);
      }
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
