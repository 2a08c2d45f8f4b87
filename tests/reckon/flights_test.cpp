// Flights and meters: records B1 (S01, S07, S11, S13, S16, S17) and rules 72, 73.
#include <boost/test/unit_test.hpp>

#include "told.h"

using logbook::CounterKind;
using support::Book;
using support::fitted;
using support::flew;
using support::forward;
using support::had;
using support::had_hours;
using support::landings;
using support::run;
using support::starts;
using told::Told;

BOOST_AUTO_TEST_SUITE(flights)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine engine = support::engine("TS-40", "E-1001");

Book kit_book() {
  Book book;
  auto begin = forward(kit, "4321.6", {had(landings(5608)), had(starts(2101))});
  begin.meters = {{{"collective"}, support::meter("1234.5")}};
  book.say("2026-01-01", begin);
  book.say("2026-01-01", support::counts_from(kit, "collective"));
  book.say("2026-01-01", forward(engine, {had_hours("1820.4"), had(starts(2101))}));
  book.say("2026-01-01", fitted(engine, {kit, "engine 1", ""}));
  return book;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_flight_adds_its_hours_starts_and_landings) {  // records S01
  Book book = kit_book();
  book.say("2026-03-04",
           flew(kit, "1.7", {starts(1), landings(3)}, {run("collective", "1234.5", "1236.2")}));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours(kit) == "4323.3");
  BOOST_TEST(told.count(kit, CounterKind::landings) == "5611");
  BOOST_TEST(told.count(kit, CounterKind::starts) == "2102");
  BOOST_TEST(told.hours(engine) == "1822.1");
  BOOST_TEST(told.count(engine, CounterKind::starts) == "2102");
  BOOST_TEST(say(told.histories.meter(kit, {"collective"}, told.histories.now())->reading) ==
             "1236.2");
}

BOOST_AUTO_TEST_CASE(the_day_before_knows_nothing_of_the_flight) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.7", {starts(1), landings(3)}));
  BOOST_TEST(Told(book, "2026-03-03").hours(kit) == "4321.6");
}

BOOST_AUTO_TEST_CASE(a_ground_run_adds_a_start_and_no_hours) {  // records S07, rules 85
  Book book = kit_book();
  book.say("2026-03-04", support::ran(kit, "engine 1", {starts(1)}));
  book.say("2026-03-04", support::tried(kit, "engine 1", 2));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.hours(kit) == "4321.6");
  BOOST_TEST(told.hours(engine) == "1820.4");
  BOOST_TEST(told.count(engine, CounterKind::starts) == "2104");
  BOOST_TEST(told.count(kit, CounterKind::landings) == "5608");
}

BOOST_AUTO_TEST_CASE(what_a_flight_does_not_state_is_at_least) {
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "2.0", {support::flights(3)}));
  const Told told(book, "2026-03-04");
  BOOST_TEST(told.count(kit, CounterKind::landings) == "at least 5611");
  BOOST_TEST(told.count(engine, CounterKind::starts) == "at least 2101");
}

BOOST_AUTO_TEST_CASE(the_larger_of_typed_hours_and_source_meter_counts) {  // design 4
  Book book = kit_book();
  book.say("2026-03-04", flew(kit, "1.3", {}, {run("collective", "1234.5", "1236.0")}));
  book.say("2026-03-05", flew(kit, "1.3", {}, {run("collective", "1236.0", "1237.2")}));
  BOOST_TEST(Told(book, "2026-03-05").hours(kit) == "4324.4");
}

BOOST_AUTO_TEST_CASE(a_clock_nearer_than_a_tenth_does_not_outweigh_the_meter) {
  Book book = kit_book();
  auto flown = flew(kit, "1.7", {}, {run("collective", "1234.5", "1236.2")});
  flown.took_off = support::clock("09:10-07:00");
  flown.landed = support::clock("10:55-07:00");
  book.say("2026-03-04", flown);
  BOOST_TEST(Told(book, "2026-03-04").hours(kit) == "4323.3");
  flown.landed = support::clock("11:10-07:00");
  book.say("2026-03-05", flown);
  BOOST_TEST(Told(book, "2026-03-05").hours(kit) == "4325.3");
}

BOOST_AUTO_TEST_CASE(a_flight_past_midnight_lands_the_next_day) {
  Book book;
  book.say("2026-01-01", forward(kit, "100.0"));
  book.say("2026-01-01", support::counts_from(kit, ""));
  auto flown = flew(kit, "1.0");
  flown.took_off = support::clock("23:30Z");
  flown.landed = support::clock("01:00Z");
  book.say("2026-03-04", flown);
  BOOST_TEST(Told(book, "2026-03-04").hours(kit) == "101.5");
}

