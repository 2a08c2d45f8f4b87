// Due points that are stated by the hours of another thing, and what the history of a task says of
// sides that not every definition of it had (design 6; where nothing else is named, derived from
// it).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/task_events.h"

using namespace definitions;
using support::day;

BOOST_AUTO_TEST_SUITE(due_points)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine first_engine = support::engine("TS-40", "E-1");
const logbook::Engine second_engine = support::engine("TS-40", "E-2");
const logbook::Part part = support::part("PN-X", "X-1");

logbook::AtAirframe at_airframe(const std::string& hours) { return {support::hours(hours)}; }
logbook::AtEngine at_engine(const std::string& hours) { return {support::hours(hours)}; }

support::Book kit_at(const std::string& airframe) {
  support::Book book;
  book.say("2025-01-01", support::forward(kit, airframe));
  return book;
}

// ZZ-KIT of 1000.0 h with the first engine, of 300.0 h; the second, of 2000.0 h, is in store.
support::Book with_engines() {
  support::Book book = kit_at("1000.0");
  book.say("2025-01-01", support::forward(first_engine, {support::had_hours("300.0")}));
  book.say("2025-01-01", support::forward(second_engine, {support::had_hours("2000.0")}));
  book.say("2025-01-01", support::fitted(first_engine, {kit, "engine 1", ""}));
  return book;
}

void exchange_engines(support::Book& book, const std::string& on) {
  book.say(on, support::removed(first_engine, {kit, "engine 1", ""}));
  book.say(on, support::fitted(second_engine, {kit, "engine 1", ""}));
}

reckon::Item check_on(const support::Book& book, const std::string& as_of) {
  const AsOf asked(book, as_of);
  return due_item(asked, kit, "task:check");
}

}  // namespace

// At 1010.0 h of the airframe the part had 300.0 h: 1050.0 of the airframe is 340.0 of its own.
BOOST_AUTO_TEST_CASE(a_point_by_the_airframe_to_which_the_part_comes_later) {
  support::Book book = kit_at("1000.0");
  book.say("2025-01-01", support::forward(part, {support::had_hours("300.0")}));
  book.say("2025-01-01", task("check", part, {hours("100.0")}));
  book.say("2025-01-02", next_due("check", part, {at_airframe("1050.0")}));
  {
    const AsOf asked(book, "2025-01-02");
    const auto items = reckon::due(asked.histories, asked.standing, kit, {});
    BOOST_TEST(items.empty());
  }
  book.say("2025-01-03", support::flew(kit, "10.0"));
  book.say("2025-01-04", support::fitted(part, {kit, "hook", ""}));
  book.say("2025-01-05", support::flew(kit, "15.0"));
  const reckon::Item item = check_on(book, "2025-01-05");
  BOOST_TEST(text(governing(item).due_at) == "340.0");
  BOOST_TEST(left(item) == "25.0");
}

// 1050.0 of the engine in which it was is 250.0 of its own, wherever it is later.
BOOST_AUTO_TEST_CASE(a_point_by_the_engine_that_it_was_in) {
  support::Book book = with_engines();
  book.say("2025-01-01",
           support::fitted(part, {first_engine, "disc", ""}, {support::had_hours("200.0")}));
  book.say("2025-01-01", task("check", part, {hours("100.0")}));
  book.say("2025-01-01", next_due("check", part, {at_engine("350.0")}));
  book.say("2025-01-02", support::flew(kit, "20.0"));
  book.say("2025-01-03", support::removed(part, {first_engine, "disc", ""}));
  exchange_engines(book, "2025-01-03");
  book.say("2025-01-03", support::fitted(part, {second_engine, "disc", ""}));
  book.say("2025-01-04", support::flew(kit, "10.0"));
  const reckon::Item item = check_on(book, "2025-01-04");
  BOOST_TEST(text(governing(item).due_at) == "250.0");
  BOOST_TEST(left(item) == "20.0");
}

// 340.0 of the engine that was aboard is 1040.0 of the airframe.
BOOST_AUTO_TEST_CASE(a_point_of_an_aircraft_by_the_engine_that_was_aboard) {
  support::Book book = with_engines();
  book.say("2025-01-01", task("check", kit, {hours("100.0")}));
  book.say("2025-01-01", next_due("check", kit, {at_engine("340.0")}));
  book.say("2025-01-02", support::flew(kit, "20.0"));
  BOOST_TEST(left(check_on(book, "2025-01-02")) == "20.0");
  exchange_engines(book, "2025-01-03");
  book.say("2025-01-04", support::flew(kit, "5.0"));
  const reckon::Item item = check_on(book, "2025-01-04");
  BOOST_TEST(text(governing(item).due_at) == "1040.0");
  BOOST_TEST(left(item) == "15.0");
  // Said on the day of the exchange, it is by the engine that came: at 1020.0 h it had 2000.0 h.
  book.say("2025-01-03", next_due("check", kit, {at_engine("2040.0")}));
  BOOST_TEST(text(governing(check_on(book, "2025-01-04")).due_at) == "1060.0");
}

