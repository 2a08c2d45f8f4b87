#include "reckon/ready.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "flyable.h"

using namespace definitions;
using namespace flyable;
using reckon::Answer;
using reckon::Ready;
using reckon::Trip;

BOOST_AUTO_TEST_SUITE(ready)

namespace {

Trip trip_of(const std::string& hours) {
  Trip trip;
  trip.hours = support::hours(hours);
  return trip;
}

std::string allowed(const Ready& ready) {
  return ready.allowed_hours ? quantity::say(quantity::floor_to_seconds(*ready.allowed_hours))
                             : "not known";
}

std::string said(Answer answer) {
  return answer == Answer::yes ? "yes" : answer == Answer::no ? "no" : "not known";
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_first_item_that_bites_stops_the_trip) {  // records S40
  support::Book book = complete_book();
  add_task(book, "100-hour check", {hours("100.0")});
  add_task(book, "directive work", {hours("50.0")});
  add_task(book, "blade check", {hours("88.2")});
  book.say("2025-03-09", support::flew(kit, "47.2", {support::starts(1), support::landings(1)}));
  const Ready ready = ask(book, "2025-03-10", trip_of("3.0"));
  BOOST_TEST(said(ready.answer) == "no");
  BOOST_TEST(allowed(ready) == "2.8");
  BOOST_REQUIRE(ready.obstacles.size() == 1U);
  BOOST_TEST(ready.obstacles.front().item.task->name.text == "directive work");
  BOOST_TEST(text(ready.obstacles.front().left) == "2.8");
  BOOST_TEST(text(ready.obstacles.front().needed) == "3.0");
  BOOST_TEST(!ready.obstacles.front().is_passed_already);
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("2.8")).answer) == "yes");
}

BOOST_AUTO_TEST_CASE(a_complete_record_says_yes) {
  const Ready ready = ask(complete_book(), "2025-03-10", trip_of("1.0"));
  BOOST_TEST(said(ready.answer) == "yes");
  BOOST_TEST(ready.missing.empty());
  BOOST_TEST(text(ready.allowed_until) == "2025-06-30");
}

BOOST_AUTO_TEST_CASE(a_trip_may_end_on_the_limit_and_none_may_start_there) {
  support::Book book = complete_book();
  add_task(book, "check", {hours("10.0")});
  book.say("2025-03-02", support::flew(kit, "7.0", {support::starts(1), support::landings(1)}));
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("3.0")).answer) == "yes");
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("3.01")).answer) == "no");
  book.say("2025-03-03", support::flew(kit, "3.0", {support::starts(1), support::landings(1)}));
  const Ready at_zero = ask(book, "2025-03-10", {});
  BOOST_TEST(said(at_zero.answer) == "no");
  BOOST_TEST(allowed(at_zero) == "0.0");
  BOOST_TEST(!at_zero.obstacles.front().is_passed_already);
}

BOOST_AUTO_TEST_CASE(the_last_legal_day_may_be_flown_and_the_next_may_not) {
  support::Book book = complete_book();
  book.say("2025-06-20", reviewed(kit));
  BOOST_TEST(said(ask(book, "2025-06-30", trip_of("1.0")).answer) == "yes");
  const Ready past = ask(book, "2025-07-01", trip_of("1.0"));
  BOOST_TEST(said(past.answer) == "no");
  BOOST_TEST(past.obstacles.front().is_passed_already);
  BOOST_TEST(allowed(past) == "0.0");
}

BOOST_AUTO_TEST_CASE(a_trip_must_end_on_the_last_legal_day_at_the_latest) {
  support::Book book = complete_book();
  book.say("2025-06-20", reviewed(kit));
  Trip trip = trip_of("1.0");
  trip.by = support::day("2025-06-30");
  BOOST_TEST(said(ask(book, "2025-06-28", trip).answer) == "yes");
  trip.by = support::day("2025-07-01");
  const Ready late = ask(book, "2025-06-28", trip);
  BOOST_TEST(said(late.answer) == "no");
  BOOST_TEST(text(late.obstacles.front().left) == "2");
  BOOST_TEST(text(late.obstacles.front().needed) == "3");
}

BOOST_AUTO_TEST_CASE(counts_stop_a_trip_as_hours_do) {
  support::Book book = complete_book();
  book.say("2025-03-01", limit(engine, {count(support::starts(902), Basis::new_)}));
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("1.0")).answer) == "yes");
  Trip trip = trip_of("1.0");
  trip.starts = quantity::whole_cycles(3);
  const Ready ready = ask(book, "2025-03-10", trip);
  BOOST_TEST(said(ready.answer) == "no");
  BOOST_TEST(allowed(ready) == "0.0");
}

