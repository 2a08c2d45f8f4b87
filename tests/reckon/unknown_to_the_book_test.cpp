// What is answered about things of which the book has little or nothing: no figure, no day, no use
// (derived from design 3: unknown is no figure; design 7: unknown blocks a yes).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "flyable.h"
#include "reckon/exceedances.h"
#include "reckon/signing.h"
#include "told.h"

using namespace definitions;
using reckon::Condition;
using support::Book;
using support::day;
using support::fitted;
using support::had_hours;
using told::Told;

BOOST_AUTO_TEST_SUITE(unknown_to_the_book)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Aircraft nobodys = support::aircraft("ZZ-NIL");
const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::Part part = support::part("PN-1", "B-1");

std::string day_text(const std::optional<quantity::Day>& day) {
  return day ? quantity::say(*day) : "not known";
}

}  // namespace

BOOST_AUTO_TEST_CASE(of_an_aircraft_that_never_flew_there_is_no_use) {
  Book book;
  book.say("2025-03-01", is_model(kit, "Larkwing 5"));
  const Told told(book, "2025-03-10");
  const reckon::Histories& histories = told.histories;
  for (const logbook::Aircraft& aircraft : {kit, nobodys}) {
    BOOST_TEST(told.hours(aircraft) == "unknown");
    BOOST_CHECK(!histories.last_flight(aircraft));
    BOOST_CHECK(!histories.source_meter(aircraft));
    BOOST_CHECK(histories.daily_use(aircraft, day("2024-01-01")).empty());
    BOOST_CHECK(!histories.dearest_flight(aircraft, reckon::service_clock, 50));
    BOOST_CHECK(histories.spread_around(aircraft, histories.now()).count() == 0);
    const logbook::DerivedUse derived = histories.derived(aircraft, day("2025-01-01"));
    BOOST_TEST(derived.aircraft == aircraft.registration.text);
    BOOST_CHECK(derived.from == day("2025-01-01"));
    BOOST_CHECK(derived.uses.empty());
  }
  BOOST_CHECK(histories.model_of(kit) == logbook::ModelName{"Larkwing 5"});
  BOOST_CHECK(!histories.model_of(nobodys));
  BOOST_CHECK(!histories.dearest_flight(part, reckon::service_clock, 50));
  BOOST_CHECK(!histories.brought_forward_day(part));
  BOOST_CHECK(histories.beginnings(part).empty());
}

BOOST_AUTO_TEST_CASE(a_flight_without_one_has_no_dearest) {
  Book book;
  book.say("2025-03-01", support::forward(kit, "100.0"));
  book.say("2025-03-02", support::ran(kit, "engine 1", {support::starts(1)}));
  const Told told(book, "2025-03-10");
  BOOST_CHECK(!told.histories.dearest_flight(kit, reckon::service_clock, 50));
  BOOST_CHECK(!told.histories.last_flight(kit));
}

BOOST_AUTO_TEST_CASE(days_from_which_a_calendar_runs) {
  Book book;
  book.say("2025-03-01", support::forward(kit, "100.0"));
  book.say("2025-03-02", fitted(part, {kit, "a", ""}, {had_hours("0.0")}));
  const auto used = support::part("PN-1", "B-2");
  book.say("2025-03-02", fitted(used, {kit, "b", ""}, {had_hours("7.0")}));
  const auto made_part = support::part("PN-1", "B-3");
  book.say("2025-03-02", made(made_part, "2020-05-06"));
  const Told told(book, "2025-03-10");
  const auto of = [&](const logbook::Thing& thing, Basis basis) {
    return day_text(told.histories.basis_day(thing, basis));
  };
  BOOST_TEST(of(part, Basis::new_) == "2025-03-02");  // it came new
  BOOST_TEST(of(used, Basis::new_) == "not known");
  BOOST_TEST(of(made_part, Basis::new_) == "2020-05-06");
  BOOST_TEST(of(made_part, Basis::fitting) == "not known");
  BOOST_TEST(of(used, Basis::fitting) == "2025-03-02");
  BOOST_TEST(of(part, Basis::manufacture) == "not known");
  BOOST_TEST(of(part, Basis::release) == "not known");
  BOOST_TEST(of(part, Basis::first_certificate) == "not known");
  BOOST_TEST(of(part, Basis::overhaul) == "not known");
  BOOST_TEST(of(part, Basis::done) == "not known");
  BOOST_TEST(of(support::part("PN-9", "9"), Basis::new_) == "not known");
}

