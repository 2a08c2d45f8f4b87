// Totals that work entries state, against the flights (derived from cases/records, B3 and B4).

#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using support::done;
using support::fitted;
using support::flew;
using support::had_hours;
using support::removed;

namespace {

const logbook::Engine engine = support::engine("TS-40", "E-1001");

// Hours flown over so many days that no day has too many.
logbook::Flew sheet(const logbook::Aircraft& aircraft, const std::string& hours,
                    const std::string& since) {
  logbook::Flew flown = flew(aircraft, hours);
  flown.since = support::day(since);
  return flown;
}

logbook::Task inspection(const logbook::Scope& scope) {
  logbook::Task task;
  task.name = {"inspection"};
  task.scope = scope;
  return task;
}

// ZZ-KIT at 4410.0 h on the morning of 5 March.
class Inspected : public Record {
 public:
  Inspected() {
    begin("4400.0", "");
    say("2025-03-01", inspection(kit));
    say("2025-03-02", flew(kit, "10.0"));
  }
};

}  // namespace

BOOST_AUTO_TEST_SUITE(check_work)

BOOST_AUTO_TEST_CASE(s29_a_removal_that_states_other_hours_than_flown_is_asked_about) {
  Record record;
  record.begin("4000.0", "", "2024-01-01");
  record.say("2024-01-01",
             fitted(engine, {record.kit, "engine 1", "4000.0"}, {had_hours("1000.0")}));
  record.say("2025-03-01", sheet(record.kit, "450.0", "2024-01-01"));
  auto slip = removed(engine, {record.kit, "engine 1", "4450.0"});
  slip.with = {had_hours("1540.0")};
  CHECK_KINDS(record.kinds("2025-03-02", slip), CheckKind::had_differs);
  const auto asked = record.only("2025-03-02", slip);
  BOOST_CHECK(asked.severity == Severity::doubtful);
  BOOST_CHECK(asked.stated == hours("1540.0"));
  BOOST_CHECK(asked.reckoned == hours("1450.0"));
  BOOST_CHECK(asked.difference == hours("90.0"));
  BOOST_CHECK_EQUAL(asked.slot, "with");
  slip.with = {had_hours("1450.0")};
  CHECK_KINDS(record.kinds("2025-03-02", slip));
}

BOOST_AUTO_TEST_CASE(s31_an_engine_that_came_with_its_airframe_has_no_more_hours) {
  Record record;
  record.begin("0.0", "", "2019-03-14");
  record.say("2019-03-14", fitted(engine, {record.kit, "engine 1", "0.0"}, {had_hours("0.0")}));
  record.say("2025-03-01", sheet(record.kit, "1200.0", "2019-03-14"));
  auto slip = removed(engine, {record.kit, "engine 1", "1200.0"});
  slip.with = {had_hours("1350.0")};
  CHECK_KINDS(record.kinds("2025-03-02", slip), CheckKind::engine_older_than_airframe);
  BOOST_CHECK(record.only("2025-03-02", slip).difference == hours("150.0"));
  slip.with = {had_hours("1200.0")};
  CHECK_KINDS(record.kinds("2025-03-02", slip));
}

BOOST_AUTO_TEST_CASE(a_part_does_not_gain_hours_while_it_is_off) {
  Record record;
  record.begin("4000.0", "");
  record.say("2025-03-01", fitted(engine, {record.kit, "engine 1", ""}, {had_hours("1000.0")}));
  record.say("2025-03-02", flew(record.kit, "10.0"));
  record.say("2025-03-03", removed(engine, {record.kit, "engine 1", ""}));
  CHECK_KINDS(record.kinds("2025-03-04",
                           fitted(engine, {record.kit, "engine 1", ""}, {had_hours("1012.0")})),
              CheckKind::had_differs);
  CHECK_KINDS(record.kinds("2025-03-04",
                           fitted(engine, {record.kit, "engine 1", ""}, {had_hours("1010.0")})));
}

BOOST_AUTO_TEST_CASE(what_a_thing_has_when_it_comes_on_record_is_its_source) {
  Record record;
  record.begin("4000.0", "");
  CHECK_KINDS(record.kinds(
      "2025-03-04", fitted(engine, {record.kit, "engine 1", "4000.0"}, {had_hours("1010.0")})));
}

BOOST_AUTO_TEST_CASE(a_stated_total_that_differs_from_the_flights_is_asked_about) {
  Inspected record;
  CHECK_KINDS(record.kinds("2025-03-05", done("inspection", record.kit, "4410.0")));
  const auto wrong = done("inspection", record.kit, "4412.0");
  CHECK_KINDS(record.kinds("2025-03-05", wrong), CheckKind::stated_total_differs);
  const auto asked = record.only("2025-03-05", wrong);
  BOOST_CHECK(asked.stated == hours("4412.0"));
  BOOST_CHECK(asked.reckoned == hours("4410.0"));
  BOOST_CHECK(asked.difference == hours("2.0"));
  BOOST_CHECK_EQUAL(asked.slot, "airframe");
}

BOOST_AUTO_TEST_CASE(a_stated_total_may_lie_between_two_flights_of_its_day) {
  Inspected record;
  record.say("2025-03-05", flew(record.kit, "1.0"));
  record.say("2025-03-05", flew(record.kit, "2.0"));
  for (const std::string total : {"4410.0", "4411.0", "4413.0"}) {
    CHECK_KINDS(record.kinds("2025-03-05", done("inspection", record.kit, total)));
  }
  CHECK_KINDS(record.kinds("2025-03-05", done("inspection", record.kit, "4412.0")),
              CheckKind::stated_total_differs);
}

