// A life that two counters use up together: design 5, cases rules 89 and D10.
#include "reckon/mixed_limit.h"

#include <boost/test/unit_test.hpp>

#include "flyable.h"

using namespace definitions;
using flyable::kit;
using support::had;

BOOST_AUTO_TEST_SUITE(mixed_limit)

namespace {

const logbook::Part disc = support::part("DX-1", "D-1");
const std::string disc_life = "limit:DX-1 D-1";

logbook::Count full(const std::string& amount) {
  return support::count(logbook::CounterKind::full_cycles, amount);
}
logbook::Count abbreviated(const std::string& amount) {
  return support::count(logbook::CounterKind::abbreviated_cycles, amount);
}
logbook::MixedLimit mix(const std::string& of_full, const std::string& of_abbreviated) {
  logbook::MixedLimit fact;
  fact.scope = logbook::PartKind{{"DX-1"}};
  for (const logbook::Count& whole : {full(of_full), abbreviated(of_abbreviated)}) {
    fact.parts.push_back({whole.counter, whole.amount});
  }
  return fact;
}

// A book that is ready to fly, with a disc that has used so much.
support::Book with_disc(std::vector<logbook::Had> with) {
  support::Book book = flyable::complete_book();
  book.say("2025-03-01", support::fitted(disc, {kit, "disc", ""}, std::move(with)));
  return book;
}
support::Book with_used(const std::string& of_full, const std::string& of_abbreviated) {
  support::Book book = with_disc({had(full(of_full)), had(abbreviated(of_abbreviated))});
  book.say("2025-03-01", mix("5000", "20000"));
  return book;
}
reckon::Item disc_item(const support::Book& book) {
  const AsOf asked(book, "2025-03-10");
  return life_item(asked, disc_life);
}
bool is_stopped(const support::Book& book) {
  return flyable::ask(book, "2025-03-10", {}).answer == reckon::Answer::no;
}

}  // namespace

BOOST_AUTO_TEST_CASE(what_is_left_is_told_at_the_mix_so_far) {  // rules 89
  const reckon::Item item = disc_item(with_used("2000", "8000"));
  BOOST_TEST(text(item.sides.at(0).left) == "500");
  BOOST_TEST(text(item.sides.at(1).left) == "2000");
  BOOST_TEST(item.sides.at(0).life_used->in_ten_thousandths() == 8000);
  BOOST_TEST(text(item.state) == "ok");
}

BOOST_AUTO_TEST_CASE(a_counter_that_was_not_used_is_told_as_if_it_went_on_alone) {
  const reckon::Item item = disc_item(with_used("2000", "0"));
  BOOST_TEST(text(item.sides.at(0).left) == "3000");
  BOOST_TEST(text(item.sides.at(1).left) == "12000");
  const reckon::Item fresh = disc_item(with_used("0", "0"));
  BOOST_TEST(text(fresh.sides.at(0).left) == "5000");
  BOOST_TEST(text(fresh.sides.at(1).left) == "20000");
}

BOOST_AUTO_TEST_CASE(at_exactly_one_it_is_due_unless_it_must_be_exceeded) {
  BOOST_TEST(text(disc_item(with_used("2500", "10000")).state) == "due");
  BOOST_TEST(is_stopped(with_used("2500", "10000")));
  support::Book book = with_disc({had(full("2500")), had(abbreviated("10000"))});
  logbook::MixedLimit exceeding = mix("5000", "20000");
  exceeding.when_exceeding = true;
  book.say("2025-03-01", exceeding);
  BOOST_TEST(text(disc_item(book).state) == "soon");
  BOOST_TEST(is_stopped(book));  // a trip would exceed it
}

BOOST_AUTO_TEST_CASE(past_one_it_is_over_though_no_counter_is_past_its_own) {
  const reckon::Item item = disc_item(with_used("2600", "10000"));
  BOOST_TEST(text(item.state) == "over");
  BOOST_TEST(item.sides.at(0).left->raw() < 0);
  BOOST_TEST(item.sides.at(1).left->raw() < 0);
}

BOOST_AUTO_TEST_CASE(a_trip_is_held_against_the_sum) {
  // One full and one abbreviated cycle use 5/20000; so much is left, then one less.
  BOOST_TEST(!is_stopped(with_used("2500", "9995")));
  BOOST_TEST(is_stopped(with_used("2500", "9996")));
  const reckon::Ready no = flyable::ask(with_used("2500", "9996"), "2025-03-10", {});
  const reckon::Obstacle& obstacle = no.obstacles.at(0);
  BOOST_TEST(text(std::optional(obstacle.left)) == "1");
  BOOST_TEST(text(std::optional(obstacle.needed)) == "1.25");
}

