// Limits that hold on one model only: of any host on the way up, at any depth (derived from design
// 5 and cases/rules.md 68).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/unreached.h"

using namespace definitions;
using reckon::Lack;
using support::fitted;
using support::had_hours;
using support::removed;

BOOST_AUTO_TEST_SUITE(models_on)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine engine = support::engine("TS-40", "E-1");
const logbook::Engine other = support::engine("TS-50", "E-2");
const logbook::Part module = support::part("PN-M", "M-4");
const logbook::Part disc = support::part("PN-T1", "T1-77");

logbook::Limit limit_on(const std::string& model, const std::string& amount) {
  logbook::Limit fact = limit(logbook::PartKind{{"PN-T1"}}, {hours(amount)});
  fact.on_model = {model};
  return fact;
}

// An engine of each model: a TS-40 on ZZ-KIT, a TS-50 on the shelf, and a disc with 2600.0 h.
support::Book two_engines() {
  support::Book book;
  book.say("2025-01-01", is_model(kit, "Larkwing 5"));
  book.say("2025-01-01", support::forward(kit, "2000.0"));
  book.say("2025-01-01", support::forward(engine, {had_hours("100.0")}));
  book.say("2025-01-01", support::forward(other, {had_hours("100.0")}));
  book.say("2025-01-01", fitted(engine, {kit, "engine 1", "2000.0"}));
  return book;
}

std::vector<std::string> limits_of_disc(const support::Book& book) {
  std::vector<std::string> limits;
  const AsOf asked(book, "2025-03-10");
  for (const reckon::Item& item : asked.lives()) {
    if (item.thing == logbook::Thing(disc)) limits.push_back(text(item.sides.at(0).limit));
  }
  return limits;
}

using Texts = std::vector<std::string>;

}  // namespace

BOOST_AUTO_TEST_CASE(a_limit_for_an_engines_model_holds_for_what_lies_in_the_engine) {
  for (const bool is_in_module : {false, true}) {
    support::Book book = two_engines();
    const logbook::Thing host = is_in_module ? logbook::Thing(module) : logbook::Thing(engine);
    if (is_in_module) book.say("2025-01-01", fitted(module, {engine, "gas generator", ""}));
    book.say("2025-01-01", fitted(disc, {host, "disc", ""}, {had_hours("2600.0")}));
    book.say("2025-01-01", limit_on("TS-40", "2600.5"));
    book.say("2025-01-01", limit_on("TS-50", "3000.0"));
    BOOST_TEST(limits_of_disc(book) == Texts{"2600.5"}, boost::test_tools::per_element());
    BOOST_TEST(left(life_item(AsOf(book, "2025-03-10"), "limit:PN-T1")) == "0.5");
  }
}

BOOST_AUTO_TEST_CASE(limits_of_the_engine_and_of_its_aircraft_hold_together) {
  support::Book book = two_engines();
  book.say("2025-01-01", fitted(disc, {engine, "disc", ""}, {had_hours("2600.0")}));
  book.say("2025-01-01", limit_on("TS-40", "2700.0"));
  book.say("2025-01-01", limit_on("Larkwing 5", "2650.0"));
  const AsOf asked(book, "2025-03-10");
  const std::vector<reckon::Item> items = asked.lives();
  BOOST_REQUIRE_EQUAL(items.size(), 2U);
  BOOST_TEST(left(items[0]) == "100.0");
  BOOST_TEST(left(items[1]) == "50.0");
}