BOOST_AUTO_TEST_CASE(before_the_book_begins_a_stated_total_is_the_source) {
  Inspected record;
  CHECK_KINDS(record.kinds("2024-06-05", done("inspection", record.kit, "4100.0")));
}

BOOST_AUTO_TEST_CASE(s49_a_late_flight_that_overtakes_a_signed_total_is_asked_about) {
  Inspected record;
  const auto signed_entry = record.say("2025-03-05", done("inspection", record.kit, "4410.0"));
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.3")), CheckKind::stated_total_differs);
  const auto asked = record.only("2025-03-04", flew(record.kit, "1.3"));
  BOOST_CHECK(asked.stated == hours("4410.0"));
  BOOST_CHECK(asked.reckoned == hours("4411.3"));
  BOOST_CHECK(asked.difference == hours("1.3"));
  BOOST_CHECK(asked.entries == std::vector{signed_entry});
  CHECK_KINDS(record.kinds("2025-03-06", flew(record.kit, "1.3")));
}

BOOST_AUTO_TEST_CASE(a_late_flight_between_two_signed_totals_overtakes_the_later_one) {
  Inspected record;
  record.say("2025-03-02", done("inspection", record.kit, "4410.0"));
  const auto later = record.say("2025-03-05", done("inspection", record.kit, "4410.0"));
  BOOST_CHECK(record.only("2025-03-04", flew(record.kit, "1.3")).entries == std::vector{later});
}

BOOST_AUTO_TEST_CASE(s49_an_inspection_signed_below_the_flights_is_asked_about) {
  Inspected record;
  record.say("2025-03-04", flew(record.kit, "1.3"));
  const auto typed = done("inspection", record.kit, "4410.0");
  CHECK_KINDS(record.kinds("2025-03-05", typed), CheckKind::stated_total_differs);
  BOOST_CHECK(record.only("2025-03-05", typed).difference == hours("1.3"));
}

BOOST_AUTO_TEST_CASE(a_late_flight_that_a_signed_total_already_holds_is_not_asked_about) {
  Inspected record;
  record.say("2025-03-05", done("inspection", record.kit, "4411.3"));
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.3")));
}

BOOST_AUTO_TEST_CASE(s52_a_total_read_on_the_wrong_clock_is_told_as_such) {
  Record record;
  record.begin("4317.1", "1230.0");
  record.say("2025-03-01", inspection(record.kit));
  record.say("2025-03-06", flew(record.kit, "4.5", {}, collective("1230.0", "1234.5")));
  const auto mixed = done("inspection", record.kit, "1230.0");
  CHECK_KINDS(record.kinds("2025-03-05", mixed), CheckKind::wrong_clock);
  const auto asked = record.only("2025-03-05", mixed);
  BOOST_CHECK(asked.severity == Severity::doubtful);
  BOOST_CHECK(asked.reckoned == hours("4317.1"));
  BOOST_CHECK(asked.names == std::vector<std::string>{"collective"});
  auto other_way = done("inspection", record.kit);
  other_way.meter = {{"collective"}, support::meter("4317.1")};
  CHECK_KINDS(record.kinds("2025-03-05", other_way), CheckKind::wrong_clock);
  other_way.meter = {{"collective"}, support::meter("1230.0")};
  CHECK_KINDS(record.kinds("2025-03-05", other_way));
}

BOOST_AUTO_TEST_CASE(a_stated_meter_lies_between_the_days_around_it) {
  Record record;
  record.begin("4317.1", "1230.0");
  record.say("2025-03-01", inspection(record.kit));
  record.say("2025-03-06", flew(record.kit, "4.5", {}, collective("1230.0", "1234.5")));
  auto typed = done("inspection", record.kit);
  typed.meter = {{"collective"}, support::meter("1234.5")};
  CHECK_KINDS(record.kinds("2025-03-07", typed));
  typed.meter = {{"collective"}, support::meter("1236.5")};
  CHECK_KINDS(record.kinds("2025-03-07", typed), CheckKind::stated_total_differs);
  typed.meter = {{"collective"}, support::meter("1234.0")};
  CHECK_KINDS(record.kinds("2025-03-07", typed), CheckKind::stated_total_differs);
}

BOOST_AUTO_TEST_CASE(engine_hours_stated_of_a_twin_need_their_engine) {
  Record record;
  record.begin("4000.0", "");
  record.say("2025-03-01", inspection(record.kit));
  record.say("2025-03-01", fitted(engine, {record.kit, "engine 1", ""}, {had_hours("1000.0")}));
  auto typed = done("inspection", record.kit);
  typed.engine = support::hours("1000.0");
  CHECK_KINDS(record.kinds("2025-03-04", typed));
  typed.engine = support::hours("1001.0");
  CHECK_KINDS(record.kinds("2025-03-04", typed), CheckKind::stated_total_differs);
  record.say("2025-03-01", fitted(support::engine("TS-40", "E-1002"), {record.kit, "engine 2", ""},
                                  {had_hours("2000.0")}));
  typed.engine = support::hours("1000.0");
  CHECK_KINDS(record.kinds("2025-03-04", typed), CheckKind::not_on_a_twin);
}

BOOST_AUTO_TEST_SUITE_END()
