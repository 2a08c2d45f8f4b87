// Readings that are kept and left out, and why; readings of no engine; a floor whose hours nobody
// knows. Source: trend.md, "Series and readings" (outside the grid or in a hole no value; a reading
// that fails is kept, shown, flagged with its reason and left out of the line) and "Grades" (no
// single reading carries the line).
#include <boost/test/unit_test.hpp>

#include "reckon/trend/margins.h"
#include "support/entries.h"

using logbook::TorqueUnit;
using quantity::Decimal;
using reckon::trend::Flag;
using reckon::trend::MarginPoint;
using reckon::trend::Segment;
using reckon::trend::Series;

BOOST_AUTO_TEST_SUITE(margins_rare)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine engine = support::engine("TS-40", "E-1001");

quantity::Temperature celsius(std::int64_t degrees) {
  return quantity::Temperature::of(10 * degrees);
}
logbook::Torque torque(std::int64_t whole, TorqueUnit unit = TorqueUnit::percent) {
  return {Decimal::of(1000 * whole), unit};
}
logbook::ChartRow row(std::int64_t altitude, std::int64_t air) {
  logbook::ChartRow fact;
  fact.model.name = engine.model;
  fact.chart = "C1";
  fact.altitude_feet = altitude;
  fact.outside_air = celsius(air);
  fact.allows = {{celsius(650), torque(60)}, {celsius(690), torque(70)}};
  return fact;
}
logbook::TemperatureLimit limit(std::int64_t degrees) {
  logbook::TemperatureLimit fact;
  fact.model.name = engine.model;
  fact.limit = celsius(degrees);
  return fact;
}
// At 65 % and 2000 ft and 10 C the chart allows 670 C.
logbook::Reading cruise() {
  logbook::Reading reading;
  reading.aircraft = kit;
  reading.place = {"engine 1"};
  reading.pressure_altitude_feet = 2000;
  reading.outside_air = celsius(10);
  reading.torque = torque(65);
  reading.temperature = celsius(640);
  return reading;
}
support::Book begun(bool are_hours_known = true) {
  support::Book book;
  book.say("2026-01-01", support::forward(kit, "1000.0"));
  const auto with =
      are_hours_known ? std::vector{support::had_hours("100.0")} : std::vector<logbook::Had>{};
  book.say("2026-01-01", support::fitted(engine, {kit, "engine 1", "1000.0"}, with));
  return book;
}
support::Book with_chart() {
  support::Book book = begun();
  for (const std::int64_t altitude : {2000, 4000}) {
    for (const std::int64_t air : {0, 10}) book.say("2026-01-01", row(altitude, air));
  }
  return book;
}
std::vector<Series> series_of(const support::Book& book) {
  const auto today = support::day("2026-03-31");
  const reckon::Standing standing = reckon::standing(book.entries(), today);
  const reckon::Histories histories(standing, today, reckon::Ambiguous::early);
  return reckon::trend::margin_series(histories, standing);
}
MarginPoint point_of(support::Book book, const logbook::Reading& reading) {
  book.say("2026-01-02", reading);
  return series_of(book).at(0).segments.at(0).points.at(0);
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_chart_wants_each_of_its_three_figures) {
  const support::Book book = with_chart();
  BOOST_TEST(quantity::say(point_of(book, cruise()).margin.value()) == "30");
  auto reading = cruise();
  reading.torque.reset();
  BOOST_CHECK(point_of(book, reading).flag == Flag::chart_wants_more);
  reading = cruise();
  reading.pressure_altitude_feet.reset();
  BOOST_CHECK(point_of(book, reading).flag == Flag::chart_wants_more);
  reading = cruise();
  reading.outside_air.reset();
  BOOST_CHECK(point_of(book, reading).flag == Flag::chart_wants_more);
  reading = cruise();
  reading.torque = torque(65, TorqueUnit::psi);
  BOOST_CHECK(point_of(book, reading).flag == Flag::torque_unit);
  reading = cruise();
  reading.temperature.reset();
  BOOST_CHECK(point_of(book, reading).flag == Flag::no_temperature);
}

BOOST_AUTO_TEST_CASE(outside_a_chart_there_is_no_margin) {
  auto reading = cruise();
  reading.torque = torque(75);
  const MarginPoint point = point_of(with_chart(), reading);
  BOOST_CHECK(point.flag == Flag::outside_chart);
  BOOST_CHECK(!point.margin);
  BOOST_REQUIRE_EQUAL(point.out.size(), 1U);
  BOOST_CHECK(point.out.front().figure == reckon::trend::ChartFigure::torque);
}

