// The order within a day, late flights, and what stated totals are worth (design 4).
#include <boost/test/unit_test.hpp>

#include "told.h"

using support::Book;
using support::done;
using support::fitted;
using support::flew;
using support::forward;
using support::had_hours;
using support::landings;
using support::removed;
using support::run;
using told::Told;

BOOST_AUTO_TEST_SUITE(order)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Aircraft mob = support::aircraft("ZZ-MOB");
const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::Part part = support::part("PN-4411", "B-88");

Book kit_book() {
  Book book;
  book.say("2026-01-01", forward(kit, "4300.0"));
  book.say("2026-01-01", support::counts_from(kit, "collective"));
  return book;
}

}  // namespace

BOOST_AUTO_TEST_CASE(work_comes_after_the_flights_written_before_it) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0"));
  const auto work = book.say("2026-03-04", done("100-hour inspection", kit));
  book.say("2026-03-04", flew(kit, "2.0"));
  BOOST_TEST(Told(book, "2026-03-04").hours_at(kit, work) == "4301.0");
}

BOOST_AUTO_TEST_CASE(flags_settle_the_place_of_work) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0"));
  auto first = done("100-hour inspection", kit);
  first.before_the_first_flight = true;
  auto last = done("annual inspection", kit);
  last.after_the_last_flight = true;
  const auto before = book.say("2026-03-04", first);
  const auto after = book.say("2026-03-04", last);
  book.say("2026-03-04", flew(kit, "2.0"));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours_at(kit, before) == "4300.0");
  BOOST_TEST(told.hours_at(kit, after) == "4303.0");
}

BOOST_AUTO_TEST_CASE(flights_are_sorted_by_the_source_meter) {
  Book book = kit_book();
  const auto later =
      book.say("2026-03-04", flew(kit, "2.0", {}, {run("collective", "11.0", "13.0")}));
  const auto earlier =
      book.say("2026-03-04", flew(kit, "1.0", {}, {run("collective", "10.0", "11.0")}));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours_at(kit, earlier) == "4301.0");
  BOOST_TEST(told.hours_at(kit, later) == "4303.0");
}

BOOST_AUTO_TEST_CASE(flights_without_a_meter_are_sorted_by_clock) {
  Book book = kit_book();
  auto afternoon = flew(kit, "2.0");
  afternoon.took_off = support::clock("15:00-07:00");
  auto morning = flew(kit, "1.0");
  morning.took_off = support::clock("09:00-07:00");
  const auto later = book.say("2026-03-04", afternoon);
  const auto earlier = book.say("2026-03-04", morning);
  logbook::Said at_noon;
  at_noon.day = support::day("2026-03-04");
  at_noon.time = support::clock("12:00-07:00");
  at_noon.fact = done("daily check", kit);
  const auto noon = book.say(at_noon);
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours_at(kit, earlier) == "4301.0");
  BOOST_TEST(told.hours_at(kit, noon) == "4301.0");
  BOOST_TEST(told.hours_at(kit, later) == "4303.0");
}

BOOST_AUTO_TEST_CASE(on_the_day_of_a_new_meter_its_readings_come_after_the_old_ones) {
  Book book = kit_book();
  const auto late = book.say("2026-03-04", flew(kit, "1.0", {}, {run("collective", "0.0", "1.0")}));
  const auto early =
      book.say("2026-03-04", flew(kit, "2.0", {}, {run("collective", "6118.8", "6120.8")}));
  book.say("2026-03-04",
           logbook::MeterChanged{
               kit, {"collective"}, support::meter("6120.8"), support::meter("0.0"), std::nullopt});
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours_at(kit, early) == "4302.0");
  BOOST_TEST(told.hours_at(kit, late) == "4303.0");
}

BOOST_AUTO_TEST_CASE(a_stated_total_places_the_work) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0"));
  book.say("2026-03-04", flew(kit, "2.0"));
  const auto work = book.say("2026-03-04", done("100-hour inspection", kit, "4301.0"));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours_at(kit, work) == "4301.0");
  BOOST_TEST(told.statement(work) == "4301.0");
}

BOOST_AUTO_TEST_CASE(an_agreed_statement_moves_with_a_late_earlier_flight) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0"));
  const auto work = book.say("2026-03-04", done("100-hour inspection", kit, "4301.0"));
  book.say("2026-03-04", flew(kit, "2.0"));
  const auto late = book.say("2026-03-02", flew(kit, "0.5"));
  const Told told(book, "2026-03-05");
  BOOST_TEST(told.hours_at(kit, work) == "4301.5");
  BOOST_TEST(told.statement(work) == "4301.0, now 4301.5");
  for (const reckon::Statement& one : told.histories.statements()) {
    if (one.entry == work) BOOST_CHECK(one.moved_by == std::optional(late));
  }
}

