// Limits that differ from model to model: design 5, cases rules 68 to 70 and records S37.
#include "reckon/shared_lives.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/ready.h"

using namespace definitions;
using support::had;
using support::had_hours;

BOOST_AUTO_TEST_SUITE(shared_lives)

namespace {

const logbook::Aircraft on_x = support::aircraft("ZZ-X");
const logbook::Aircraft on_y = support::aircraft("ZZ-Y");
const logbook::Aircraft on_z = support::aircraft("ZZ-Z");
const logbook::Part part = support::part("PN-S", "S-1");
const logbook::PartKind kind{{"PN-S"}};
const std::string item_id = "limit:PN-S";

logbook::Limit on(const std::string& model, std::vector<logbook::Term> terms) {
  logbook::Limit fact = limit(kind, std::move(terms));
  if (!model.empty()) fact.on_model = logbook::ModelName{model};
  return fact;
}
logbook::Limit hours_on(const std::string& model, const std::string& amount) {
  return on(model, {hours(amount, Basis::new_)});
}

const logbook::SharesByFractions by_fractions{kind, std::nullopt};
const logbook::ShorterLimitStays shorter{kind, logbook::LimitThatStays::shorter, std::nullopt};

// Three aircraft of three models, each with 100.0 h; the part is new on the first.
support::Book fleet() {
  support::Book book;
  const std::string begins = "2024-01-01";
  book.say(begins, is_model(on_x, "X-1"));
  book.say(begins, is_model(on_y, "Y-1"));
  book.say(begins, is_model(on_z, "Z-1"));
  for (const auto& aircraft : {on_x, on_y, on_z}) {
    book.say(begins, support::forward(aircraft, "100.0", {had(support::landings(100))}));
  }
  return book;
}
support::Book new_part(std::vector<logbook::Had> with = {had_hours("0.0")}) {
  support::Book book = fleet();
  book.say("2024-01-01", support::fitted(part, {on_x, "hub", ""}, std::move(with)));
  return book;
}
void move(support::Book& book, const std::string& day, const logbook::Aircraft& from,
          const logbook::Aircraft& to) {
  book.say(day, support::removed(part, {from, "hub", ""}));
  book.say(day, support::fitted(part, {to, "hub", ""}));
}
// Flown so much on X, then moved to Y.
support::Book moved_after(const std::string& flown) {
  support::Book book = new_part();
  book.say("2024-02-01", support::flew(on_x, flown));
  move(book, "2024-03-01", on_x, on_y);
  return book;
}
std::string left_on(const support::Book& book, const std::string& day) {
  const AsOf asked(book, day);
  return left(life_item(asked, item_id));
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_shorter_limit_stays_also_when_moved_back) {  // rules 68
  support::Book book = new_part();
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-01-01", hours_on("Y-1", "3000.0"));
  book.say("2024-01-01", shorter);
  book.say("2024-02-01", support::flew(on_x, "2600.0"));
  BOOST_TEST(left_on(book, "2024-02-01") == "1400.0");
  move(book, "2024-03-01", on_x, on_y);
  BOOST_TEST(left_on(book, "2024-03-01") == "400.0");
  move(book, "2024-04-01", on_y, on_x);
  BOOST_TEST(left_on(book, "2024-04-01") == "400.0");
  const AsOf asked(book, "2024-04-01");
  const reckon::Item item = life_item(asked, item_id);
  BOOST_TEST(text(governing(item).limit) == "3000.0");
  BOOST_CHECK(item.sharing == reckon::Sharing::shorter_stays);
}

BOOST_AUTO_TEST_CASE(fractions_of_landings_are_added) {  // rules 69
  support::Book book = new_part({had(support::landings(0))});
  book.say("2024-01-01", on("X-1", {count(support::landings(6000), Basis::new_)}));
  book.say("2024-01-01", on("Y-1", {count(support::landings(4500), Basis::new_)}));
  book.say("2024-01-01", by_fractions);
  book.say("2024-02-01", support::flew(on_x, "20.0", {support::landings(3000)}));
  move(book, "2024-03-01", on_x, on_y);
  book.say("2024-03-02", support::flew(on_y, "20.0", {support::landings(900)}));
  BOOST_TEST(left_on(book, "2024-03-02") == "1350");
  move(book, "2024-04-01", on_y, on_x);
  BOOST_TEST(left_on(book, "2024-04-01") == "1800");
}

BOOST_AUTO_TEST_CASE(the_policy_tells_over_from_well) {  // rules 70
  support::Book book = moved_after("2400.0");
  book.say("2024-01-01", hours_on("X-1", "3000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  support::Book raw = book;
  raw.say("2024-01-01", shorter);
  BOOST_TEST(left_on(raw, "2024-03-01") == "-400.0");
  book.say("2024-01-01", by_fractions);
  BOOST_TEST(left_on(book, "2024-03-01") == "400.0");
  const AsOf asked(book, "2024-03-01");
  const reckon::Side side = governing(life_item(asked, item_id));
  BOOST_TEST(side.life_used->in_ten_thousandths() == 8000);
  BOOST_TEST(text(side.due_at) == "2800.0");
}

BOOST_AUTO_TEST_CASE(what_was_brought_counts_against_the_smallest_limit) {  // records S37
  support::Book book = new_part({had_hours("1900.0")});
  book.say("2024-01-01", hours_on("X-1", "4400.0"));
  book.say("2024-01-01", hours_on("Y-1", "2200.0"));
  support::Book by_parts = book;
  const AsOf without(book, "2024-01-02");
  BOOST_CHECK(life_item(without, item_id).lack == reckon::Lack::shared_lives);
  book.say("2024-01-02", shorter);
  BOOST_TEST(left_on(book, "2024-01-02") == "300.0");
  move(book, "2024-03-01", on_x, on_y);
  BOOST_TEST(left_on(book, "2024-03-01") == "300.0");
  by_parts.say("2024-01-02", by_fractions);  // 300/2200 of 4400
  BOOST_TEST(left_on(by_parts, "2024-01-02") == "600.0");
}

BOOST_AUTO_TEST_CASE(without_a_policy_it_is_not_known_unless_over_by_either) {
  support::Book book = moved_after("1900.0");
  book.say("2024-01-01", hours_on("X-1", "4400.0"));
  book.say("2024-01-01", hours_on("Y-1", "2200.0"));
  const AsOf open(book, "2024-03-01");
  const reckon::Item item = life_item(open, item_id);
  BOOST_TEST(text(item.state) == "not known");
  BOOST_CHECK(item.lack == reckon::Lack::shared_lives);
  BOOST_TEST(!governing(item).left.has_value());
  book.say("2024-03-02", support::flew(on_y, "1260.0"));  // 19/44 + 1260/2200 is just over 1
  const AsOf over(book, "2024-03-02");
  BOOST_TEST(text(life_item(over, item_id).state) == "over");
}

BOOST_AUTO_TEST_CASE(use_that_may_have_been_anywhere_makes_nothing_over_without_a_policy) {
  support::Book book = new_part({had_hours("2600.0")});
  book.say("2024-01-01", hours_on("X-1", "4400.0"));
  book.say("2024-01-01", hours_on("Y-1", "2200.0"));
  const AsOf asked(book, "2024-01-02");
  BOOST_TEST(text(life_item(asked, item_id).state) == "not known");
}

BOOST_AUTO_TEST_CASE(two_policies_that_differ_leave_it_open) {
  support::Book book = moved_after("1000.0");
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  const logbook::EntryId old = book.say("2024-01-01", by_fractions);
  support::Book replaced = book;
  book.say("2024-01-02", shorter);
  const AsOf asked(book, "2024-03-01");
  BOOST_CHECK(life_item(asked, item_id).lack == reckon::Lack::two_policies);
  replaced.say(instead("2024-01-02", shorter, old));
  BOOST_TEST(left_on(replaced, "2024-03-01") == "1000.0");
}

BOOST_AUTO_TEST_CASE(the_same_policy_said_twice_is_one) {
  support::Book book = moved_after("1000.0");
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  book.say("2024-01-02", by_fractions);
  BOOST_TEST(left_on(book, "2024-03-01") == "1500.0");
}

BOOST_AUTO_TEST_CASE(on_a_model_without_a_limit_the_one_it_came_under_stays) {
  support::Book book = moved_after("500.0");
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  move(book, "2024-04-01", on_y, on_z);
  book.say("2024-04-02", support::flew(on_z, "500.0"));
  support::Book by_parts = book;
  book.say("2024-01-01", shorter);
  BOOST_TEST(left_on(book, "2024-04-02") == "1000.0");
  by_parts.say("2024-01-01", by_fractions);  // 500/4000 + 500/2000 of the smallest, 2000
  BOOST_TEST(left_on(by_parts, "2024-04-02") == "1250.0");
}

BOOST_AUTO_TEST_CASE(a_limit_that_no_other_model_has_needs_a_policy_once_it_was_left) {
  support::Book book = new_part();
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-02-01", support::flew(on_x, "500.0"));
  BOOST_TEST(left_on(book, "2024-02-01") == "3500.0");
  move(book, "2024-03-01", on_x, on_z);
  const AsOf asked(book, "2024-03-01");
  BOOST_CHECK(life_item(asked, item_id).lack == reckon::Lack::shared_lives);
}

BOOST_AUTO_TEST_CASE(a_general_limit_holds_on_every_model) {
  support::Book book = moved_after("3000.0");
  book.say("2024-01-01", hours_on("", "6000.0"));
  book.say("2024-01-01", hours_on("Y-1", "4500.0"));
  book.say("2024-01-01", by_fractions);
  BOOST_TEST(left_on(book, "2024-03-01") == "2250.0");
  move(book, "2024-04-01", on_y, on_x);
  BOOST_TEST(left_on(book, "2024-04-01") == "3000.0");
}

BOOST_AUTO_TEST_CASE(equal_limits_need_no_policy) {
  support::Book book = moved_after("1000.0");
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-01-01", hours_on("Y-1", "4000.0"));
  BOOST_TEST(left_on(book, "2024-03-01") == "3000.0");
}

BOOST_AUTO_TEST_CASE(off_every_aircraft_the_limit_of_the_last_model_is_told) {
  support::Book book = moved_after("2000.0");
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  book.say("2024-04-01", support::removed(part, {on_y, "hub", ""}));
  BOOST_TEST(left_on(book, "2024-04-02") == "1000.0");
}

BOOST_AUTO_TEST_CASE(a_part_inside_an_engine_is_where_the_engine_is) {
  const logbook::Engine engine = support::engine("TS-40", "E-1");
  support::Book book = fleet();
  book.say("2024-01-01", support::forward(engine, {had_hours("0.0")}));
  book.say("2024-01-01", support::fitted(part, {engine, "disc", ""}, {had_hours("0.0")}));
  book.say("2024-01-01", support::fitted(engine, {on_x, "engine 1", ""}));
  book.say("2024-01-01", hours_on("X-1", "3000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  book.say("2024-02-01", support::flew(on_x, "2400.0"));
  book.say("2024-03-01", support::removed(engine, {on_x, "engine 1", ""}));
  book.say("2024-03-01", support::fitted(engine, {on_y, "engine 1", ""}));
  BOOST_TEST(left_on(book, "2024-03-01") == "400.0");
  book.say("2024-04-01", support::removed(engine, {on_y, "engine 1", ""}));
  BOOST_TEST(left_on(book, "2024-04-01") == "400.0");  // not of X, where it first was
}

BOOST_AUTO_TEST_CASE(an_aircraft_whose_model_is_not_on_record_may_be_any) {
  const logbook::Aircraft other = support::aircraft("ZZ-W");
  support::Book book = new_part();
  book.say("2024-01-01", support::forward(other, "100.0"));
  book.say("2024-01-01", hours_on("X-1", "3000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  move(book, "2024-01-01", on_x, other);
  book.say("2024-02-01", support::flew(other, "1000.0"));
  const AsOf asked(book, "2024-02-01");
  BOOST_REQUIRE(asked.lives().size() == 2U);  // whichever model it is: the first to run out governs
  BOOST_TEST(left(asked.lives().at(1)) == "1000.0");
  move(book, "2024-03-01", other, on_x);
  BOOST_TEST(left_on(book, "2024-03-01") == "1500.0");
}

BOOST_AUTO_TEST_CASE(an_aircraft_is_of_one_model_for_good) {
  support::Book book = fleet();
  for (const auto& [model, amount] : {std::pair("X-1", "4000.0"), {"Y-1", "2000.0"}}) {
    logbook::Limit there = limit(on_x, {hours(amount, Basis::new_)});
    there.on_model = logbook::ModelName{model};
    book.say("2024-01-01", there);
  }
  const AsOf asked(book, "2024-01-02");
  BOOST_TEST(left(life_item(asked, "limit:ZZ-X")) == "3900.0");
}

BOOST_AUTO_TEST_CASE(a_calendar_limit_is_never_shared) {
  support::Book book = moved_after("2400.0");
  book.say("2023-01-01", made(part, "2023-06-15"));
  book.say("2024-01-01", on("X-1", {hours("3000.0", Basis::new_),
                                    period(10, PeriodUnit::years, Basis::manufacture)}));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  const AsOf asked(book, "2024-03-01");
  const std::vector<reckon::Item> items = asked.lives();
  BOOST_REQUIRE(items.size() == 2U);
  BOOST_REQUIRE(items.at(0).sides.size() == 1U);
  BOOST_TEST(text(items.at(0).sides.at(0).last_legal) == "2033-06-15");
  BOOST_TEST(text(items.at(1).sides.at(0).left) == "400.0");
}

BOOST_AUTO_TEST_CASE(the_later_of_two_terms_cannot_be_shared_by_fractions) {
  support::Book book = moved_after("1000.0");
  logbook::Limit latest =
      on("X-1", {hours("3000.0", Basis::new_), after(hours("50.0"), "2024-01-15")});
  latest.terms.combine = Combine::latest;
  book.say("2024-01-01", latest);
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  const AsOf asked(book, "2024-03-01");
  BOOST_CHECK(asked.lives().at(0).lack == reckon::Lack::not_shareable);
}

BOOST_AUTO_TEST_CASE(use_that_is_not_known_leaves_it_open) {
  support::Book book = new_part({});
  book.say("2024-01-01", hours_on("X-1", "3000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  move(book, "2024-03-01", on_x, on_y);
  const AsOf asked(book, "2024-03-01");
  BOOST_CHECK(life_item(asked, item_id).lack == reckon::Lack::total);
}

BOOST_AUTO_TEST_CASE(use_of_at_least_so_much_leaves_at_most_so_much) {
  logbook::Had at_least = had(support::landings(0));
  at_least.grade = logbook::Grade::at_least;
  support::Book book = new_part({at_least});
  book.say("2024-01-01", on("X-1", {count(support::landings(6000), Basis::new_)}));
  book.say("2024-01-01", on("Y-1", {count(support::landings(4500), Basis::new_)}));
  book.say("2024-01-01", by_fractions);
  book.say("2024-02-01", support::flew(on_x, "20.0", {support::landings(3000)}));
  move(book, "2024-03-01", on_x, on_y);
  const AsOf asked(book, "2024-03-01");
  const reckon::Side side = governing(life_item(asked, item_id));
  BOOST_TEST(text(side.left) == "2250");
  BOOST_TEST(side.left_is_at_most);
}

BOOST_AUTO_TEST_CASE(a_policy_holds_from_its_day) {
  support::Book book = moved_after("2400.0");
  book.say("2024-01-01", hours_on("X-1", "3000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-03-05", by_fractions);
  BOOST_TEST(left_on(book, "2024-03-04") == "not known");
  BOOST_TEST(left_on(book, "2024-03-05") == "400.0");
}

BOOST_AUTO_TEST_CASE(a_trip_is_held_against_what_is_left_on_this_model) {
  support::Book book = moved_after("2400.0");
  book.say("2024-01-01", hours_on("X-1", "3000.0"));
  book.say("2024-01-01", hours_on("Y-1", "2000.0"));
  book.say("2024-01-01", by_fractions);
  const AsOf asked(book, "2024-03-01");
  reckon::Trip trip;
  trip.hours = support::hours("400.0");
  const auto ask = [&] { return reckon::ready(asked.histories, asked.standing, {on_y, trip, {}}); };
  BOOST_TEST(ask().obstacles.empty());
  trip.hours = support::hours("400.01");
  BOOST_TEST(ask().obstacles.size() == 1U);
}

// Only the longer limit is another engine's: whichever way it is shared, the shorter one rules.
BOOST_AUTO_TEST_CASE(no_policy_is_needed_where_the_limit_of_now_is_the_shortest) {
  support::Book book = new_part({had_hours("1900.0")});
  book.say("2024-01-01", hours_on("X-1", "2000.0"));
  book.say("2024-01-01", hours_on("Y-1", "3000.0"));
  BOOST_TEST(left_on(book, "2024-03-01") == "100.0");
  move(book, "2024-03-01", on_x, on_y);
  BOOST_TEST(left_on(book, "2024-03-01") == "not known");
}

// A model of which nothing is on record rules nothing, unless it is stated how lives are shared:
// then the part may have come from there (decision 0030).
BOOST_AUTO_TEST_CASE(a_model_that_nothing_is_of_takes_part_where_a_policy_is_stated) {
  support::Book book = new_part({had_hours("1000.0")});
  book.say("2024-01-01", hours_on("X-1", "4000.0"));
  book.say("2024-01-01", hours_on("W-9", "2000.0"));
  const AsOf open(book, "2024-03-01");
  BOOST_TEST(open.lives().size() == 2U);
  book.say("2024-01-01", by_fractions);
  BOOST_TEST(left_on(book, "2024-03-01") == "2000.0");
}

BOOST_AUTO_TEST_SUITE_END()