// Off again by the end of the day: what it was on when the day began.
BOOST_AUTO_TEST_CASE(a_point_said_on_the_day_of_the_removal_is_by_what_it_was_on) {
  support::Book book = with_engines();
  book.say("2025-01-01", task("check", first_engine, {hours("100.0")}));
  book.say("2025-01-02", support::flew(kit, "20.0"));
  book.say("2025-01-03", support::removed(first_engine, {kit, "engine 1", ""}));
  book.say("2025-01-03", next_due("check", first_engine, {at_airframe("1050.0")}));
  book.say("2025-01-04", support::fitted(first_engine, {kit, "engine 1", ""}));
  BOOST_TEST(left(check_on(book, "2025-01-04")) == "30.0");
}

BOOST_AUTO_TEST_CASE(a_point_by_an_airframe_whose_hours_nobody_knows_is_not_known) {
  support::Book book;
  logbook::BringsForward forward = support::forward(logbook::Thing(kit), {});
  forward.unknown = {logbook::Unknown{}};
  book.say("2025-01-01", forward);
  book.say("2025-01-01", support::fitted(part, {kit, "hook", ""}, {support::had_hours("0.0")}));
  book.say("2025-01-01", task("check", part, {hours("100.0")}));
  book.say("2025-01-01", next_due("check", part, {at_airframe("1050.0")}));
  const reckon::Item item = check_on(book, "2025-01-02");
  BOOST_TEST(text(item.state) == "not known");
  BOOST_CHECK(item.lack == reckon::Lack::total_at_start);
  // Done at a total that cannot be held against anything, it counts from what was flown.
  book.say("2025-01-03", support::done("check", part, "1000.0"));
  book.say("2025-01-04", support::flew(kit, "10.0"));
  BOOST_TEST(left(check_on(book, "2025-01-04")) == "90.0");
}

// What was used since is known, though nobody knows with how much the engine began.
BOOST_AUTO_TEST_CASE(a_stated_total_of_an_engine_whose_hours_nobody_knows_moves_nothing) {
  support::Book book = kit_at("1000.0");
  logbook::BringsForward forward = support::forward(logbook::Thing(first_engine), {});
  forward.unknown = {logbook::Unknown{}};
  book.say("2025-01-01", forward);
  book.say("2025-01-01", support::fitted(first_engine, {kit, "engine 1", ""}));
  book.say("2025-01-01", task("check", first_engine, {hours("50.0")}));
  logbook::Done done = support::done("check", first_engine);
  done.engine = support::hours("400.0");
  book.say("2025-01-02", done);
  book.say("2025-01-03", support::flew(kit, "10.0"));
  BOOST_TEST(left(check_on(book, "2025-01-03")) == "40.0");
}

BOOST_AUTO_TEST_CASE(a_new_aircraft_was_at_nothing_before_it_came_on_record) {
  support::Book book;
  book.say("2025-01-10", support::forward(kit, "0.0"));
  book.say("2025-01-10", task("check", kit, {hours("100.0")}));
  book.say("2025-01-05", support::done("check", kit));
  book.say("2025-01-11", support::flew(kit, "30.0"));
  BOOST_TEST(left(check_on(book, "2025-01-11")) == "70.0");
}

// What is brought forward holds at the start of its day, which is the end of the day before.
BOOST_AUTO_TEST_CASE(the_night_before_it_came_on_record_it_had_what_it_came_with) {
  support::Book book = kit_at("1000.0");
  book.say("2025-01-01", limit(kit, {after(hours("50.0"), "2024-12-31")}));
  book.say("2025-01-01", limit(kit, {after(hours("60.0"), "2024-12-30")}));
  book.say("2025-01-02", support::flew(kit, "20.0"));
  const AsOf asked(book, "2025-01-02");
  std::vector<std::string> told;
  for (const reckon::Item& item : asked.due(kit)) {
    told.push_back(item.sides.at(0).left ? text(item.sides.at(0).left) : text(item.state));
  }
  std::sort(told.begin(), told.end());
  const std::vector<std::string> wanted{"30.0", "not known"};
  BOOST_TEST(told == wanted, boost::test_tools::per_element());
}

// Work of the day on which a used part was fitted, written before it: it had what it came with.
BOOST_AUTO_TEST_CASE(on_the_day_of_its_fitting_it_had_what_it_came_with) {
  support::Book book = kit_at("1000.0");
  book.say("2025-01-01", task("check", part, {hours("100.0")}));
  book.say("2025-01-02", support::done("check", part));
  book.say("2025-01-02", support::fitted(part, {kit, "hook", ""}, {support::had_hours("300.0")}));
  book.say("2025-01-03", support::flew(kit, "30.0"));
  const reckon::Item item = check_on(book, "2025-01-03");
  BOOST_TEST(left(item) == "70.0");
  BOOST_TEST(text(governing(item).due_at) == "400.0");
}