BOOST_AUTO_TEST_CASE(an_agreed_statement_stays_at_its_flight_when_that_is_corrected) {
  Book book = kit_book();
  const auto flight = book.say("2026-03-04", flew(kit, "1.0"));
  const auto work = book.say("2026-03-04", done("100-hour inspection", kit, "4301.0"));
  book.say("2026-03-04", flew(kit, "2.0"));
  book.correct(flight, "2026-03-04", flew(kit, "1.4"));
  const Told told(book, "2026-03-05");
  BOOST_TEST(told.hours_at(kit, work) == "4301.4");
  BOOST_TEST(told.statement(work) == "4301.0, now 4301.4");
}

BOOST_AUTO_TEST_CASE(a_struck_flight_leaves_the_work_after_the_one_before) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0"));
  const auto flight = book.say("2026-03-04", flew(kit, "2.0"));
  const auto work = book.say("2026-03-04", done("100-hour inspection", kit, "4303.0"));
  book.say("2026-03-04", flew(kit, "4.0"));
  book.strike(flight);
  const Told told(book, "2026-03-05");
  BOOST_TEST(told.hours_at(kit, work) == "4301.0");
  BOOST_TEST(told.statement(work) == "4303.0, now 4301.0");
}

BOOST_AUTO_TEST_CASE(a_statement_that_never_agreed_is_told_so) {  // records S49
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0"));
  const auto work = book.say("2026-03-05", done("100-hour inspection", kit, "4309.0"));
  const Told told(book, "2026-03-05");
  BOOST_TEST(told.hours_at(kit, work) == "4301.0");
  BOOST_TEST(told.statement(work) == "4309.0 against 4301.0");
}

BOOST_AUTO_TEST_CASE(a_statement_in_tenths_agrees_with_a_total_in_minutes) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "0:47"));  // 4300.78
  const auto work = book.say("2026-03-04", done("100-hour inspection", kit, "4300.8"));
  const Told told(book, "2026-03-04");
  for (const reckon::Statement& one : told.histories.statements()) {
    if (one.entry == work) BOOST_TEST(one.agreed_when_written);
  }
}

BOOST_AUTO_TEST_CASE(late_flights_count_for_a_part_on_their_side_of_the_fitting) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0"));
  book.say("2026-03-04", fitted(part, {kit, "servo", "4301.0"}, {had_hours("100.0")}));
  book.say("2026-03-04", flew(kit, "2.0"));
  book.say("2026-03-06", removed(part, {kit, "servo", "4303.0"}));
  book.say("2026-03-07", flew(kit, "8.0"));
  BOOST_TEST(Told(book, "2026-03-08").hours(part) == "102.0");
  book.say("2026-03-03", flew(kit, "0.5"));  // before it was fitted
  BOOST_TEST(Told(book, "2026-03-08").hours(part) == "102.0");
  book.say("2026-03-05", flew(kit, "0.3"));  // while it was fitted
  BOOST_TEST(Told(book, "2026-03-08").hours(part) == "102.3");
  book.say("2026-03-06", flew(kit, "0.7"));  // written after the removal of that day
  const Told told(book, "2026-03-08");
  BOOST_TEST(told.hours(part) == "102.3");
  BOOST_TEST(told.hours(kit) == "4312.5");
}

BOOST_AUTO_TEST_CASE(a_late_flight_by_meter_is_put_before_the_fitting_of_its_day) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.0", {}, {run("collective", "12.0", "13.0")}));
  book.say("2026-03-04", fitted(part, {kit, "servo", "4301.0"}, {had_hours("100.0")}));
  book.say("2026-03-04", flew(kit, "2.0", {}, {run("collective", "13.0", "15.0")}));
  book.say("2026-03-04", flew(kit, "0.5", {}, {run("collective", "11.5", "12.0")}));
  BOOST_TEST(Told(book, "2026-03-04").hours(part) == "102.0");
}

BOOST_AUTO_TEST_CASE(a_stated_engine_total_places_the_work) {
  Book book = kit_book();
  book.say("2026-03-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("1000.0")}));
  book.say("2026-03-04", flew(kit, "1.0"));
  book.say("2026-03-04", flew(kit, "2.0"));
  book.say("2026-03-04", flew(kit, "4.0"));
  auto wash = logbook::EngineEvent{engine, logbook::EventKind::washed, support::hours("1003.0")};
  const auto work = book.say("2026-03-04", wash);
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours_at(engine, work) == "1003.0");
  BOOST_TEST(told.hours_at(kit, work) == "4303.0");
}

