// In which order a fleet is looked at, and what is a warning.

#include "reckon/trend/worst_first.h"

#include <boost/test/unit_test.hpp>

#include "reckon/trend/margins.h"

using reckon::trend::Direction;
using reckon::trend::Evidence;
using reckon::trend::Grade;
using reckon::trend::Series;
using reckon::trend::Worry;
using reckon::trend::worry_of;

BOOST_AUTO_TEST_SUITE(order_of_worry)

namespace {

quantity::Margin celsius(std::int64_t degrees) { return quantity::Margin::of(10 * degrees); }

Series series(const std::string& serial, std::int64_t now) {
  Series series;
  series.engine.serial.text = serial;
  series.floor = celsius(10);
  series.segments.emplace_back();
  series.segments.back().now = celsius(now);
  series.segments.back().last = reckon::trend::LastReading{{}, {}, celsius(now), 0};
  return series;
}

Series falling(const std::string& serial, std::int64_t now, Grade grade) {
  Series one = series(serial, now);
  one.segments.back().finding.grade = grade;
  one.segments.back().finding.evidence = Evidence{};
  one.segments.back().finding.evidence->direction = Direction::falling;
  return one;
}

Series reaching(const std::string& serial, std::int64_t now, std::int64_t early) {
  Series one = falling(serial, now, Grade::clear);
  one.segments.back().reach = reckon::trend::ReachText{early, 2 * early, 0, {}};
  return one;
}

std::string order(std::vector<Series> all) {
  reckon::trend::worst_first(all);
  std::string text;
  for (const Series& one : all) text += one.engine.serial.text;
  return text;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_worst_comes_first_whatever_order_they_came_in) {
  Series hot = series("H", 30);
  hot.segments.back().last->margin = celsius(-5);
  Series without_a_line = series("N", 0);
  without_a_line.segments.back().now.reset();
  const std::vector<Series> all = {without_a_line,
                                   series("S", 20),
                                   falling("W", 15, Grade::weak),
                                   falling("C", 25, Grade::clear),
                                   reaching("L", 30, 200),
                                   reaching("E", 40, 50),
                                   series("F", 9),
                                   hot};
  BOOST_TEST(order(all) == "HFELCWSN");
  BOOST_TEST(order({all.rbegin(), all.rend()}) == "HFELCWSN");
}

BOOST_AUTO_TEST_CASE(a_steep_slope_of_few_readings_is_not_worse_than_an_early_limit) {
  BOOST_TEST(order({falling("steep", 12, Grade::weak), reaching("slow", 40, 900)}) == "slowsteep");
}

BOOST_AUTO_TEST_CASE(what_is_a_warning) {
  BOOST_CHECK(worry_of(series("S", 20)) == Worry::none);
  BOOST_CHECK(worry_of(series("F", 10)) == Worry::at_the_floor);  // on the floor is at it
  BOOST_CHECK(worry_of(series("F", 11)) == Worry::none);
  BOOST_CHECK(worry_of(falling("W", 20, Grade::weak)) == Worry::none);
  BOOST_CHECK(worry_of(falling("C", 20, Grade::clear)) == Worry::falling);
  BOOST_CHECK(worry_of(reaching("Z", 20, 0)) == Worry::at_the_floor);
  Series hot = series("H", 30);
  hot.segments.back().last->margin = celsius(-1);
  BOOST_CHECK(worry_of(hot) == Worry::past_what_is_allowed);
}

BOOST_AUTO_TEST_SUITE_END()
