// What is known only as "at least" so much use, and so leaves "at most" so much (design 3 and 7,
// docs/decisions/0004): it is not known whether it is well, and there is no yes.
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "flyable.h"
#include "reckon/ready.h"
#include "reckon/settle.h"

using namespace definitions;
using logbook::CounterKind;
using reckon::Lack;
using reckon::State;
using support::flew;
using support::forward;
using support::had;
using support::had_hours;
using support::starts;

BOOST_AUTO_TEST_SUITE(at_most)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Part part = support::part("PN-4", "B-1");

// ZZ-KIT with a part of 100.0 h and at least so many starts, of 200 that it may have.
struct Fitted : support::Book {
  explicit Fitted(std::int64_t known_starts) {
    say("2025-03-01", forward(kit, "2000.0"));
    logbook::Had some = had(starts(known_starts));
    some.grade = logbook::Grade::at_least;
    say("2025-03-01", forward(part, {had_hours("100.0"), some}));
    say("2025-03-01", support::fitted(part, {kit, "hub", "2000.0"}));
  }
  reckon::Item life(Combine combine) {
    say("2025-03-01", limit(part, {hours("500.0"), count(starts(200))}, combine));
    return life_item(AsOf(*this, "2025-03-10"), "limit:");
  }
};

}  // namespace

BOOST_AUTO_TEST_CASE(a_side_that_does_not_govern_leaves_it_open_too) {
  for (const Combine combine : {Combine::first, Combine::latest}) {
    Fitted book(20);
    const reckon::Item item = book.life(combine);
    BOOST_TEST(text(item.state) == "not known");
    BOOST_CHECK(item.lack == Lack::total_at_least);
    BOOST_TEST(text(item.sides.at(0).state) == "ok");
    BOOST_TEST(text(item.sides.at(1).state) == "not known");
    BOOST_TEST(text(item.sides.at(1).left) == "180");
    BOOST_TEST(item.sides.at(1).left_is_at_most);
  }
}

BOOST_AUTO_TEST_CASE(what_is_reached_for_certain_is_reached) {
  Fitted over(201);
  BOOST_TEST(text(over.life(Combine::first).state) == "over");
  Fitted due(200);
  BOOST_TEST(text(due.life(Combine::first).state) == "due");
  Fitted both(201);
  const reckon::Item latest = both.life(Combine::latest);
  BOOST_TEST(text(latest.state) == "ok");  // 400.0 h are left for certain
}

BOOST_AUTO_TEST_CASE(flights_without_their_starts_leave_a_limit_open) {
  support::Book book;
  book.say("2025-03-01", forward(kit, "2000.0"));
  book.say("2025-03-01", support::fitted(part, {kit, "hub", "2000.0"}, {had_hours("0.0")}));
  book.say("2025-03-01", limit(part, {count(starts(200))}));
  book.say("2025-03-02", flew(kit, "1.0", {starts(2)}));
  BOOST_TEST(text(life_item(AsOf(book, "2025-03-02"), "limit:").state) == "ok");
  book.say("2025-03-03", flew(kit, "1.0"));
  const reckon::Item open = life_item(AsOf(book, "2025-03-03"), "limit:");
  BOOST_TEST(text(open.state) == "not known");
  BOOST_TEST(left(open) == "198");
  // Brought forward, it is known again.
  book.say("2025-03-04", forward(part, {had(starts(5))}));
  const reckon::Item known = life_item(AsOf(book, "2025-03-04"), "limit:");
  BOOST_TEST(text(known.state) == "ok");
  BOOST_TEST(left(known) == "195");
}