BOOST_AUTO_TEST_CASE(two_bases_and_nothing_to_tell_by_is_a_question) {
  Book book = kit_book();
  book.say("2026-03-01", fitted(part, {kit, "servo", ""}, {had_hours("100.0")}));
  book.write_as('M');
  book.hear();
  const auto work = book.say("2026-03-04", removed(part, {kit, "servo", ""}));
  book.write_as('K');
  const auto flight = book.say("2026-03-04", flew(kit, "1.0"));
  const Told early(book, "2026-03-04", reckon::Ambiguous::early);
  const Told late(book, "2026-03-04", reckon::Ambiguous::late);
  BOOST_TEST(early.hours(part) == "100.0");
  BOOST_TEST(late.hours(part) == "101.0");
  BOOST_TEST(early.histories.has_ambiguous_order());
  BOOST_REQUIRE_EQUAL(early.histories.questions().size(), 1U);
  BOOST_TEST(early.histories.questions()[0].class_ == "order within a day");
  BOOST_TEST(early.histories.questions()[0].name == late.histories.questions()[0].name);
  const bool names_both = early.histories.questions()[0].entries.size() == 2;
  BOOST_TEST(names_both);
  BOOST_CHECK(early.histories.mark_of(work) < early.histories.mark_of(flight));
  BOOST_CHECK(late.histories.mark_of(flight) < late.histories.mark_of(work));
}

BOOST_AUTO_TEST_CASE(a_base_that_had_heard_of_the_flight_wrote_after_it) {
  Book book = kit_book();
  book.say("2026-03-01", fitted(part, {kit, "servo", ""}, {had_hours("100.0")}));
  book.say("2026-03-04", flew(kit, "1.0"));
  book.write_as('M');
  book.hear();
  book.say("2026-03-04", removed(part, {kit, "servo", ""}));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours(part) == "101.0");
  BOOST_TEST(!told.histories.has_ambiguous_order());
}

BOOST_AUTO_TEST_CASE(a_statement_is_judged_by_what_its_writer_could_see) {
  Book book = kit_book();
  book.say("2026-03-03", flew(kit, "1.0"));
  book.write_as('M');
  book.hear();
  const auto work = book.say("2026-03-05", done("100-hour inspection", kit, "4301.0"));
  book.write_as('K');
  book.say("2026-03-04", flew(kit, "0.5"));
  const Told told(book, "2026-03-05");
  BOOST_TEST(told.statement(work) == "4301.0, now 4301.5");
}

BOOST_AUTO_TEST_CASE(a_swap_between_two_aircraft_on_one_day_keeps_its_order) {
  Book book = kit_book();
  book.say("2026-01-01", forward(mob, "100.0"));
  book.say("2026-03-01", fitted(part, {kit, "servo", ""}, {had_hours("10.0")}));
  book.say("2026-03-04", flew(mob, "4.0"));
  book.say("2026-03-04", flew(kit, "1.0"));
  book.say("2026-03-04", removed(part, {kit, "servo", ""}));
  book.say("2026-03-04", fitted(part, {mob, "servo", ""}));
  book.say("2026-03-04", flew(kit, "2.0"));
  book.say("2026-03-04", flew(mob, "8.0"));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours(part) == "19.0");
  BOOST_TEST(told.fitting(part) == "8.0");
  BOOST_TEST(told.histories.questions().empty());
}

BOOST_AUTO_TEST_CASE(a_late_flight_before_a_swap_leaves_the_part_in_one_place) {
  Book book = kit_book();
  book.say("2026-01-01", forward(mob, "100.0"));
  book.say("2026-03-01", fitted(part, {kit, "servo", ""}, {had_hours("10.0")}));
  book.say("2026-03-04", flew(kit, "1.0", {}, {run("collective", "12.0", "13.0")}));
  book.say("2026-03-04", removed(part, {kit, "servo", "4301.0"}));
  book.say("2026-03-04", fitted(part, {mob, "servo", "100.0"}));
  book.say("2026-03-04", flew(mob, "8.0"));
  book.say("2026-03-04", flew(kit, "2.0", {}, {run("collective", "10.0", "12.0")}));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours(part) == "21.0");
  BOOST_TEST(told.histories.questions().empty());
}

BOOST_AUTO_TEST_CASE(derived_totals_are_the_sums_of_their_rows_from_any_day) {
  Book book = kit_book();
  book.say("2026-03-03", flew(kit, "1.0", {landings(2)}));
  book.say("2026-03-04", flew(kit, "2.0", {}, {run("collective", "2.0", "4.0")}));
  book.say("2026-03-04", flew(kit, "0.5", {landings(1)}));
  const Told told(book, "2026-03-04");
  const auto derived = told.histories.derived(kit, support::day("2026-03-04"));
  bool has_hours = false;
  for (const logbook::RunningTotal& total : derived.totals) {
    BOOST_CHECK(total.day == support::day("2026-03-04"));
    if (total.key != "hours") continue;
    has_hours = true;
    BOOST_TEST(total.total == support::service("3.5").count());
  }
  BOOST_TEST(has_hours);
  std::int64_t hours = 0;
  for (const logbook::UseRow& row : derived.uses) {
    if (row.key == "hours") hours += row.amount;
  }
  BOOST_TEST(hours == support::service("2.5").count());
}

BOOST_AUTO_TEST_SUITE_END()