BOOST_AUTO_TEST_CASE(a_changed_meter_does_not_move_the_total) {  // records S11
  Book book;
  auto begin = forward(kit, "6120.8");
  begin.meters = {{{"collective"}, support::meter("6120.8")}};
  book.say("2026-01-01", begin);
  book.say("2026-01-01", support::counts_from(kit, "collective"));
  book.say(
      "2026-02-01",
      logbook::MeterChanged{
          kit, {"collective"}, support::meter("6120.8"), support::meter("12.0"), std::nullopt});
  BOOST_TEST(Told(book, "2026-02-01").hours(kit) == "6120.8");
  book.say("2026-03-01", flew(kit, "20.0", {}, {run("collective", "12.0", "32.0")}));
  book.say("2026-04-01", flew(kit, "24.0", {}, {run("collective", "32.0", "56.0")}));
  book.say("2026-05-01", flew(kit, "31.5", {}, {run("collective", "56.0", "87.5")}));
  BOOST_TEST(Told(book, "2026-05-01").hours(kit) == "6196.3");
}

BOOST_AUTO_TEST_CASE(a_dead_meter_leaves_the_total_to_the_clock) {  // records S13, rules 73
  Book book;
  auto begin = forward(kit, "4700.0");
  begin.meters = {{{"collective"}, support::meter("1500.2")}};
  book.say("2026-01-01", begin);
  book.say("2026-01-01", support::counts_from(kit, "collective"));
  book.say("2026-02-01", logbook::MeterLost{kit, {"collective"}, support::meter("1500.2")});
  for (const char* time : {"0:54", "1:12", "0:36", "1:06", "0:48"}) {
    auto flown = flew(kit, time);
    flown.by_clock = true;
    book.say("2026-02-02", flown);
  }
  const Told told(book, "2026-02-02");
  BOOST_TEST(told.hours(kit) == "4704.6");
  BOOST_TEST(say(told.histories.meter(kit, {"collective"}, told.histories.now())->reading) ==
             "1500.2");
}

BOOST_AUTO_TEST_CASE(hours_flown_between_two_meters_stay_in_the_total) {  // rules 72, 73
  for (const bool is_dead_for_a_while : {false, true}) {
    Book book;
    book.say("2026-01-01", forward(kit, "4312.7"));
    book.say("2026-01-01", support::counts_from(kit, "collective"));
    auto by_clock = flew(kit, "1.6");
    by_clock.by_clock = true;
    if (is_dead_for_a_while) book.say("2026-02-01", by_clock);
    book.say(
        "2026-02-02",
        logbook::MeterChanged{
            kit, {"collective"}, support::meter("4312.7"), support::meter("0.0"), std::nullopt});
    book.say("2026-03-01", flew(kit, "20.0", {}, {run("collective", "0.0", "20.0")}));
    book.say("2026-04-01", flew(kit, "23.0", {}, {run("collective", "20.0", "43.0")}));
    book.say("2026-05-01", flew(kit, "18.3", {}, {run("collective", "43.0", "61.3")}));
    BOOST_TEST(Told(book, "2026-05-01").hours(kit) == (is_dead_for_a_while ? "4375.6" : "4374.0"));
  }
}

BOOST_AUTO_TEST_CASE(a_factor_is_exact_on_the_sum) {  // records S16
  Book book;
  book.say("2026-01-01", forward(kit, "1000.0"));
  book.say("2026-01-01", support::counts_from(kit, "collective", "1.12"));
  for (int month = 1; month <= 9; ++month) {
    const std::string day = "2026-0" + std::to_string(month) + "-02";
    book.say(day, flew(kit, "20.0"));
    book.say(day, flew(kit, "7.77"));
  }
  book.say("2026-09-03", flew(kit, "0.07"));
  BOOST_TEST(Told(book, "2026-09-03").hours(kit) == "1280.0");  // 250.0 x 1.12
}

BOOST_AUTO_TEST_CASE(each_thing_counts_on_its_own_clock) {  // records S17
  const logbook::Part blade = support::part("PN-B", "B-1");
  const logbook::Part starter = support::part("PN-S", "S-1");
  const reckon::Clock run_clock = reckon::HoursClock{logbook::MeterName{"engine-run"}};
  Book book;
  book.say("2026-01-01", forward(kit, "1000.0"));
  book.say("2026-01-01", support::counts_from(kit, "collective"));
  book.say("2026-01-01", forward(blade, {had_hours("2150.0")}));
  logbook::Had had_run = had_hours("975.0");
  std::get<logbook::ClockHours>(had_run.amount).meter = logbook::MeterName{"engine-run"};
  book.say("2026-01-01", forward(starter, {had_run}));
  book.say("2026-01-01", fitted(blade, {kit, "main rotor blade 1", ""}));
  book.say("2026-01-01", fitted(starter, {kit, "starter", ""}));
  for (int flight = 0; flight < 10; ++flight) {
    const std::string from = std::to_string(100 + 2 * flight) + ".0";
    const std::string to = std::to_string(102 + 2 * flight) + ".0";
    book.say("2026-02-1" + std::to_string(flight),
             flew(kit, "1.64", {}, {run("engine-run", from, to)}));
  }
  const Told told(book, "2026-03-01");
  BOOST_TEST(told.hours(blade) == "2166.4");
  BOOST_TEST(told::text(told.histories.total(starter, run_clock, told.histories.now()).figure) ==
             "995.0");
  book.say("2026-02-20", flew(kit, "1.0"));  // nobody read the meter
  const Told later(book, "2026-03-01");
  BOOST_TEST(told::text(later.histories.total(starter, run_clock, later.histories.now()).figure) ==
             "at least 996.0");
}