BOOST_AUTO_TEST_CASE(bleed_and_anti_ice_leave_a_reading_out) {
  for (const bool is_bleed : {true, false}) {
    auto reading = cruise();
    (is_bleed ? reading.bleed : reading.anti_ice) = logbook::Switch::on;
    const MarginPoint point = point_of(with_chart(), reading);
    BOOST_CHECK(point.flag == Flag::bleed_on);
    BOOST_CHECK(point.margin.has_value());  // kept, and shown
  }
  auto off = cruise();
  off.bleed = off.anti_ice = logbook::Switch::off;
  BOOST_CHECK(point_of(with_chart(), off).flag == Flag::counted);
}

BOOST_AUTO_TEST_CASE(a_model_that_asks_for_no_minutes_counts_every_reading) {
  support::Book book = with_chart();
  logbook::TrendSettings settings;
  settings.model.name = engine.model;
  settings.steady_at_least = 0;
  book.say("2026-01-01", settings);
  BOOST_CHECK(point_of(book, cruise()).flag == Flag::counted);
}

BOOST_AUTO_TEST_CASE(corrected_figures_want_air_that_there_is) {
  auto reading = cruise();
  reading.gas_generator_percent = Decimal::of(96'100);
  reading.fuel = logbook::FuelFlow{Decimal::of(210'000), logbook::FuelUnit::pounds_an_hour};
  const auto with = point_of(with_chart(), reading).corrected;
  BOOST_CHECK(with.temperature && with.gas_generator && with.fuel);
  reading.temperature.reset();
  const auto cold = point_of(with_chart(), reading).corrected;
  BOOST_CHECK(!cold.temperature && cold.gas_generator && cold.fuel);
  reading.pressure_altitude_feet = 90'000;  // above the standard atmosphere that is worked with
  const auto high = point_of(with_chart(), reading).corrected;
  BOOST_CHECK(!high.temperature && !high.gas_generator && !high.fuel);
}

BOOST_AUTO_TEST_CASE(a_reading_in_a_place_without_an_engine_is_told_and_counted_nowhere) {
  support::Book book = with_chart();
  book.say("2026-01-02", cruise());
  auto elsewhere = cruise();
  elsewhere.place = {"engine 2"};
  const auto entry = book.say("2026-01-02", elsewhere);
  const auto today = support::day("2026-03-31");
  const reckon::Standing standing = reckon::standing(book.entries(), today);
  const reckon::Histories histories(standing, today, reckon::Ambiguous::early);
  BOOST_CHECK(reckon::trend::readings_of_no_engine(histories, standing) == std::vector{entry});
  BOOST_TEST(reckon::trend::margin_series(histories, standing).size() == 1U);
  BOOST_TEST(reckon::trend::margin_series(histories, standing, {engine}).size() == 1U);
  const auto other = support::engine("TS-40", "E-2");
  BOOST_TEST(reckon::trend::margin_series(histories, standing, {other}).empty());
}

BOOST_AUTO_TEST_CASE(a_serial_that_was_written_names_the_engine_if_only_one_has_it) {
  support::Book book = with_chart();
  auto by_serial = cruise();
  by_serial.place = {"engine 2"};
  by_serial.serial = {"E-1001"};
  book.say("2026-01-02", by_serial);
  BOOST_TEST(series_of(book).size() == 1U);
  // Two models with this serial: the place decides, and in it there is none.
  book.say("2026-01-01", support::forward(support::engine("TS-41", "E-1001"), {}));
  BOOST_TEST(series_of(book).empty());
}

BOOST_AUTO_TEST_CASE(an_engine_whose_hours_nobody_knows_has_no_line) {
  support::Book book = begun(false);
  book.say("2026-01-01", limit(720));
  const MarginPoint point = point_of(book, cruise());
  BOOST_CHECK(point.flag == Flag::hours_unknown);
  BOOST_TEST(quantity::say(point.margin.value()) == "80");
}

BOOST_AUTO_TEST_CASE(one_reading_that_carries_the_line_is_named) {
  support::Book book = begun();
  book.say("2026-01-01", limit(720));
  const auto read = [&](const std::string& day, std::int64_t degrees) {
    auto reading = cruise();
    reading.temperature = celsius(degrees);
    return book.say(day, reading);
  };
  // Seven readings close together that show no slope, and one 200 h later.
  for (int i = 0; i < 7; ++i) {
    const std::string day = "2026-01-" + std::to_string(10 + i);
    book.say(day, support::flew(kit, "2.0", {support::starts(1)}));
    read(day, 680 + i % 2);
  }
  auto sheet = support::flew(kit, "200.0", {support::starts(90)});
  sheet.since = support::day("2026-01-17");
  book.say("2026-02-20", sheet);
  const auto last = read("2026-02-20", 700);
  const Segment segment = series_of(book).at(0).segments.at(0);
  BOOST_REQUIRE(segment.slope.has_value());
  BOOST_CHECK(segment.deciding == std::vector{last});
}

BOOST_AUTO_TEST_SUITE_END()