// Between two flights the engine's total tells its place, as the airframe's does.
BOOST_AUTO_TEST_CASE(an_engines_total_tells_where_in_the_day_the_work_was) {
  support::Book book = with_engines();
  book.say("2025-01-01", task("check", kit, {hours("50.0")}));
  book.say("2025-01-02", support::flew(kit, "1.0"));
  book.say("2025-01-02", support::flew(kit, "2.0"));
  support::Book untold = book;
  logbook::Done done = support::done("check", kit);
  untold.say("2025-01-02", done);
  BOOST_TEST(left(check_on(untold, "2025-01-02")) == "50.0");
  done.engine = support::hours("301.0");
  book.say("2025-01-02", done);
  BOOST_TEST(left(check_on(book, "2025-01-02")) == "48.0");
}

BOOST_AUTO_TEST_CASE(a_next_due_of_one_side_leaves_the_other_where_it_was) {
  support::Book book = kit_at("1000.0");
  book.say("2025-01-01", task("check", kit, {hours("300.0"), period(12, PeriodUnit::months)}));
  book.say("2025-02-02", support::done("check", kit));
  book.say("2025-02-03", next_due("check", kit, {at_airframe("1400.0")}));
  const reckon::Item item = check_on(book, "2025-02-03");
  BOOST_TEST(text(item.sides.at(0).due_at) == "1400.0");
  BOOST_TEST(text(item.sides.at(1).last_legal) == "2026-02-02");
}

BOOST_AUTO_TEST_CASE(a_next_due_by_a_day_that_no_interval_has_is_a_side_of_its_own) {
  support::Book book = kit_at("1000.0");
  book.say("2025-01-01", task("check", kit, {hours("300.0")}));
  book.say("2025-02-02", support::done("check", kit));
  book.say("2025-02-03", next_due("check", kit, {day("2025-09-01")}));
  const reckon::Item item = check_on(book, "2025-02-03");
  BOOST_REQUIRE_EQUAL(item.sides.size(), 2U);
  BOOST_TEST(text(item.sides.at(0).due_at) == "1300.0");
  BOOST_TEST(text(item.sides.at(1).last_legal) == "2025-09-01");
}

// A next due says itself from where it was reckoned: nothing of the excess stands beside it.
BOOST_AUTO_TEST_CASE(a_stated_point_shows_no_excess) {
  support::Book book = kit_at("1000.0");
  logbook::Task check = task("check", kit, {hours("100.0")});
  check.excess_counts = true;
  book.say("2025-01-01", check);
  book.say("2025-01-01", support::done("check", kit));
  book.say("2025-01-02", support::flew(kit, "104.0"));
  book.say("2025-01-03", support::done("check", kit));
  BOOST_TEST(text(governing(check_on(book, "2025-01-03")).excess) == "4.0");
  book.say("2025-01-04", next_due("check", kit, {at_airframe("1190.0")}));
  const reckon::Item item = check_on(book, "2025-01-04");
  BOOST_TEST(text(governing(item).due_at) == "1190.0");
  BOOST_CHECK(!governing(item).excess);
}

// 1000.0 and 12 months of the definition of that day; the hours that a revision brought count back
// to what was done before it: due at 1100.0, done at 1095.0, next due at 1200.0.
BOOST_AUTO_TEST_CASE(an_interval_that_a_revision_brought_counts_from_what_was_done_before) {
  support::Book book = kit_at("1000.0");
  logbook::Task check = task("check", kit, {period(6, PeriodUnit::months)});
  check.next_from = logbook::NextFrom::due;
  const logbook::EntryId old = book.say("2025-01-01", check);
  book.say("2025-01-01", support::done("check", kit));
  book.say("2025-02-01", support::flew(kit, "95.0"));
  book.say("2025-02-02", support::done("check", kit));
  check.every.push_back(hours("100.0"));
  book.say(instead("2025-03-01", check, old));
  const reckon::Item item = check_on(book, "2025-03-01");
  BOOST_TEST(text(item.sides.at(0).last_legal) == "2026-01-01");
  BOOST_TEST(text(item.sides.at(1).due_at) == "1200.0");
}

// Terms since new or since it was made are limits beside the intervals, whatever their order.
BOOST_AUTO_TEST_CASE(terms_on_other_bases_are_no_intervals) {
  support::Book book = kit_at("1000.0");
  logbook::AircraftIs is = is_model(kit, "Larkwing 5");
  is.made = day("2020-01-10");
  book.say("2025-01-01", is);
  book.say("2025-01-01", task("check", kit,
                              {hours("5000.0", Basis::new_), hours("100.0"),
                               period(10, PeriodUnit::years, Basis::manufacture),
                               period(12, PeriodUnit::months)}));
  book.say("2025-02-02", support::done("check", kit));
  const reckon::Item item = check_on(book, "2025-02-03");
  BOOST_TEST(text(item.sides.at(0).left) == "4000.0");
  BOOST_TEST(text(item.sides.at(1).left) == "100.0");
  BOOST_TEST(text(item.sides.at(2).last_legal) == "2030-01-10");
  BOOST_TEST(text(item.sides.at(3).last_legal) == "2026-02-02");
}

BOOST_AUTO_TEST_SUITE_END()
