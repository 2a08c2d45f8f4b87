// From readings on record to segments, levels and flags.

#include "reckon/trend/margins.h"

#include <boost/test/unit_test.hpp>

#include "support/entries.h"

using logbook::CheckKind;
using reckon::trend::Beginning;
using reckon::trend::Flag;
using reckon::trend::Segment;
using reckon::trend::Series;

BOOST_AUTO_TEST_SUITE(margins)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine engine = support::engine("TS-40", "E-1001");

quantity::Temperature celsius(std::int64_t degrees) {
  return quantity::Temperature::of(10 * degrees);
}

logbook::TemperatureLimit limit(std::int64_t degrees) {
  logbook::TemperatureLimit limit;
  limit.model.name = engine.model;
  limit.limit = celsius(degrees);
  return limit;
}

logbook::Reading cruise(std::int64_t degrees) {
  logbook::Reading reading;
  reading.aircraft = kit;
  reading.place = support::place("engine 1");
  reading.temperature = celsius(degrees);
  return reading;
}

logbook::EngineEvent event(logbook::EventKind kind) {
  logbook::EngineEvent event;
  event.engine_thing = engine;
  event.event = kind;
  return event;
}

support::Book begun(bool with_limit = true) {
  support::Book book;
  book.say("2026-01-01", support::forward(kit, "1000.0"));
  book.say("2026-01-01", support::forward(engine, {support::had_hours("100.0")}));
  book.say("2026-01-01", support::fitted(engine, {kit, "engine 1", "1000.0"}));
  if (with_limit) book.say("2026-01-01", limit(720));
  return book;
}

// A flight of ten hours, then a reading.
void fly_and_read(support::Book& book, const std::string& day, std::int64_t degrees) {
  book.say(day, support::flew(kit, "10.0", {support::starts(1)}));
  book.say(day, cruise(degrees));
}

std::vector<Series> series_of(const support::Book& book, const std::string& day = "2026-03-31") {
  const reckon::Standing standing = reckon::standing(book.entries(), support::day(day));
  const reckon::Histories histories(standing, support::day(day), reckon::Ambiguous::early);
  return reckon::trend::margin_series(histories, standing);
}

Series only_series(const support::Book& book) {
  auto all = series_of(book);
  BOOST_REQUIRE(all.size() == 1U);
  return all.front();
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_margin_is_what_is_allowed_less_what_was_seen) {
  support::Book book = begun();
  fly_and_read(book, "2026-01-02", 690);
  const Series series = only_series(book);
  BOOST_REQUIRE(series.segments.size() == 1U);
  const auto& point = series.segments.front().points.front();
  BOOST_TEST(quantity::say(*point.margin) == "30");
  BOOST_TEST(point.hours == 110.0);
}

BOOST_AUTO_TEST_CASE(a_wash_shifts_the_level_and_begins_no_segment) {
  support::Book book = begun();
  fly_and_read(book, "2026-01-02", 690);
  book.say("2026-01-03", event(logbook::EventKind::washed));
  fly_and_read(book, "2026-01-04", 680);
  const Series series = only_series(book);
  BOOST_REQUIRE(series.segments.size() == 1U);
  const Segment& segment = series.segments.front();
  BOOST_REQUIRE(segment.washes.size() == 1U);
  BOOST_TEST(segment.washes.front().hours.value() == 110.0);
  BOOST_TEST(segment.points[0].level == 0U);
  BOOST_TEST(segment.points[1].level == 1U);
}

BOOST_AUTO_TEST_CASE(all_other_work_begins_a_segment) {
  support::Book book = begun();
  fly_and_read(book, "2026-01-02", 690);
  book.say("2026-01-03", event(logbook::EventKind::washed));
  book.say("2026-01-03", event(logbook::EventKind::hot_section_done));
  fly_and_read(book, "2026-01-04", 680);
  const Series series = only_series(book);
  BOOST_REQUIRE(series.segments.size() == 2U);
  BOOST_CHECK(series.segments[1].beginning == Beginning::hot_section);
  BOOST_TEST(series.segments[1].washes.empty());  // there is nothing to measure it against
}

BOOST_AUTO_TEST_CASE(what_each_of_two_washes_gave_back_cannot_be_told_apart) {
  support::Book book = begun();
  for (int i = 2; i < 10; ++i) fly_and_read(book, "2026-01-0" + std::to_string(i), 690 + i);
  book.say("2026-01-20", event(logbook::EventKind::washed));
  book.say("2026-01-21", event(logbook::EventKind::washed));
  for (int i = 2; i < 10; ++i) fly_and_read(book, "2026-02-0" + std::to_string(i), 690 + i);
  const Segment segment = only_series(book).segments.back();
  BOOST_REQUIRE(segment.washes.size() == 2U);
  BOOST_TEST(!segment.washes[0].figures.has_value());
  BOOST_TEST(!segment.washes[1].figures.has_value());
  BOOST_REQUIRE(segment.slope.has_value());  // and yet there is a line of two levels
  BOOST_TEST(quantity::say(segment.slope->per_100_hours) == "-10");
}

BOOST_AUTO_TEST_CASE(another_limit_begins_a_segment) {
  support::Book book = begun();
  fly_and_read(book, "2026-01-02", 690);
  book.say("2026-01-03", limit(730));
  fly_and_read(book, "2026-01-04", 690);
  const Series series = only_series(book);
  BOOST_REQUIRE(series.segments.size() == 2U);
  BOOST_CHECK(series.segments[1].beginning == Beginning::limit_changed);
  BOOST_TEST(quantity::say(*series.segments[1].points.front().margin) == "40");
}

BOOST_AUTO_TEST_CASE(a_reading_without_a_limit_is_kept_with_its_reason) {
  support::Book book = begun(false);
  fly_and_read(book, "2026-01-02", 690);
  const auto point = only_series(book).segments.front().points.front();
  BOOST_TEST(!point.margin.has_value());
  BOOST_CHECK(point.flag == Flag::no_limit);
}

BOOST_AUTO_TEST_CASE(readings_must_be_steady_as_long_as_the_model_asks) {
  support::Book book = begun();
  logbook::TrendSettings settings;
  settings.model.name = engine.model;
  settings.steady_at_least = 3;
  book.say("2026-01-01", settings);
  for (const std::optional<std::int64_t> minutes :
       {std::optional<std::int64_t>(), std::optional<std::int64_t>(2),
        std::optional<std::int64_t>(3)}) {
    logbook::Reading reading = cruise(690);
    reading.steady_minutes = minutes;
    book.say("2026-01-02", reading);
  }
  const auto points = only_series(book).segments.front().points;
  BOOST_CHECK(points[0].flag == Flag::steady_not_said);
  BOOST_CHECK(points[1].flag == Flag::not_steady);
  BOOST_CHECK(points[2].flag == Flag::counted);
  BOOST_TEST(points[1].margin.has_value());  // kept, and shown
}

BOOST_AUTO_TEST_CASE(checks_of_another_kind_never_share_a_series) {
  support::Book book = begun();
  fly_and_read(book, "2026-01-02", 690);
  logbook::Reading idle = cruise(540);
  idle.check = CheckKind::idle;
  book.say("2026-01-02", idle);
  BOOST_TEST(series_of(book).size() == 2U);
}

BOOST_AUTO_TEST_SUITE_END()