BOOST_AUTO_TEST_CASE(a_counter_that_nobody_knows_leaves_it_open_unless_another_is_over) {
  support::Book book = with_disc({had(full("2000"))});
  book.say("2025-03-01", mix("5000", "20000"));
  const reckon::Item item = disc_item(book);
  BOOST_TEST(text(item.state) == "not known");
  BOOST_CHECK(item.lack == reckon::Lack::total);
  BOOST_CHECK(governing(item).clock == reckon::Clock(abbreviated("1").counter));
  BOOST_CHECK(flyable::ask(book, "2025-03-10", {}).answer == reckon::Answer::not_known);
  support::Book over = with_disc({had(full("5001"))});
  over.say("2025-03-01", mix("5000", "20000"));
  BOOST_TEST(text(disc_item(over).state) == "over");
}

BOOST_AUTO_TEST_CASE(of_several_limits_the_first_to_run_out_governs) {
  support::Book book = with_used("2000", "8000");
  book.say("2025-03-01", limit(disc, {count(full("2001"), Basis::new_)}));
  const AsOf asked(book, "2025-03-10");
  const std::vector<reckon::Item> items = asked.due(kit);
  BOOST_TEST(left(items.at(0)) == "1");
  BOOST_CHECK(items.at(0).mixed == nullptr);
}

BOOST_AUTO_TEST_CASE(it_takes_the_place_of_another_limit) {
  support::Book book = with_disc({had(full("2000")), had(abbreviated("8000"))});
  const logbook::EntryId old =
      book.say("2025-03-01", limit(logbook::PartKind{{"DX-1"}}, {count(full("900"), Basis::new_)}));
  book.say(instead("2025-03-02", mix("5000", "20000"), old));
  BOOST_TEST(text(disc_item(book).state) == "ok");
}

BOOST_AUTO_TEST_CASE(on_another_model_it_does_not_hold) {
  support::Book book = with_disc({had(full("0")), had(abbreviated("0"))});
  logbook::MixedLimit here = mix("5000", "20000");
  here.on_model = logbook::ModelName{"Larkwing 5"};
  logbook::MixedLimit elsewhere = mix("4000", "9000");
  elsewhere.on_model = logbook::ModelName{"Larkwing 6"};
  book.say("2025-03-01", is_model(support::aircraft("ZZ-MOB"), "Larkwing 6"));
  book.say("2025-03-01", here);
  book.say("2025-03-01", elsewhere);
  BOOST_TEST(text(disc_item(book).sides.at(0).limit) == "5000");
}

BOOST_AUTO_TEST_CASE(on_several_models_the_shorter_stays_and_fractions_are_not_known) {
  const logbook::Aircraft other = support::aircraft("ZZ-MOB");
  support::Book book = with_disc({had(full("0")), had(abbreviated("0"))});
  for (const auto& [model, whole] : {std::pair("Larkwing 5", "5000"), {"Larkwing 6", "4000"}}) {
    logbook::MixedLimit there = mix(whole, "20000");
    there.on_model = logbook::ModelName{model};
    book.say("2025-03-01", there);
  }
  book.say("2025-03-01", is_model(other, "Larkwing 6"));
  book.say("2025-03-01", support::forward(other, "10.0"));
  book.say("2025-03-02", support::removed(disc, {kit, "disc", ""}));
  book.say("2025-03-02", support::fitted(disc, {other, "disc", ""}));
  const logbook::Scope scope = logbook::PartKind{{"DX-1"}};
  support::Book by_fractions = book;
  by_fractions.say("2025-03-03", logbook::SharesByFractions{scope, std::nullopt});
  const AsOf open(by_fractions, "2025-03-10");
  for (const reckon::Item& item : open.lives()) {
    const bool is_open = item.lack == reckon::Lack::not_shareable;
    BOOST_TEST(is_open == (item.mixed != nullptr));
  }
  book.say("2025-03-03", logbook::ShorterLimitStays{scope, {}, std::nullopt});
  const AsOf stays(book, "2025-03-10");
  BOOST_TEST(stays.lives().size() == 3U);  // both limits, and the engine on condition
}

BOOST_AUTO_TEST_SUITE_END()
