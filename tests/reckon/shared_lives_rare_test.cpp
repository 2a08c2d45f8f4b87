// Limits that differ from model to model, in forms that are seldom written: beside a general limit,
// by the calendar, when exceeding, by several counters, at the latest of two. Derived from design 5
// (several: the first to run out governs; a stated policy, else not known; unknown blocks a yes).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/shared_lives.h"

using namespace definitions;
using reckon::Lack;
using reckon::State;
using support::had;
using support::had_hours;
using support::landings;

BOOST_AUTO_TEST_SUITE(shared_lives_rare)

namespace {

const logbook::Aircraft on_x = support::aircraft("ZZ-X");
const logbook::Aircraft on_y = support::aircraft("ZZ-Y");
const logbook::Part part = support::part("PN-S", "S-1");
const logbook::PartKind kind{{"PN-S"}};

logbook::Limit on(const std::string& model, std::vector<logbook::Term> terms,
                  Combine combine = Combine::first) {
  logbook::Limit fact = limit(kind, std::move(terms), combine);
  if (!model.empty()) fact.on_model = logbook::ModelName{model};
  return fact;
}
logbook::Limit hours_on(const std::string& model, const std::string& amount) {
  return on(model, {hours(amount, Basis::new_)});
}
logbook::MixedLimit mix_on(const std::string& model) {
  logbook::MixedLimit fact;
  fact.scope = kind;
  fact.parts = {{landings(1).counter, quantity::whole_cycles(1000)}};
  fact.on_model = logbook::ModelName{model};
  return fact;
}
const logbook::SharesByFractions by_fractions{kind, std::nullopt};
const logbook::ShorterLimitStays shorter{kind, logbook::LimitThatStays::shorter, std::nullopt};

// New on X, 400.0 h and 100 landings there, then moved to Y and 50.0 h and 10 landings there.
support::Book moved() {
  support::Book book;
  book.say("2024-01-01", is_model(on_x, "X-1"));
  book.say("2024-01-01", is_model(on_y, "Y-1"));
  for (const auto& aircraft : {on_x, on_y}) {
    book.say("2024-01-01", support::forward(aircraft, "100.0", {had(landings(100))}));
  }
  book.say("2024-01-01", made(part, "2023-06-01"));
  book.say("2024-01-01", support::fitted(part, {on_x, "hub", ""}, {had_hours("0.0")}));
  book.say("2024-02-01", support::flew(on_x, "400.0", {landings(100)}));
  book.say("2024-03-01", support::removed(part, {on_x, "hub", ""}));
  book.say("2024-03-01", support::fitted(part, {on_y, "hub", ""}));
  book.say("2024-03-05", support::flew(on_y, "50.0", {landings(10)}));
  return book;
}
std::vector<reckon::Item> lives(const support::Book& book) {
  const AsOf asked(book, "2024-03-10");
  std::vector<reckon::Item> items;
  for (const reckon::Item& item : asked.lives()) {
    if (item.thing == logbook::Thing(part)) items.push_back(item);
  }
  return items;
}
reckon::Item only_life(const support::Book& book) {
  const auto items = lives(book);
  BOOST_REQUIRE_EQUAL(items.size(), 1U);
  return items.front();
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_mixed_limit_of_the_model_it_left_is_open_without_a_policy) {
  support::Book book = moved();
  book.say("2024-01-01", hours_on("Y-1", "1000.0"));
  book.say("2024-01-01", mix_on("X-1"));
  const auto items = lives(book);
  BOOST_REQUIRE_EQUAL(items.size(), 2U);
  for (const reckon::Item& item : items) BOOST_CHECK(item.lack == Lack::shared_lives);
  book.say("2024-01-01", by_fractions);
  for (const reckon::Item& item : lives(book)) {
    BOOST_CHECK((item.mixed != nullptr) == (item.lack == Lack::not_shareable));
  }
  book.say("2024-01-02", shorter);
  for (const reckon::Item& item : lives(book)) BOOST_CHECK(item.lack == Lack::two_policies);
}

BOOST_AUTO_TEST_CASE(a_mixed_limit_of_the_model_it_left_stays_where_the_shorter_stays) {
  support::Book book = moved();
  book.say("2024-01-01", hours_on("Y-1", "1000.0"));
  book.say("2024-01-01", mix_on("X-1"));
  book.say("2024-01-01", shorter);
  const auto items = lives(book);
  BOOST_REQUIRE_EQUAL(items.size(), 2U);
  // 1000 - 110 landings; 1000 - 450 h.
  for (const reckon::Item& item : items) {
    BOOST_TEST(left(item) == (item.mixed != nullptr ? "890" : "550.0"));
  }
}

BOOST_AUTO_TEST_CASE(a_longer_general_limit_beside_those_of_models) {
  support::Book book = moved();
  book.say("2024-01-01", hours_on("", "3000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", hours_on("X-1", "1000.0"));
  BOOST_CHECK(lives(book).front().lack == Lack::shared_lives);
  support::Book fractions = book;
  fractions.say("2024-01-01", by_fractions);
  // On Y the 2000 rules: 2000 x (1 - 400/1000 - 50/2000) = 1150.
  BOOST_TEST(left(only_life(fractions)) == "1150.0");
  book.say("2024-01-01", shorter);
  BOOST_TEST(left(only_life(book)) == "550.0");  // 1000 - 450
}

BOOST_AUTO_TEST_CASE(of_equal_limits_the_one_that_is_reached_rules_over_the_one_to_exceed) {
  support::Book book = moved();
  logbook::Limit exceeding = hours_on("Y-1", "450.0");
  exceeding.when_exceeding = true;
  book.say("2024-01-01", exceeding);
  BOOST_CHECK(only_life(book).state == State::soon);  // at 450.0 it is not exceeded
  book.say("2024-01-01", hours_on("X-1", "450.0"));
  BOOST_CHECK(lives(book).front().lack == Lack::shared_lives);
  book.say("2024-01-01", shorter);
  const reckon::Item item = only_life(book);
  BOOST_CHECK(item.state == State::due);
  BOOST_CHECK(!item.when_exceeding);
}

BOOST_AUTO_TEST_CASE(a_limit_to_exceed_of_the_model_it_left_takes_nothing_away) {
  support::Book book = moved();
  book.say("2024-01-01", hours_on("Y-1", "450.0"));
  logbook::Limit exceeding = hours_on("X-1", "450.0");
  exceeding.when_exceeding = true;
  book.say("2024-01-01", exceeding);
  BOOST_CHECK(only_life(book).state == State::due);
}

BOOST_AUTO_TEST_CASE(limits_in_the_same_words_need_no_policy) {
  const auto years = [](const std::string& model, std::int64_t number) {
    return on(model, {period(number, PeriodUnit::years, Basis::manufacture)});
  };
  support::Book book = moved();
  book.say("2024-01-01", years("X-1", 10));
  book.say("2024-01-01", years("Y-1", 10));
  BOOST_TEST(text(governing(only_life(book)).last_legal) == "2033-06-01");
  // A shorter one by the calendar may take away: nobody said how they are shared.
  book.say("2024-01-01", years("X-1", 9));
  BOOST_CHECK(lives(book).front().lack == Lack::shared_lives);
  book.say("2024-01-01", by_fractions);
  // A calendar cannot be divided; the first to run out governs.
  BOOST_TEST(text(governing(only_life(book)).last_legal) == "2032-06-01");
}

BOOST_AUTO_TEST_CASE(a_calendar_limit_of_a_part_whose_making_nobody_knows_is_not_known) {
  support::Book book = moved();
  book.say("2024-01-01", on("X-1", {period(5, PeriodUnit::years, Basis::release)}));
  book.say("2024-01-01", on("Y-1", {period(9, PeriodUnit::years, Basis::release)}));
  book.say("2024-01-01", shorter);
  const auto items = lives(book);
  BOOST_REQUIRE_EQUAL(items.size(), 2U);
  for (const reckon::Item& item : items) BOOST_CHECK(item.lack == Lack::basis_day);
}

BOOST_AUTO_TEST_CASE(the_latest_of_two_terms_is_shared_as_a_whole) {
  support::Book book = moved();
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", on("X-1", {hours("600.0", Basis::new_), count(landings(50), Basis::new_)},
                            Combine::latest));
  BOOST_CHECK(lives(book).front().lack == Lack::shared_lives);
  book.say("2024-01-01", shorter);
  const auto items = lives(book);
  BOOST_REQUIRE_EQUAL(items.size(), 2U);
  for (const reckon::Item& item : items) {
    // 600 - 450 h are left until the later of the two; 2000 - 450 of the other.
    BOOST_TEST(left(item) == (item.combine == Combine::latest ? "150.0" : "1550.0"));
  }
}

BOOST_AUTO_TEST_CASE(a_limit_of_nothing_is_not_divided) {
  support::Book book = moved();
  book.say("2024-01-01", hours_on("Y-1", "0.0"));
  book.say("2024-01-01", hours_on("X-1", "1000.0"));
  book.say("2024-01-01", by_fractions);
  const reckon::Item item = only_life(book);
  BOOST_CHECK(item.state == State::over);
  BOOST_TEST(left(item) == "-450.0");
}

BOOST_AUTO_TEST_CASE(a_part_that_was_never_on_a_model_has_not_its_limit) {
  support::Book book = moved();
  book.say("2024-01-01", is_model(support::aircraft("ZZ-Z"), "Z-1"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", hours_on("Z-1", "10.0"));
  book.say("2024-01-01", on("Z-1", {period(1, PeriodUnit::days, Basis::manufacture)}));
  // Use on X, of which no limit is on record, may have been made under any: not known, and not
  // over.
  BOOST_CHECK(only_life(book).lack == Lack::shared_lives);
  book.say("2024-01-01", shorter);
  BOOST_TEST(left(only_life(book)) == "1550.0");
}

BOOST_AUTO_TEST_SUITE_END()
