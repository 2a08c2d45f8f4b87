// What is asked about flights, ground runs and missing hours in forms that are seldom typed.
// Derived from design 4 (the checks) and 3 (what is whole); the near miss stands beside each.
#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using logbook::CounterKind;
using support::clock;
using support::count;
using support::flew;
using support::flights;
using support::landings;
using support::run;
using support::starts;

namespace {

struct Flown : Record {
  Flown() { begin("4321.6", "1234.5"); }
};

logbook::Said from_row(const std::string& day, const logbook::Fact& fact, std::int64_t row) {
  logbook::Said said = checking::said(day, fact);
  said.from = logbook::FromRow{"flights.csv", row};
  return said;
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(check_use_rare, Flown)

BOOST_AUTO_TEST_CASE(missing_hours_are_compared_with_the_meter_that_shows_them) {
  CHECK_KINDS(
      kinds("2025-03-04", support::unaccounted(kit, "2.3", collective("1234.5", "1236.8"))));
  const auto more = support::unaccounted(kit, "2.3", collective("1234.5", "1238.0"));
  CHECK_KINDS(kinds("2025-03-04", more), CheckKind::hours_against_meter);
  const auto asked = only("2025-03-04", more);
  BOOST_CHECK(asked.stated == hours("2.3"));
  BOOST_CHECK(asked.reckoned == hours("3.5"));
  BOOST_CHECK(asked.names == std::vector<std::string>{"collective"});
  CHECK_KINDS(kinds("2025-03-04", support::unaccounted(kit, "2.3", {run("tach", "9.0", "8.0")})),
              CheckKind::meter_backwards);
}

BOOST_AUTO_TEST_CASE(without_a_stated_source_the_one_meter_that_runs_in_flight_is_compared) {
  const auto with = [&](std::vector<logbook::MeterRun> runs) {
    return kinds("2025-03-04", flew(kit, "1.0", {}, std::move(runs)));
  };
  CHECK_KINDS(with({run("hobbs 2", "10.0", "12.0")}), CheckKind::hours_against_meter);
  CHECK_KINDS(with({run("engine-run", "10.0", "12.0")}));
  CHECK_KINDS(with({run("hobbs 2", "10.0", "12.0"), run("hobbs 3", "10.0", "12.0")}));
}

BOOST_AUTO_TEST_CASE(a_count_that_says_what_the_meter_says_is_a_swapped_field) {
  const auto typed = [&](const std::string& cycles) {
    return kinds("2025-03-04", flew(kit, "3.0", {count(CounterKind::cycles, cycles)},
                                    collective("1234.5", "1236.2")));
  };
  CHECK_KINDS(typed("1.7"), CheckKind::swapped_fields);
  CHECK_KINDS(typed("1.6"), CheckKind::hours_against_meter);
  CHECK_KINDS(typed("2"), CheckKind::hours_against_meter);
}

BOOST_AUTO_TEST_CASE(minutes_typed_as_decimals_are_told_by_the_clock_alone) {
  auto flight = flew(kit, "1.42");
  flight.took_off = clock("09:00Z");
  CHECK_KINDS(kinds("2025-03-04", flight));  // nobody wrote when it landed
  flight.landed = clock("10:42Z");
  CHECK_KINDS(kinds("2025-03-04", flight), CheckKind::minutes_as_decimals);
  flight.meters = collective("1234.5", "1236.2");  // as the meter tells too: asked once
  CHECK_KINDS(kinds("2025-03-04", flight), CheckKind::minutes_as_decimals);
  flight.landed = clock("11:42Z");
  CHECK_KINDS(kinds("2025-03-04", flight), CheckKind::hours_against_clock,
              CheckKind::minutes_as_decimals);
}

BOOST_AUTO_TEST_CASE(block_times_that_agree_to_the_tenth_are_no_doubt) {
  auto flight = flew(kit, "1.7");
  flight.blocks = logbook::Blocks{clock("09:00Z"), clock("10:41Z")};  // 1.683 h
  CHECK_KINDS(kinds("2025-03-04", flight));
  flight.blocks->on = clock("10:20Z");
  CHECK_KINDS(kinds("2025-03-04", flight), CheckKind::hours_against_clock);
}

BOOST_AUTO_TEST_CASE(lifts_need_hours_and_a_flight) {
  const auto lifts = [](const std::string& amount) { return count(CounterKind::lifts, amount); };
  CHECK_KINDS(kinds("2025-03-04", flew(kit, "1.0", {lifts("4")})));
  CHECK_KINDS(kinds("2025-03-04", flew(kit, "0.0", {lifts("4")})), CheckKind::lifts_without_flight);
  CHECK_KINDS(kinds("2025-03-04", flew(kit, "1.0", {flights(0), lifts("4")})),
              CheckKind::lifts_without_flight);
  CHECK_KINDS(kinds("2025-03-04", flew(kit, "0.0", {lifts("0")})));
  CHECK_KINDS(kinds("2025-03-04", support::ran(kit, "engine 1", {lifts("2")})),
              CheckKind::lifts_without_flight);
}

BOOST_AUTO_TEST_CASE(a_try_to_start_is_whole) {
  auto tried = support::tried(kit, "engine 1", 2);
  CHECK_KINDS(kinds("2025-03-04", tried));
  tried.counts = {count(CounterKind::starts, "1.5")};
  CHECK_KINDS(kinds("2025-03-04", tried), CheckKind::fraction_of_a_whole_count);
}

BOOST_AUTO_TEST_CASE(one_row_of_a_file_is_one_flight) {
  const auto flight = flew(kit, "1.0", {landings(2)});
  say(from_row("2025-03-04", flight, 12));
  CHECK_KINDS(kinds(from_row("2025-03-04", flight, 12)), CheckKind::duplicate);
  CHECK_KINDS(kinds(from_row("2025-03-04", flight, 13)));
  CHECK_KINDS(kinds(from_row("2025-03-04", flew(kit, "1.0", {landings(3)}), 12)));
  CHECK_KINDS(kinds("2025-03-04", flight));  // typed, without a row
}

BOOST_AUTO_TEST_CASE(equal_times_make_one_flight_and_a_lone_take_off_none) {
  auto flight = flew(kit, "1.0");
  flight.took_off = clock("23:30Z");
  say("2025-03-04", flight);
  CHECK_KINDS(kinds("2025-03-04", flight), CheckKind::duplicate);
  auto later = flight;
  later.landed = clock("00:30Z");
  CHECK_KINDS(kinds("2025-03-04", later));
}

BOOST_AUTO_TEST_CASE(a_day_within_several_days_has_only_what_they_leave) {
  auto sheet = flew(kit, "40.0");
  sheet.since = support::day("2025-03-04");
  const auto spread = say("2025-03-05", sheet);
  CHECK_KINDS(kinds("2025-03-03", flew(kit, "20.0")));
  CHECK_KINDS(kinds("2025-03-06", flew(kit, "20.0")));
  CHECK_KINDS(kinds("2025-03-05", flew(kit, "8.0")));  // 48 - 40
  const auto asked = only("2025-03-05", flew(kit, "8.1"));
  BOOST_CHECK(asked.kind == CheckKind::too_long_a_day);
  BOOST_CHECK(asked.entries == std::vector{spread});
  BOOST_CHECK(asked.day == support::day("2025-03-05"));
  // A day that is full leaves nothing to the days around it.
  say("2025-03-02", flew(kit, "24.0"));
  auto two_days = flew(kit, "24.1");
  two_days.since = support::day("2025-03-02");
  CHECK_KINDS(kinds("2025-03-03", two_days), CheckKind::too_long_a_day);
}

BOOST_AUTO_TEST_CASE(a_source_holds_from_its_day) {
  say("2025-03-06", support::counts_from(kit, "hobbs 2"));
  const std::vector<logbook::MeterRun> runs = {run("hobbs 2", "10.0", "12.0"),
                                               run("hobbs 3", "10.0", "11.0")};
  CHECK_KINDS(kinds("2025-03-05", flew(kit, "1.0", {}, runs)));
  CHECK_KINDS(kinds("2025-03-06", flew(kit, "1.0", {}, runs)), CheckKind::hours_against_meter);
  CHECK_KINDS(kinds("2025-03-06", flew(kit, "1.0", {}, {runs.back()})));  // not the source
}

BOOST_AUTO_TEST_CASE(what_was_flown_without_a_beginning_is_not_brought_forward_over) {
  const auto late = say("2025-02-20", flew(mob, "1.0"));
  CHECK_KINDS(kinds("2025-02-20", support::forward(mob, "100.0")));
  const auto asked = only("2025-02-21", support::forward(mob, "100.0"));
  BOOST_CHECK(asked.kind == CheckKind::before_brought_forward);
  BOOST_CHECK(asked.entries == std::vector{late});
}

BOOST_AUTO_TEST_SUITE_END()
