// What was past a limit stands until somebody has looked into it, and follows the engine.

#include "reckon/exceedances.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "flyable.h"
#include "reckon/entry_named.h"

using namespace definitions;
using namespace flyable;
using reckon::Exceedance;

BOOST_AUTO_TEST_SUITE(exceedances)

namespace {

logbook::GaugeFor temperature(std::int64_t degrees, std::int64_t seconds) {
  return {logbook::GaugeTemperature{quantity::Temperature::of(10 * degrees)}, seconds};
}

logbook::Exceeded exceeded(const logbook::GaugeFor& what) {
  logbook::Exceeded fact;
  fact.aircraft = kit;
  fact.place = support::place("engine 1");
  fact.what = what;
  return fact;
}

logbook::ExceedanceLimit limit_of(const logbook::GaugeFor& what) {
  logbook::ExceedanceLimit limit;
  limit.model.name = engine.model;
  limit.limit = what;
  return limit;
}

logbook::LookedInto looked_into(const logbook::EntryId& entry) {
  logbook::LookedInto fact;
  fact.entry.writer = reckon::writer_letters(entry.writer, 5);
  fact.entry.number = entry.number;
  fact.found = "gauge checked";
  return fact;
}

std::vector<Exceedance> open_in(const support::Book& book) {
  const AsOf asked(book, "2025-03-10");
  return reckon::open_exceedances(asked.histories, asked.standing, kit);
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_stated_one_stands_until_it_is_looked_into) {
  support::Book book = complete_book();
  BOOST_TEST(open_in(book).empty());
  const logbook::EntryId entry = book.say("2025-03-08", exceeded(temperature(915, 3)));
  BOOST_REQUIRE(open_in(book).size() == 1U);
  BOOST_CHECK(open_in(book).front().engine == engine);
  const auto asked = ask(book, "2025-03-10", {});
  BOOST_CHECK(asked.answer == reckon::Answer::not_known);
  BOOST_REQUIRE(asked.missing.size() == 1U);
  BOOST_CHECK(asked.missing.front().condition == reckon::Condition::looked_into);
  book.say("2025-03-09", looked_into(entry));
  BOOST_TEST(open_in(book).empty());
  BOOST_CHECK(ask(book, "2025-03-10", {}).answer == reckon::Answer::yes);
}

BOOST_AUTO_TEST_CASE(a_struck_look_opens_it_again) {
  support::Book book = complete_book();
  const logbook::EntryId entry = book.say("2025-03-08", exceeded(temperature(915, 3)));
  const logbook::EntryId look = book.say("2025-03-09", looked_into(entry));
  book.strike(look);
  BOOST_TEST(open_in(book).size() == 1U);
}

BOOST_AUTO_TEST_CASE(it_is_told_how_far_it_was_past_each_limit) {
  support::Book book = complete_book();
  book.say("2025-01-01", limit_of(temperature(843, 2)));
  book.say("2025-01-01", limit_of(temperature(900, 3)));
  book.say("2025-03-08", exceeded(temperature(915, 3)));
  const auto open = open_in(book);
  BOOST_REQUIRE(open.size() == 1U);
  BOOST_REQUIRE(open.front().past.size() == 1U);  // 3 s are not longer than 3 s
  BOOST_TEST(quantity::say(open.front().past.front().by) == "72");
  BOOST_TEST(open.front().past.front().seconds_over == 1);
}

BOOST_AUTO_TEST_CASE(gauges_of_another_sort_are_not_compared) {
  support::Book book = complete_book();
  book.say("2025-01-01", limit_of({logbook::GaugeTorque{{quantity::Decimal::of(100000), {}}}, 0}));
  book.say("2025-03-08", exceeded(temperature(915, 3)));
  BOOST_TEST(open_in(book).front().past.empty());
}

BOOST_AUTO_TEST_CASE(it_leaves_with_the_engine) {
  support::Book book = complete_book();
  book.say("2025-03-08", exceeded(temperature(915, 3)));
  book.say("2025-03-09", support::removed(engine, {kit, "engine 1", ""}));
  BOOST_TEST(open_in(book).empty());
  const AsOf asked(book, "2025-03-10");
  BOOST_TEST(reckon::open_exceedances(asked.histories, asked.standing).size() == 1U);
}

BOOST_AUTO_TEST_CASE(what_turned_the_drive_train_stays_with_the_aircraft_too) {
  support::Book book = complete_book();
  const logbook::GaugeFor rotor{
      logbook::GaugeSpeed{logbook::Rotating::rotor, quantity::Decimal::of(118000)}, 5};
  book.say("2025-03-08", exceeded(rotor));
  book.say("2025-03-09", support::removed(engine, {kit, "engine 1", ""}));
  BOOST_TEST(open_in(book).size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_correction_that_nobody_has_looked_into_opens_it_again) {
  support::Book book = complete_book();
  const logbook::EntryId entry = book.say("2025-03-08", exceeded(temperature(850, 3)));
  book.say("2025-03-09", looked_into(entry));
  BOOST_TEST(open_in(book).empty());
  book.correct(entry, "2025-03-08", exceeded(temperature(915, 30)));
  BOOST_TEST(open_in(book).size() == 1U);
}

BOOST_AUTO_TEST_CASE(the_engine_that_was_named_has_it) {
  support::Book book = complete_book();
  const logbook::Engine other = support::engine("TS-40", "E-9");
  book.say("2025-01-01", support::forward(other, {support::had_hours("5.0")}));
  logbook::Exceeded fact = exceeded(temperature(915, 3));
  fact.serial = other.serial;
  book.say("2025-03-08", fact);
  BOOST_TEST(open_in(book).empty());
  const AsOf asked(book, "2025-03-10");
  const auto open = reckon::open_exceedances(asked.histories, asked.standing);
  BOOST_REQUIRE(open.size() == 1U);
  BOOST_CHECK(open.front().engine == other);
}

BOOST_AUTO_TEST_SUITE_END()
