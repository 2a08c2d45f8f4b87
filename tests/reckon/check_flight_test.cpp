// What is asked about a flight, from the practice cases (derived from cases/records, B1). Each kind
// of question is provoked, and the near miss beside it is not.

#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using support::clock;
using support::flew;
using support::landings;
using support::starts;

namespace {

logbook::Flew timed(logbook::Flew flew, const std::string& off, const std::string& on) {
  flew.took_off = clock(off);
  flew.landed = clock(on);
  return flew;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(check_flight)

BOOST_AUTO_TEST_CASE(s01_a_flight_that_fits_raises_nothing) {
  Record record;
  record.begin("4321.6", "1234.5");
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.7", {starts(1), landings(3)},
                                              collective("1234.5", "1236.2"))));
}

BOOST_AUTO_TEST_CASE(s02_hours_missing_before_a_flight_are_asked_about) {
  Record record;
  record.begin("4321.6", "1234.5");
  const auto before =
      record.say("2025-03-04", flew(record.kit, "1.7", {}, collective("1234.5", "1236.2")));
  const auto next = flew(record.kit, "0.9", {}, collective("1238.5", "1239.4"));
  CHECK_KINDS(record.kinds("2025-03-05", next), CheckKind::meter_gap);
  const auto gap = record.only("2025-03-05", next);
  BOOST_CHECK(gap.severity == Severity::doubtful);
  BOOST_CHECK(gap.difference == hours("2.3"));
  BOOST_CHECK(gap.stated == hours("1238.5"));
  BOOST_CHECK(gap.reckoned == hours("1236.2"));
  BOOST_CHECK(gap.entries == std::vector{before});
  BOOST_CHECK_EQUAL(gap.slot, "meters");
}

BOOST_AUTO_TEST_CASE(missing_hours_that_are_on_record_leave_no_gap) {
  Record record;
  record.begin("4321.6", "1236.2");
  record.say("2025-03-04", support::unaccounted(record.kit, "2.3", collective("1236.2", "1238.5")));
  CHECK_KINDS(
      record.kinds("2025-03-05", flew(record.kit, "0.9", {}, collective("1238.5", "1239.4"))));
}

BOOST_AUTO_TEST_CASE(a_flight_by_clock_between_two_readings_explains_the_gap) {
  Record record;
  record.begin("4321.6", "1236.2");
  record.say("2025-03-04", flew(record.kit, "2.3"));
  const auto fits = flew(record.kit, "0.9", {}, collective("1238.5", "1239.4"));
  const auto leaves = flew(record.kit, "0.9", {}, collective("1239.0", "1239.9"));
  CHECK_KINDS(record.kinds("2025-03-05", fits));
  CHECK_KINDS(record.kinds("2025-03-05", leaves), CheckKind::meter_gap);
  BOOST_CHECK(record.only("2025-03-05", leaves).difference == hours("0.5"));
}

BOOST_AUTO_TEST_CASE(s04_minutes_typed_as_decimals_are_asked_about) {
  Record record;
  record.begin("4700.0", "1500.2");
  const auto typed = timed(flew(record.kit, "1.30", {}, collective("1500.2", "1501.7")),
                           "09:10-07:00", "10:40-07:00");
  CHECK_KINDS(record.kinds("2025-03-06", typed), CheckKind::minutes_as_decimals);
  const auto asked = record.only("2025-03-06", typed);
  BOOST_CHECK(asked.stated == hours("1.3"));
  BOOST_CHECK(asked.reckoned == hours("1:30"));
  BOOST_CHECK(asked.difference == hours("0.2"));
  CHECK_KINDS(
      record.kinds("2025-03-06", timed(flew(record.kit, "1:30", {}, collective("1500.2", "1501.7")),
                                       "09:10-07:00", "10:40-07:00")));
}

BOOST_AUTO_TEST_CASE(s05_swapped_fields_are_told_as_such) {
  Record record;
  record.begin("4700.0", "1501.7");
  const auto swapped =
      flew(record.kit, "1.0", {support::count(logbook::CounterKind::cycles, "1.4"), starts(1)},
           collective("1501.7", "1503.1"));
  CHECK_KINDS(record.kinds("2025-03-06", swapped), CheckKind::swapped_fields);
  BOOST_CHECK(record.only("2025-03-06", swapped).difference == hours("0.4"));
}