BOOST_AUTO_TEST_CASE(a_stated_due_point_is_held_against_at_least_so_much) {
  Fitted book(20);
  book.say("2025-03-01", task("swing", part, {count(starts(50))}));
  book.say("2025-03-02", next_due("swing", part, {starts(60)}));
  const reckon::Item stated = due_item(AsOf(book, "2025-03-10"), kit, "task:swing");
  BOOST_TEST(text(stated.state) == "not known");
  BOOST_TEST(left(stated) == "40");
  BOOST_CHECK(stated.lack == Lack::total_at_least);
  // Once done, the use since then is known for certain.
  book.say("2025-03-03", support::done("swing", part));
  book.say("2025-03-04", flew(kit, "1.0", {starts(3)}));
  const reckon::Item since = due_item(AsOf(book, "2025-03-10"), kit, "task:swing");
  BOOST_TEST(text(since.state) == "ok");
  BOOST_TEST(left(since) == "47");
}

BOOST_AUTO_TEST_CASE(there_is_no_yes_with_any_side_that_is_at_most) {
  support::Book book = flyable::complete_book();
  const logbook::Part hook = support::part("PN-H", "H-1");
  logbook::Had some = had(starts(20));
  some.grade = logbook::Grade::at_least;
  book.say("2025-03-01", forward(hook, {had_hours("100.0"), some}));
  book.say("2025-03-01", support::fitted(hook, {flyable::kit, "cargo hook", ""}));
  book.say("2025-03-01", limit(hook, {hours("900.0"), count(starts(200))}));
  const reckon::Ready ready = flyable::ask(book, "2025-03-10", {});
  BOOST_CHECK(ready.answer == reckon::Answer::not_known);
  BOOST_REQUIRE_EQUAL(ready.missing.size(), 1U);
  const reckon::Missing& missing = ready.missing.front();
  BOOST_CHECK(missing.condition == reckon::Condition::unknown_read);
  BOOST_CHECK(missing.lack == Lack::total_at_least);
  BOOST_CHECK(missing.thing == logbook::Thing(hook));
  BOOST_CHECK(missing.clock == reckon::Clock(starts(1).counter));
}

BOOST_AUTO_TEST_CASE(the_last_legal_day_hides_no_side_that_is_not_known) {
  for (const bool is_at_least : {true, false}) {
    support::Book book = flyable::complete_book();
    const logbook::Part hook = support::part("PN-H", "H-1");
    logbook::Had some = had(starts(20));
    some.grade = logbook::Grade::at_least;
    book.say("2025-03-01", forward(hook, {had_hours("100.0")}));
    if (is_at_least) book.say("2025-03-01", forward(hook, {some}));
    book.say("2025-03-01", support::fitted(hook, {flyable::kit, "cargo hook", ""}));
    book.say("2025-03-01",
             limit(hook, {after(period(9, PeriodUnit::days), "2025-03-01"), count(starts(200))}));
    const reckon::Item item = due_item(AsOf(book, "2025-03-10"), flyable::kit, "limit:PN-H");
    BOOST_TEST(text(item.state) == "due");  // today is its last legal day
    const reckon::Ready ready = flyable::ask(book, "2025-03-10", {});
    BOOST_CHECK(ready.answer == reckon::Answer::not_known);
    BOOST_REQUIRE_EQUAL(ready.missing.size(), 1U);
    BOOST_CHECK(ready.missing.front().lack == (is_at_least ? Lack::total_at_least : Lack::total));
    BOOST_CHECK(ready.missing.front().clock == reckon::Clock(starts(1).counter));
  }
}

BOOST_AUTO_TEST_CASE(of_two_readings_neither_makes_the_other_known) {
  Fitted open(20);
  const reckon::Item at_most = open.life(Combine::first);
  reckon::Item less = at_most;
  less.sides.at(1).left = *at_most.sides.at(1).left - reckon::Figure(quantity::whole_cycles(30));
  less.sides.at(1).left_is_at_most = false;
  less.sides.at(1).state = State::ok;
  less.sides.at(1).lack = Lack::nothing;
  reckon::settle(less);
  for (const auto& [one, other] : {std::pair{at_most, less}, std::pair{less, at_most}}) {
    const auto items = reckon::harsher({one}, {other});
    BOOST_TEST(text(items.front().state) == "not known");
    BOOST_TEST(text(items.front().sides.at(1).left) == "150");
  }
}

BOOST_AUTO_TEST_SUITE_END()
