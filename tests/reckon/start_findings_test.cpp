// A start beside what is stated for its model. S58: ../shared/cases/records.md.

#include "reckon/start_findings.h"

#include <boost/test/unit_test.hpp>

#include "quantity/counts.h"

using logbook::Band;
using logbook::Started;
using quantity::Decimal;
using quantity::Temperature;
using reckon::StartJudged;
using reckon::StartMeasure;

BOOST_AUTO_TEST_SUITE(start_findings)

namespace {

Decimal thousandths(std::int64_t count) { return Decimal::of(count); }
Temperature celsius(std::int64_t degrees) { return Temperature::of(10 * degrees); }

// Battery at least 24.5 V, peak at most 800 C, idle within 30 s, generator 27.5 to 28.5 V.
logbook::StartCheck check() {
  logbook::StartCheck check;
  check.battery_at_least = thousandths(24500);
  check.peak_at_most = celsius(800);
  check.idle_within = 30;
  check.generator = logbook::VoltRange{thousandths(27500), thousandths(28500)};
  return check;
}

Started started(std::int64_t battery, std::int64_t peak, std::int64_t idle,
                std::int64_t generator) {
  Started started;
  started.battery_volts = thousandths(battery);
  started.peak = celsius(peak);
  started.idle_seconds = idle;
  started.generator_volts = thousandths(generator);
  return started;
}

StartJudged against_check(const Started& started) {
  const logbook::StartCheck rule = check();
  StartJudged judged;
  reckon::judge(started, {{{{}, &rule}}, {}}, judged);
  return judged;
}

// 810 C for 10 s, 870 C for 0 s.
StartJudged against_limits(const Started& started) {
  logbook::StartLimit rule;
  rule.limit = Band{celsius(810), 10};
  rule.also = {Band{celsius(870), 0}};
  StartJudged judged;
  reckon::judge(started, {{}, {{{}, &rule}}}, judged);
  return judged;
}

Started peaked(std::int64_t peak, std::vector<Band> bands) {
  Started started;
  started.peak = celsius(peak);
  started.bands = std::move(bands);
  return started;
}

}  // namespace

BOOST_AUTO_TEST_CASE(four_of_four_outside_as_in_S58) {
  const StartJudged judged = against_check(started(24100, 812, 34, 28700));
  BOOST_REQUIRE(judged.findings.size() == 4U);
  BOOST_CHECK(judged.findings[0].measure == StartMeasure::battery && judged.findings[0].is_below);
  BOOST_TEST(quantity::say(judged.findings[0].by) == "0.4");
  BOOST_CHECK(judged.findings[1].measure == StartMeasure::peak);
  BOOST_TEST(quantity::say(judged.findings[1].by) == "12");
  BOOST_CHECK(judged.findings[2].measure == StartMeasure::idle);
  BOOST_TEST(quantity::say(judged.findings[2].by) == "4");
  BOOST_CHECK(judged.findings[3].measure == StartMeasure::generator);
  BOOST_TEST(quantity::say(judged.findings[3].by) == "0.2");
  BOOST_TEST(!judged.is_past_a_limit());
}

BOOST_AUTO_TEST_CASE(the_ends_of_a_range_are_inside) {
  BOOST_TEST(against_check(started(24500, 800, 30, 27500)).findings.empty());
  BOOST_TEST(against_check(started(24500, 800, 30, 28500)).findings.empty());
  BOOST_TEST(against_check(started(24499, 801, 31, 28501)).findings.size() == 4U);
}

BOOST_AUTO_TEST_CASE(what_was_not_read_is_not_judged) {
  const StartJudged judged = against_check(Started{});
  BOOST_TEST(judged.findings.empty());
  BOOST_TEST(judged.has_check);
}

BOOST_AUTO_TEST_CASE(a_limit_is_passed_by_more_than_it) {
  BOOST_TEST(against_limits(peaked(870, {Band{celsius(810), 10}})).findings.empty());
  BOOST_TEST(against_limits(peaked(871, {Band{celsius(810), 10}})).findings.size() == 1U);
  const StartJudged longer = against_limits(peaked(830, {Band{celsius(810), 11}}));
  BOOST_REQUIRE(longer.findings.size() == 1U);
  BOOST_CHECK(longer.findings[0].measure == StartMeasure::time_above);
  BOOST_TEST(quantity::say(longer.findings[0].by) == "1");
  BOOST_TEST(longer.is_past_a_limit());
}

BOOST_AUTO_TEST_CASE(a_peak_below_the_temperature_needs_no_seconds) {
  const StartJudged judged = against_limits(peaked(810, {}));
  BOOST_TEST(judged.findings.empty());
  BOOST_TEST(judged.untold.empty());
}

BOOST_AUTO_TEST_CASE(seconds_above_a_lower_temperature_bound_those_above_a_higher_one) {
  // 8 s above 790 C are at most 8 s above 810 C; 12 s above 790 C tell nothing of 810 C.
  BOOST_TEST(against_limits(peaked(830, {Band{celsius(790), 8}})).untold.empty());
  BOOST_TEST(against_limits(peaked(830, {Band{celsius(790), 12}})).untold.size() == 1U);
  BOOST_TEST(against_limits(peaked(830, {Band{celsius(790), 12}})).findings.empty());
}

BOOST_AUTO_TEST_CASE(without_peak_or_seconds_the_limits_cannot_be_told) {
  BOOST_TEST(against_limits(peaked(830, {})).untold.size() == 1U);
  BOOST_TEST(against_limits(Started{}).untold.size() == 2U);
}

BOOST_AUTO_TEST_SUITE_END()