BOOST_AUTO_TEST_CASE(s05_a_start_is_whole) {
  Record record;
  record.begin("4700.0", "");
  const auto flight =
      flew(record.kit, "1.0", {support::count(logbook::CounterKind::starts, "1.4")});
  CHECK_KINDS(record.kinds("2025-03-06", flight), CheckKind::fraction_of_a_whole_count);
  BOOST_CHECK(record.only("2025-03-06", flight).severity == Severity::impossible);
  CHECK_KINDS(record.kinds("2025-03-06", flew(record.kit, "1.0", {starts(1)})));
}

BOOST_AUTO_TEST_CASE(typed_hours_are_compared_with_the_meter) {
  Record record;
  record.begin("4700.0", "1501.7");
  const auto slip = flew(record.kit, "1.5", {}, collective("1501.7", "1503.1"));
  CHECK_KINDS(record.kinds("2025-03-06", slip), CheckKind::hours_against_meter);
  // 1:26 is between two tenths of a meter that shows tenths.
  CHECK_KINDS(
      record.kinds("2025-03-06", flew(record.kit, "1:26", {}, collective("1501.7", "1503.1"))));
}

BOOST_AUTO_TEST_CASE(a_meter_that_runs_on_the_ground_is_compared_only_as_the_source) {
  Record record;
  record.begin("4700.0", "");
  const auto flight = flew(record.kit, "1.5", {}, {support::run("engine-run", "20.0", "21.7")});
  CHECK_KINDS(record.kinds("2025-03-06", flight));
  record.say("2025-03-01", support::counts_from(record.kit, "engine-run"));
  CHECK_KINDS(record.kinds("2025-03-06", flight), CheckKind::hours_against_meter);
  record.say("2025-03-02", support::counts_from(record.kit, ""));
  CHECK_KINDS(record.kinds("2025-03-06", flight));
}

BOOST_AUTO_TEST_CASE(typed_hours_are_compared_with_the_clock) {
  Record record;
  record.begin("4700.0", "");
  const auto flight = [&](const std::string& hours) {
    return timed(flew(record.kit, hours), "09:11-07:00", "09:58-07:00");
  };
  CHECK_KINDS(record.kinds("2025-03-06", flight("0:47")));
  CHECK_KINDS(record.kinds("2025-03-06", flight("0.8")));
  CHECK_KINDS(record.kinds("2025-03-06", flight("0.9")), CheckKind::hours_against_clock);
  CHECK_KINDS(record.kinds("2025-03-06", flight("0:49")), CheckKind::hours_against_clock);
}

BOOST_AUTO_TEST_CASE(a_landing_after_midnight_is_on_the_next_day) {
  Record record;
  record.begin("4700.0", "");
  CHECK_KINDS(record.kinds("2025-03-06", timed(flew(record.kit, "0:45"), "23:40Z", "00:25Z")));
}

BOOST_AUTO_TEST_CASE(several_flights_may_have_ground_time_between_them) {
  Record record;
  record.begin("4700.0", "");
  auto flight = timed(flew(record.kit, "0:40", {support::flights(5)}), "09:00Z", "11:00Z");
  CHECK_KINDS(record.kinds("2025-03-06", flight));
  flight.hours = support::hours("2:01");
  CHECK_KINDS(record.kinds("2025-03-06", flight), CheckKind::hours_against_clock);
}

BOOST_AUTO_TEST_CASE(block_times_are_never_shorter_than_the_flight) {
  Record record;
  record.begin("4700.0", "");
  auto flight = flew(record.kit, "1.0");
  flight.blocks = logbook::Blocks{clock("09:00Z"), clock("10:06Z")};
  CHECK_KINDS(record.kinds("2025-03-06", flight));
  flight.hours = support::hours("1.3");
  CHECK_KINDS(record.kinds("2025-03-06", flight), CheckKind::hours_against_clock);
}