BOOST_AUTO_TEST_CASE(out_of_the_engine_the_limit_of_the_last_one_holds) {
  support::Book book = two_engines();
  book.say("2025-01-01", fitted(disc, {engine, "disc", ""}, {had_hours("2600.0")}));
  book.say("2025-02-01", removed(disc, {engine, "disc", ""}));
  book.say("2025-01-01", limit_on("TS-40", "2700.0"));
  book.say("2025-01-01", limit_on("TS-50", "2800.0"));
  BOOST_TEST(limits_of_disc(book) == Texts{"2700.0"}, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_thing_that_was_in_no_engine_is_held_to_all) {
  support::Book book = two_engines();
  book.say("2025-01-01", support::forward(disc, {had_hours("2600.0")}));
  book.say("2025-01-01", limit_on("TS-40", "2700.0"));
  book.say("2025-01-01", limit_on("TS-50", "2800.0"));
  book.say("2025-01-01", limit_on("Larkwing 5", "2900.0"));
  const Texts all{"2700.0", "2800.0", "2900.0"};
  BOOST_TEST(limits_of_disc(book) == all, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(moved_between_engines_of_two_models_its_life_is_open) {
  support::Book book = two_engines();
  book.say("2025-01-01", fitted(disc, {engine, "disc", ""}, {had_hours("2600.0")}));
  book.say("2025-02-01", removed(disc, {engine, "disc", ""}));
  book.say("2025-02-02", fitted(disc, {other, "disc", ""}));
  book.say("2025-01-01", limit_on("TS-40", "2700.0"));
  book.say("2025-01-01", limit_on("TS-50", "2800.0"));
  const reckon::Item item = life_item(AsOf(book, "2025-03-10"), "limit:PN-T1");
  BOOST_TEST(text(item.state) == "not known");
  BOOST_CHECK(item.lack == Lack::shared_lives);
  BOOST_TEST(text(item.sides.at(0).limit) == "2800.0");
}

BOOST_AUTO_TEST_CASE(a_limit_on_a_model_that_nothing_is_of_is_not_known) {
  support::Book book = two_engines();
  book.say("2025-01-01", fitted(disc, {engine, "disc", ""}, {had_hours("2600.0")}));
  book.say("2025-01-01", limit_on("TS-40", "2700.0"));
  const auto slip = book.say("2025-01-01", limit_on("TS40", "2600.5"));
  const AsOf asked(book, "2025-03-10");
  const std::vector<reckon::Item> items = asked.lives();
  BOOST_REQUIRE_EQUAL(items.size(), 2U);
  BOOST_TEST(text(items[0].state) == "ok");
  BOOST_TEST(text(items[1].state) == "not known");
  BOOST_CHECK(items[1].lack == Lack::model);
  BOOST_CHECK(items[1].entry == slip);
}

BOOST_AUTO_TEST_CASE(a_model_that_nothing_is_of_is_told_with_the_nearest) {
  using Named = reckon::Unreached::Named;
  support::Book book = two_engines();
  const AsOf before(book, "2025-03-10");
  const auto both = reckon::unreached(limit_on("TS40", "1.0"), before.histories, before.standing);
  BOOST_REQUIRE_EQUAL(both.size(), 2U);
  BOOST_CHECK(both[0].named == Named::part_number);
  BOOST_CHECK(both[1].named == Named::on_model);
  book.say("2025-01-01", support::forward(disc, {had_hours("2600.0")}));
  const AsOf after(book, "2025-03-10");
  const auto one = reckon::unreached(limit_on("TS40", "1.0"), after.histories, after.standing);
  BOOST_REQUIRE_EQUAL(one.size(), 1U);
  BOOST_TEST(one[0].name == "TS40");
  BOOST_REQUIRE(!one[0].near.empty());
  BOOST_TEST(one[0].near[0] == "TS-40");
  BOOST_CHECK(reckon::unreached(limit_on("TS-50", "1.0"), after.histories, after.standing).empty());
}

BOOST_AUTO_TEST_CASE(on_an_aircraft_of_an_unknown_model_every_limit_holds) {
  const logbook::Aircraft nameless = support::aircraft("ZZ-LOW");
  support::Book book = two_engines();
  book.say("2025-01-01", support::forward(nameless, "10.0"));
  book.say("2025-01-01", fitted(disc, {nameless, "hub", ""}, {had_hours("2600.0")}));
  book.say("2025-01-01", limit_on("Larkwing 5", "2700.0"));
  BOOST_TEST(limits_of_disc(book) == Texts{"2700.0"}, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_SUITE_END()