BOOST_AUTO_TEST_CASE(cycles_not_flown_yet_are_the_dearest_of_late_or_one_full_cycle) {
  using logbook::CounterKind;
  support::Book book = complete_book();
  const auto cycles = [](const std::string& amount) {
    return support::count(CounterKind::gas_generator_cycles, amount);
  };
  logbook::BringsForward disc = support::forward(
      support::part("PN-D", "D-1"), {support::had_hours("10.0"), support::had(cycles("100"))});
  book.say("2025-03-01", disc);
  book.say("2025-03-01", support::fitted(disc.thing, {engine, "disc", ""}));
  book.say("2025-03-01",
           limit(disc.thing.index() == 2 ? logbook::Scope{std::get<logbook::Part>(disc.thing)}
                                         : logbook::Scope{engine},
                 {count(cycles("102.5"), Basis::new_)}));
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("1.0")).answer) == "yes");
  book.say("2025-03-02",
           support::flew(kit, "1.0", {support::starts(1), support::landings(1), cycles("1.4")}));
  const Ready ready = ask(book, "2025-03-10", trip_of("1.0"));
  BOOST_TEST(said(ready.answer) == "no");
  BOOST_REQUIRE(!ready.obstacles.empty());
  BOOST_TEST(text(ready.obstacles.front().left) == "1.1");
  BOOST_TEST(text(ready.obstacles.front().needed) == "1.4");
}

BOOST_AUTO_TEST_CASE(what_the_meter_shows_beyond_the_book_is_counted_in) {
  support::Book book = complete_book();
  add_task(book, "check", {hours("10.0")});
  book.say("2025-03-02", support::counts_from(kit, "collective"));
  book.say("2025-03-03", support::flew(kit, "5.0", {support::starts(1), support::landings(1)},
                                       {support::run("collective", "100.0", "105.0")}));
  Trip trip = trip_of("3.0");
  trip.meter = logbook::MeterReading{{"collective"}, support::meter("107.3")};
  const Ready ready = ask(book, "2025-03-10", trip);
  BOOST_TEST(said(ready.answer) == "no");
  BOOST_TEST(allowed(ready) == "2.7");
  BOOST_REQUIRE(ready.gap.has_value());
  BOOST_TEST(ready.gap->count() == support::service("2.3").count());
  BOOST_TEST(text(ready.obstacles.front().left) == "2.7");
  trip.meter->reading = support::meter("104.0");
  const Ready below = ask(book, "2025-03-10", trip);
  BOOST_TEST(below.gap->is_negative());
  BOOST_TEST(said(below.answer) == "yes");
}

BOOST_AUTO_TEST_CASE(a_factor_makes_the_trip_longer_in_service) {
  support::Book book = complete_book();
  book.say("2025-03-01", support::counts_from(kit, "collective", "1.12"));
  add_task(book, "check", {hours("11.2")});
  BOOST_TEST(allowed(ask(book, "2025-03-10", {})) == "10.0");
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("10.0")).answer) == "yes");
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("10.01")).answer) == "no");
}

BOOST_AUTO_TEST_CASE(flights_that_may_be_missing_are_estimated) {
  support::Book book = complete_book();
  logbook::Plan plan;
  plan.aircraft = kit;
  plan.use = logbook::Rate{support::hours("1.2"), logbook::Per::day};
  book.say("2025-03-01", plan);
  book.say("2025-03-01", support::flew(kit, "1.0", {support::starts(1), support::landings(1)}));
  const Ready ready = ask(book, "2025-03-14", trip_of("1.0"));
  BOOST_TEST(text(ready.last_flight) == "2025-03-01");
  BOOST_REQUIRE(ready.may_be_missing.has_value());
  BOOST_TEST(ready.may_be_missing->count() == support::service("15.6").count());
}

BOOST_AUTO_TEST_CASE(no_beats_not_known_and_not_known_beats_yes) {
  support::Book book = complete_book();
  add_task(book, "check", {hours("10.0")});
  book.say("2025-03-02", task("never done", kit, {hours("10.0")}));
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("1.0")).answer) == "not known");
  BOOST_TEST(allowed(ask(book, "2025-03-10", trip_of("1.0"))) == "not known");
  BOOST_TEST(said(ask(book, "2025-03-10", trip_of("11.0")).answer) == "no");
}

BOOST_AUTO_TEST_SUITE_END()