BOOST_AUTO_TEST_CASE(s07_a_flight_that_ended_has_a_landing) {
  Record record;
  record.begin("4700.0", "");
  const auto none = flew(record.kit, "1.2", {starts(1), landings(0)});
  CHECK_KINDS(record.kinds("2025-03-07", none), CheckKind::landings_below_flights);
  BOOST_CHECK(record.only("2025-03-07", none).severity == Severity::doubtful);
  CHECK_KINDS(record.kinds("2025-03-07", support::ran(record.kit, "engine 1", {starts(1)})));
  CHECK_KINDS(
      record.kinds("2025-03-07", flew(record.kit, "1.2", {support::flights(3), landings(2)})),
      CheckKind::landings_below_flights);
  CHECK_KINDS(
      record.kinds("2025-03-07", flew(record.kit, "1.2", {support::flights(3), landings(3)})));
}

BOOST_AUTO_TEST_CASE(lifts_need_a_flight) {
  Record record;
  record.begin("4700.0", "");
  const auto lifts = support::count(logbook::CounterKind::lifts, "10");
  CHECK_KINDS(record.kinds("2025-03-07", flew(record.kit, "0.0", {lifts})),
              CheckKind::lifts_without_flight);
  CHECK_KINDS(record.kinds("2025-03-07", flew(record.kit, "1.0", {lifts})));
}

BOOST_AUTO_TEST_CASE(s08_a_day_ahead_is_refused) {
  Record record;
  record.begin("4700.0", "");
  CHECK_KINDS(record.kinds("2025-03-12", flew(record.kit, "1.0")), CheckKind::in_the_future);
  const auto ahead = record.only("2025-03-12", flew(record.kit, "1.0"));
  BOOST_CHECK(ahead.severity == Severity::impossible);
  BOOST_CHECK(ahead.difference == reckon::Figure(quantity::Days::of(2)));
  CHECK_KINDS(record.kinds("2025-03-10", flew(record.kit, "1.0")));
}

BOOST_AUTO_TEST_CASE(s10_a_meter_cannot_run_more_hours_than_the_day_has) {
  Record record;
  record.begin("4700.0", "1290.4");
  const auto slip = flew(record.kit, "1.5", {}, collective("1290.4", "1391.9"));
  CHECK_KINDS(record.kinds("2025-03-07", slip), CheckKind::hours_against_meter,
              CheckKind::too_long_a_day);
  CHECK_KINDS(
      record.kinds("2025-03-07", flew(record.kit, "1.5", {}, collective("1290.4", "1291.9"))));
}

BOOST_AUTO_TEST_CASE(more_than_a_day_in_one_day_is_refused_also_as_a_sum) {
  Record record;
  record.begin("4700.0", "");
  CHECK_KINDS(record.kinds("2025-03-07", flew(record.kit, "24.1")), CheckKind::too_long_a_day);
  CHECK_KINDS(record.kinds("2025-03-07", flew(record.kit, "24.0")));
  const auto first = record.say("2025-03-07", flew(record.kit, "20.0"));
  CHECK_KINDS(record.kinds("2025-03-07", flew(record.kit, "4.0")));
  const auto over = record.only("2025-03-07", flew(record.kit, "4.1"));
  BOOST_CHECK(over.kind == CheckKind::too_long_a_day);
  BOOST_CHECK(over.stated == hours("24.1"));
  BOOST_CHECK(over.entries == std::vector{first});
}

BOOST_AUTO_TEST_CASE(an_entry_for_several_days_has_the_hours_of_all_of_them) {
  Record record;
  record.begin("4700.0", "");
  record.say("2025-03-06", flew(record.kit, "15.0"));
  auto sheet = flew(record.kit, "33.0");
  sheet.since = support::day("2025-03-06");
  CHECK_KINDS(record.kinds("2025-03-07", sheet));
  sheet.hours = support::hours("33.1");
  CHECK_KINDS(record.kinds("2025-03-07", sheet), CheckKind::too_long_a_day);
  sheet.hours = support::hours("33.0");
  record.say("2025-03-07", sheet);
  CHECK_KINDS(record.kinds("2025-03-07", flew(record.kit, "0.1")), CheckKind::too_long_a_day);
  CHECK_KINDS(record.kinds("2025-03-08", flew(record.kit, "0.1")));
}