// A part that had no hours at all when it was fitted had none on any meter either.
BOOST_AUTO_TEST_CASE(a_new_part_is_counted_by_the_meters_that_its_flights_speak_of) {
  const logbook::Part starter = support::part("PN-S", "S-1");
  const auto by = [](const std::string& meter) {
    return reckon::Clock(reckon::HoursClock{logbook::MeterName{meter}});
  };
  Book book = kit_book();
  book.say("2026-02-01", fitted(starter, {kit, "starter", ""}, {had_hours("0.0")}));
  book.say("2026-02-02", flew(kit, "1.64", {}, {run("engine-run", "100.0", "102.0")}));
  const Told told(book, "2026-03-01");
  const auto of = [&](const std::string& meter) {
    return told::text(told.histories.total(starter, by(meter), told.histories.now()).figure);
  };
  BOOST_TEST(of("engine-run") == "2.0");
  BOOST_TEST(of("hoist") == "unknown");
  // Nobody read the collective meter, but it is the aircraft's source of hours.
  BOOST_TEST(of("collective") == "1.64");
}

BOOST_AUTO_TEST_CASE(hours_not_accounted_for_count_and_make_counts_at_least) {
  Book book = kit_book();
  book.say("2026-03-20", support::unaccounted(kit, "2.3"));
  const Told told(book, "2026-03-20");
  BOOST_TEST(told.hours(kit) == "4323.9");
  BOOST_TEST(told.hours(engine) == "1822.7");
  BOOST_TEST(told.count(kit, CounterKind::landings) == "at least 5608");
  BOOST_TEST(told.count(engine, CounterKind::starts) == "at least 2101");
  const auto total = told.histories.total(kit, reckon::service_clock, told.histories.now());
  BOOST_CHECK(total.because.back().kind == reckon::TermKind::missing);
}

BOOST_AUTO_TEST_CASE(late_papers_are_sorted_by_day) {  // records S50
  Book book;
  book.say("2025-03-01", forward(kit, "4400.0"));
  const auto last = book.say("2025-03-05", flew(kit, "0.9"));
  const auto first = book.say("2025-03-03", flew(kit, "1.2"));
  const auto middle = book.say("2025-03-04", flew(kit, "2.1"));
  const Told told(book, "2025-03-05");
  BOOST_TEST(told.hours_at(kit, first) == "4401.2");
  BOOST_TEST(told.hours_at(kit, middle) == "4403.3");
  BOOST_TEST(told.hours_at(kit, last) == "4404.2");
}

BOOST_AUTO_TEST_CASE(an_aircraft_that_was_never_brought_forward_has_no_known_total) {
  Book book;
  book.say("2026-01-01", flew(kit, "1.0", {landings(2)}));
  const Told told(book, "2026-01-01");
  BOOST_TEST(told.hours(kit) == "unknown");
  BOOST_TEST(told.count(kit, CounterKind::landings) == "unknown");
}

BOOST_AUTO_TEST_CASE(counters_that_were_not_brought_forward_are_unknown) {
  Book book;
  book.say("2026-01-01", forward(kit, "100.0"));
  book.say("2026-01-02", flew(kit, "1.0", {landings(2)}));
  const Told told(book, "2026-01-02");
  BOOST_TEST(told.hours(kit) == "101.0");
  BOOST_TEST(told.count(kit, CounterKind::landings) == "unknown");
  BOOST_TEST(told.count(kit, CounterKind::lifts) == "unknown");
}

BOOST_AUTO_TEST_CASE(a_flight_before_the_book_began_is_asked_about_and_does_not_count) {
  Book book = kit_book();
  book.say("2025-12-31", flew(kit, "1.0"));
  const Told told(book, "2026-03-01");
  BOOST_TEST(told.hours(kit) == "4321.6");
  BOOST_REQUIRE_EQUAL(told.histories.questions().size(), 1U);
  BOOST_TEST(told.histories.questions()[0].class_ == "before it was brought forward");
}

BOOST_AUTO_TEST_SUITE_END()