BOOST_AUTO_TEST_CASE(calendar_limits_count_from_their_own_basis) {
  Book book;
  book.say("2025-03-01", support::forward(kit, "100.0"));
  book.say("2025-03-01", fitted(part, {kit, "a", ""}, {had_hours("0.0")}));
  const auto life = [&](const Term& term) {
    Book with = book;
    with.say("2025-03-01", limit(logbook::PartKind{{"PN-1"}}, {term}));
    const AsOf asked(with, "2025-03-10");
    return governing(life_item(asked, "limit:PN-1"));
  };
  const auto years = [](Basis basis) { return period(1, PeriodUnit::years, basis); };
  BOOST_TEST(text(life(years(Basis::fitting)).last_legal) == "2026-03-01");
  BOOST_CHECK(life(years(Basis::done)).lack == reckon::Lack::basis_day);
  BOOST_CHECK(life(years(Basis::release)).lack == reckon::Lack::basis_day);
  BOOST_TEST(text(life(after(period(1, PeriodUnit::years), "2025-02-03")).last_legal) ==
             "2026-02-03");
  BOOST_CHECK(life(hours("10.0", Basis::done)).lack == reckon::Lack::last_done);
  // Off the aircraft hours since fitting stand still, and days run on (decision 0028).
  book.say("2025-03-04", support::flew(kit, "2.0"));
  book.say("2025-03-05", support::removed(part, {kit, "a", ""}));
  book.say("2025-03-06", support::flew(kit, "3.0"));
  BOOST_TEST(text(life(years(Basis::fitting)).last_legal) == "2026-03-01");
  BOOST_TEST(text(life(hours("10.0", Basis::fitting)).left) == "8.0");
}

BOOST_AUTO_TEST_CASE(an_exceedance_in_a_place_without_an_engine_is_the_aircrafts) {
  Book book = flyable::complete_book(flyable::Without::no_engine);
  logbook::Exceeded fact;
  fact.aircraft = kit;
  fact.place = {"engine 2"};
  fact.what = {logbook::GaugeTemperature{quantity::Temperature::of(9150)}, 3};
  book.say("2025-03-08", fact);
  const reckon::Ready ready = flyable::ask(book, "2025-03-10", {});
  const auto look = std::find_if(
      ready.missing.begin(), ready.missing.end(),
      [](const reckon::Missing& one) { return one.condition == Condition::looked_into; });
  BOOST_REQUIRE(look != ready.missing.end());
  BOOST_CHECK(look->thing == logbook::Thing(kit));
}

BOOST_AUTO_TEST_CASE(another_review_is_none_of_directives) {
  Book book = flyable::complete_book(flyable::Without::review);
  book.say("2025-03-02", logbook::Reviewed{kit, "weight and balance", std::nullopt});
  const reckon::Ready ready = flyable::ask(book, "2025-03-10", {});
  BOOST_REQUIRE_EQUAL(ready.missing.size(), 1U);
  BOOST_CHECK(ready.missing.front().condition == Condition::reviewed);
  book.say("2025-03-02", logbook::Reviewed{nobodys, "directives and limitations", std::nullopt});
  BOOST_CHECK(flyable::ask(book, "2025-03-10", {}).answer == reckon::Answer::not_known);
  book.say("2025-03-02", reviewed(kit));
  BOOST_CHECK(flyable::ask(book, "2025-03-10", {}).answer == reckon::Answer::yes);
}

BOOST_AUTO_TEST_CASE(what_a_person_signs_for) {
  const logbook::Scope scope = logbook::PartKind{{"PN-1"}};
  const std::vector<logbook::Fact> wanted = {support::done("check", kit),
                                             logbook::NextDue{},
                                             support::overhauled(engine),
                                             fitted(part, {kit, "a", ""}),
                                             support::removed(part, {kit, "a", ""}),
                                             logbook::EngineEvent{},
                                             logbook::LookedInto{},
                                             limit(scope, {}),
                                             logbook::MixedLimit{},
                                             on_condition(scope),
                                             logbook::SharesByFractions{},
                                             logbook::ShorterLimitStays{},
                                             task("check", scope, {}),
                                             ends("check", scope)};
  for (const logbook::Fact& fact : wanted) BOOST_CHECK(reckon::wants_signature(fact));
  const std::vector<logbook::Fact> not_wanted = {support::flew(kit, "1.0"), reviewed(kit),
                                                 support::forward(kit, "1.0"), logbook::Plan{},
                                                 required(kit, "engine 1")};
  for (const logbook::Fact& fact : not_wanted) BOOST_CHECK(!reckon::wants_signature(fact));
}

BOOST_AUTO_TEST_CASE(what_was_said_to_be_unknown_becomes_known_by_bringing_forward_only) {
  Book book;
  logbook::BringsForward unknown;
  unknown.thing = engine;
  unknown.unknown = {{std::monostate{}, std::nullopt}};
  book.say("2025-03-01", unknown);
  book.say("2025-03-01", support::forward(kit, "100.0"));
  Book by_fitting = book;
  by_fitting.say("2025-03-02", fitted(engine, {kit, "engine 1", ""}, {had_hours("50.0")}));
  BOOST_TEST(Told(by_fitting, "2025-03-10").hours(engine) == "unknown");
  book.say("2025-03-02", fitted(engine, {kit, "engine 1", ""}));
  book.say("2025-03-03", support::flew(kit, "2.0"));
  BOOST_TEST(Told(book, "2025-03-10").hours(engine) == "unknown");
  book.say("2025-03-03", support::forward(engine, {had_hours("50.0")}));
  BOOST_TEST(Told(book, "2025-03-10").hours(engine) == "52.0");
  // Said to be unknown later, it is at least what it had.
  book.say("2025-03-05", unknown);
  BOOST_TEST(Told(book, "2025-03-10").hours(engine) == "at least 52.0");
}

BOOST_AUTO_TEST_SUITE_END()