BOOST_AUTO_TEST_CASE(s11_a_changed_meter_goes_on_from_its_new_reading) {
  Record record;
  record.begin("6120.8", "6119.8");
  record.say("2025-03-04", flew(record.kit, "1.0", {}, collective("6119.8", "6120.8")));
  const logbook::MeterChanged change{
      record.kit, {"collective"}, support::meter("6120.8"), support::meter("12.0"), {}};
  CHECK_KINDS(record.kinds("2025-03-04", change));
  record.say("2025-03-04", change);
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.0", {}, collective("12.0", "13.0"))));
  CHECK_KINDS(record.kinds("2025-03-05", flew(record.kit, "1.0", {}, collective("12.5", "13.5"))),
              CheckKind::meter_gap);
  CHECK_KINDS(
      record.kinds("2025-03-03", flew(record.kit, "1.0", {}, collective("6120.8", "6121.8"))),
      CheckKind::meter_gap, CheckKind::meter_overlap);
}

BOOST_AUTO_TEST_CASE(s13_flights_by_clock_beside_a_dead_meter_raise_nothing) {
  Record record;
  record.begin("4700.0", "1500.2");
  record.say("2025-03-02",
             logbook::MeterLost{record.kit, {"collective"}, support::meter("1500.2")});
  for (const std::string minutes : {"0:54", "1:12", "0:36", "1:06", "0:48"}) {
    auto flight = flew(record.kit, minutes, {landings(1)});
    flight.by_clock = true;
    CHECK_KINDS(record.kinds("2025-03-03", flight));
    record.say("2025-03-03", flight);
  }
  CHECK_KINDS(
      record.kinds("2025-03-04", flew(record.kit, "1.0", {}, collective("1500.2", "1501.2"))));
}

BOOST_AUTO_TEST_CASE(s50_late_sheets_without_meters_raise_nothing) {
  Record record;
  record.begin("4400.0", "");
  for (const auto& [day, hours] : std::vector<std::pair<std::string, std::string>>{
           {"2025-03-05", "0.9"}, {"2025-03-03", "1.2"}, {"2025-03-04", "2.1"}}) {
    CHECK_KINDS(record.kinds(day, flew(record.kit, hours)));
    record.say(day, flew(record.kit, hours));
  }
}

BOOST_AUTO_TEST_CASE(a_late_flight_is_compared_with_its_neighbours) {
  Record record;
  record.begin("4400.0", "100.0");
  record.say("2025-03-03", flew(record.kit, "1.0", {}, collective("100.0", "101.0")));
  record.say("2025-03-05", flew(record.kit, "1.0", {}, collective("102.0", "103.0")));
  CHECK_KINDS(
      record.kinds("2025-03-04", flew(record.kit, "1.0", {}, collective("101.0", "102.0"))));
  const auto too_far = flew(record.kit, "1.2", {}, collective("101.0", "102.2"));
  CHECK_KINDS(record.kinds("2025-03-04", too_far), CheckKind::meter_overlap);
  BOOST_CHECK(record.only("2025-03-04", too_far).difference == hours("0.2"));
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.2", {}, collective("100.8", "102.0"))),
              CheckKind::meter_overlap);
}

BOOST_AUTO_TEST_CASE(flights_of_one_day_stand_in_the_order_of_their_meters) {
  Record record;
  record.begin("4400.0", "100.0");
  record.say("2025-03-03", flew(record.kit, "1.0", {}, collective("101.0", "102.0")));
  CHECK_KINDS(
      record.kinds("2025-03-03", flew(record.kit, "1.0", {}, collective("100.0", "101.0"))));
}

BOOST_AUTO_TEST_CASE(a_meter_does_not_run_backwards) {
  Record record;
  record.begin("4400.0", "100.0");
  CHECK_KINDS(record.kinds("2025-03-03", flew(record.kit, "1.0", {}, collective("101.0", "100.0"))),
              CheckKind::meter_backwards);
}

