// Exceedances held against limits of another gauge or unit, and whose they are once the engine has
// moved. Derived from design 6 (an exceedance stands until an inspection is recorded) and design 3
// (the unit that was typed is kept: figures of different units are not compared).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "flyable.h"
#include "reckon/exceedances.h"

using namespace definitions;
using flyable::engine;
using flyable::kit;
using logbook::Rotating;
using logbook::TorqueUnit;
using quantity::Decimal;
using reckon::Exceedance;

BOOST_AUTO_TEST_SUITE(exceedances_rare)

namespace {

const logbook::Aircraft mob = support::aircraft("ZZ-MOB");

logbook::GaugeFor temperature(std::int64_t degrees, std::int64_t seconds) {
  return {logbook::GaugeTemperature{quantity::Temperature::of(10 * degrees)}, seconds};
}
logbook::GaugeFor torque(std::int64_t whole, TorqueUnit unit, std::int64_t seconds) {
  return {logbook::GaugeTorque{{Decimal::of(1000 * whole), unit}}, seconds};
}
logbook::GaugeFor speed(Rotating of, std::int64_t percent, std::int64_t seconds) {
  return {logbook::GaugeSpeed{of, Decimal::of(1000 * percent)}, seconds};
}
logbook::ExceedanceLimit limits() {
  logbook::ExceedanceLimit fact;
  fact.model.name = engine.model;
  fact.limit = temperature(843, 10);
  fact.also = {torque(110, TorqueUnit::percent, 5), speed(Rotating::gas_generator, 102, 0)};
  return fact;
}
logbook::Exceeded exceeded(const logbook::GaugeFor& what) {
  logbook::Exceeded fact;
  fact.aircraft = kit;
  fact.place = {"engine 1"};
  fact.what = what;
  return fact;
}
std::vector<Exceedance> open(const support::Book& book, const logbook::Aircraft& aircraft) {
  const AsOf asked(book, "2025-03-10");
  return reckon::open_exceedances(asked.histories, asked.standing, aircraft);
}
// How many limits it was past; whatever it was, it stands.
std::size_t past(const logbook::GaugeFor& what) {
  support::Book book = flyable::complete_book();
  book.say("2025-03-01", limits());
  book.say("2025-03-08", exceeded(what));
  const auto all = open(book, kit);
  BOOST_REQUIRE_EQUAL(all.size(), 1U);
  return all.front().past.size();
}

}  // namespace

BOOST_AUTO_TEST_CASE(each_gauge_is_held_against_limits_of_its_own) {
  BOOST_TEST(past(temperature(850, 12)) == 1U);
  BOOST_TEST(past(temperature(850, 10)) == 0U);  // no longer than is allowed
  BOOST_TEST(past(temperature(843, 12)) == 0U);  // not above it
  BOOST_TEST(past(torque(112, TorqueUnit::percent, 6)) == 1U);
  BOOST_TEST(past(torque(112, TorqueUnit::psi, 6)) == 0U);
  BOOST_TEST(past(speed(Rotating::gas_generator, 103, 1)) == 1U);
  BOOST_TEST(past(speed(Rotating::rotor, 103, 1)) == 0U);
}

BOOST_AUTO_TEST_CASE(by_how_much_and_how_long_it_was_past) {
  support::Book book = flyable::complete_book();
  const auto rule = book.say("2025-03-01", limits());
  book.say("2025-03-08", exceeded(torque(112, TorqueUnit::percent, 6)));
  const auto all = open(book, kit);
  BOOST_REQUIRE_EQUAL(all.size(), 1U);
  BOOST_REQUIRE_EQUAL(all.front().past.size(), 1U);
  BOOST_CHECK(all.front().past.front().by == Decimal::of(2000));
  BOOST_TEST(all.front().past.front().seconds_over == 1);
  BOOST_CHECK(all.front().past.front().rule == rule);
}

BOOST_AUTO_TEST_CASE(what_turns_the_aircraft_stays_with_it_and_the_engines_own_goes_along) {
  const auto moved = [](const logbook::GaugeFor& what) {
    support::Book book = flyable::complete_book();
    book.say("2025-03-01", support::forward(mob, "500.0"));
    book.say("2025-03-08", exceeded(what));
    book.say("2025-03-09", support::removed(engine, {kit, "engine 1", ""}));
    book.say("2025-03-09", support::fitted(engine, {mob, "engine 1", ""}));
    return std::pair(open(book, kit).size(), open(book, mob).size());
  };
  BOOST_CHECK((moved(temperature(850, 12)) == std::pair<std::size_t, std::size_t>(0, 1)));
  BOOST_CHECK(
      (moved(speed(Rotating::gas_generator, 103, 1)) == std::pair<std::size_t, std::size_t>(0, 1)));
  BOOST_CHECK((moved(speed(Rotating::rotor, 103, 1)) == std::pair<std::size_t, std::size_t>(1, 1)));
  BOOST_CHECK(
      (moved(torque(112, TorqueUnit::percent, 6)) == std::pair<std::size_t, std::size_t>(1, 1)));
}

BOOST_AUTO_TEST_CASE(in_a_place_without_an_engine_it_stands_without_a_limit) {
  support::Book book = flyable::complete_book(flyable::Without::no_engine);
  book.say("2025-03-01", limits());
  book.say("2025-03-08", exceeded(temperature(950, 60)));
  const auto all = open(book, kit);
  BOOST_REQUIRE_EQUAL(all.size(), 1U);
  BOOST_CHECK(!all.front().engine);
  BOOST_CHECK(all.front().past.empty());
  BOOST_CHECK(open(book, mob).empty());
}

BOOST_AUTO_TEST_SUITE_END()