BOOST_AUTO_TEST_CASE(the_same_flight_twice_is_asked_about) {
  Record record;
  record.begin("4400.0", "100.0");
  const auto flight = flew(record.kit, "1.0", {}, collective("100.0", "101.0"));
  const auto first = record.say("2025-03-03", flight);
  CHECK_KINDS(record.kinds("2025-03-03", flight), CheckKind::duplicate);
  BOOST_CHECK(record.only("2025-03-03", flight).entries == std::vector{first});
  const auto timed_flight = timed(flew(record.kit, "0.5"), "09:00Z", "09:30Z");
  record.say("2025-03-04", timed_flight);
  CHECK_KINDS(record.kinds("2025-03-04", timed_flight), CheckKind::duplicate);
  CHECK_KINDS(record.kinds("2025-03-04", timed(flew(record.kit, "0.5"), "10:00Z", "10:30Z")));
  // Two hops of the same length, and nothing that tells them apart, are two hops.
  record.say("2025-03-05", flew(record.kit, "0.1"));
  CHECK_KINDS(record.kinds("2025-03-05", flew(record.kit, "0.1")));
}

BOOST_AUTO_TEST_CASE(a_flight_before_the_book_began_is_refused) {
  Record record;
  record.begin("4400.0", "");
  CHECK_KINDS(record.kinds("2025-02-28", flew(record.kit, "1.0")),
              CheckKind::before_brought_forward);
  CHECK_KINDS(record.kinds("2025-03-01", flew(record.kit, "1.0")));
}

BOOST_AUTO_TEST_CASE(bringing_forward_after_flights_on_record_is_refused) {
  Record record;
  record.say("2025-01-01", logbook::AircraftIs{record.kit, {"Larkwing 5"}, {}, {}, {}});
  record.say("2025-03-01", flew(record.kit, "1.0"));
  CHECK_KINDS(record.kinds("2025-03-02", support::forward(record.kit, "100.0")),
              CheckKind::before_brought_forward);
  CHECK_KINDS(record.kinds("2025-03-01", support::forward(record.kit, "100.0")));
}

BOOST_AUTO_TEST_CASE(a_year_off_is_asked_about) {
  Record record;
  record.begin("4400.0", "", "2022-01-01");
  record.say("2025-03-04", flew(record.kit, "1.0"));
  CHECK_KINDS(record.kinds("2024-03-05", flew(record.kit, "1.0")), CheckKind::wrong_year);
  CHECK_KINDS(record.kinds("2023-06-01", flew(record.kit, "1.0")), CheckKind::wrong_year);
  CHECK_KINDS(record.kinds("2024-12-05", flew(record.kit, "1.0")));
}

BOOST_AUTO_TEST_CASE(a_fraction_of_a_cycle_on_a_twin_needs_its_engine) {
  Record record;
  record.begin("4400.0", "");
  record.say("2025-03-01", logbook::HasPlace{record.kit, logbook::Need::required, {"engine 1"}});
  const auto cycles = support::count(logbook::CounterKind::gas_generator_cycles, "1.2");
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.0", {cycles})));
  record.say("2025-03-01", logbook::HasPlace{record.kit, logbook::Need::required, {"engine 2"}});
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.0", {cycles})),
              CheckKind::not_on_a_twin);
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.0", {starts(1)})));
  auto on_one = flew(record.kit, "1.0");
  on_one.counts = {support::at(cycles, "engine 2")};
  CHECK_KINDS(record.kinds("2025-03-04", on_one));
}

BOOST_AUTO_TEST_CASE(s41_what_passed_a_limit_is_always_taken) {
  Record record;
  record.begin("1774.2", "");
  logbook::Limit limit;
  limit.scope = record.kit;
  limit.terms.terms = {
      {logbook::ClockHours{support::hours("1775.0"), {}}, logbook::Basis::new_, {}}};
  record.say("2025-03-01", limit);
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.4")));
}

BOOST_AUTO_TEST_SUITE_END()
