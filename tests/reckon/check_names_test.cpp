// Unknown and look-alike names, days before the making, and tasks that are not on record.

#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using support::flew;

namespace {

logbook::Task hundred_hours(const logbook::Scope& scope) {
  logbook::Task task;
  task.name = {"100-hour inspection"};
  task.scope = scope;
  task.every = {{logbook::ClockHours{support::hours("100.0"), {}}, {}, {}}};
  return task;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(check_names)

BOOST_AUTO_TEST_CASE(an_aircraft_must_be_on_record) {
  Record record;
  record.begin("4400.0", "");
  const auto mistyped = flew(support::aircraft("ZZ-KTI"), "1.0");
  CHECK_KINDS(record.kinds("2025-03-04", mistyped), CheckKind::no_such_thing);
  const auto unknown = record.only("2025-03-04", mistyped);
  BOOST_CHECK(unknown.severity == Severity::impossible);
  BOOST_CHECK_EQUAL(unknown.slot, "aircraft");
  BOOST_CHECK((unknown.names == std::vector<std::string>{"aircraft ZZ-KTI", "aircraft ZZ-KIT"}));
  CHECK_KINDS(record.kinds("2025-03-04", flew(record.kit, "1.0")));
}

BOOST_AUTO_TEST_CASE(at_most_three_names_are_offered_the_nearest_first) {
  Record record;
  for (const std::string name : {"ZZ-KAA", "ZZ-KAB", "ZZ-KAC", "ZZ-KIT", "YY-YYY"}) {
    record.say("2025-03-01",
               logbook::AircraftIs{support::aircraft(name), {"Larkwing 5"}, {}, {}, {}});
  }
  const auto names = record.only("2025-03-04", flew(support::aircraft("ZZ-KAT"), "1.0")).names;
  BOOST_REQUIRE_EQUAL(names.size(), 4U);
  BOOST_CHECK_EQUAL(names[1], "aircraft ZZ-KAA");
}

BOOST_AUTO_TEST_CASE(things_and_hosts_must_be_on_record) {
  Record record;
  record.begin("4400.0", "");
  const auto engine = support::engine("TS-40", "E-1001");
  CHECK_KINDS(record.kinds("2025-03-04", support::overhauled(engine)), CheckKind::no_such_thing);
  CHECK_KINDS(record.kinds("2025-03-04", support::fitted(engine, {record.kit, "engine 1", ""})));
  CHECK_KINDS(record.kinds("2025-03-04", support::fitted(engine, {record.mob, "engine 1", ""})),
              CheckKind::no_such_thing);
  record.say("2025-03-01", logbook::EngineIs{engine, {}, {}});
  CHECK_KINDS(record.kinds("2025-03-04", support::overhauled(engine)));
}

BOOST_AUTO_TEST_CASE(an_unknown_engine_place_is_refused_once_places_are_known) {
  Record record;
  record.begin("4400.0", "");
  const auto tried = support::tried(record.kit, "engine 2", 1);
  CHECK_KINDS(record.kinds("2025-03-04", tried));
  record.say("2025-03-01", logbook::HasPlace{record.kit, logbook::Need::required, {"engine 1"}});
  CHECK_KINDS(record.kinds("2025-03-04", tried), CheckKind::no_such_thing);
  BOOST_CHECK(
      (record.only("2025-03-04", tried).names == std::vector<std::string>{"engine 2", "engine 1"}));
  CHECK_KINDS(record.kinds("2025-03-04", support::tried(record.kit, "engine 1", 1)));
}

BOOST_AUTO_TEST_CASE(a_new_serial_that_looks_like_another_is_asked_about) {
  Record record;
  record.begin("4400.0", "");
  record.say("2025-03-01", logbook::PartIs{support::part("PN-4411", "SB-108"), "", {}, {}, {}});
  for (const std::string serial : {"5B-108", "SB-IO8", "SB-L0B", "SB 108", "SB108"}) {
    const logbook::PartIs is{support::part("PN-4411", serial), "", {}, {}, {}};
    CHECK_KINDS(record.kinds("2025-03-02", is), CheckKind::serial_look_alike);
  }
  CHECK_KINDS(record.kinds("2025-03-02",
                           logbook::PartIs{support::part("PN-4411", "SB-109"), "", {}, {}, {}}));
  // The same serial of another part number is another part; so is the part itself no look-alike.
  CHECK_KINDS(
      record.kinds("2025-03-02", logbook::PartIs{support::part("PN-7", "SB-108"), "", {}, {}, {}}));
  CHECK_KINDS(record.kinds("2025-03-02",
                           logbook::PartIs{support::part("PN-4411", "SB-108"), "", {}, {}, {}}));
}

BOOST_AUTO_TEST_CASE(nothing_is_fitted_before_it_was_made_or_released) {
  Record record;
  record.begin("4400.0", "");
  const auto blade = support::part("PN-4411", "B-88");
  record.say(
      "2025-03-01",
      logbook::PartIs{
          blade, "main rotor blade", support::day("2025-03-02"), support::day("2025-03-04"), {}});
  const auto fitted = support::fitted(blade, {record.kit, "main rotor blade 1", ""});
  CHECK_KINDS(record.kinds("2025-03-01", fitted), CheckKind::fitted_before_made);
  CHECK_KINDS(record.kinds("2025-03-03", fitted), CheckKind::fitted_before_made);
  CHECK_KINDS(record.kinds("2025-03-04", fitted));
  record.say("2025-03-04", fitted);
  CHECK_KINDS(
      record.kinds("2025-03-05",
                   logbook::PartIs{blade, "main rotor blade", support::day("2025-03-05"), {}, {}}),
      CheckKind::fitted_before_made);
}

BOOST_AUTO_TEST_CASE(an_unknown_task_is_a_question_with_the_nearest) {
  Record record;
  record.begin("4400.0", "");
  record.say("2025-03-01", hundred_hours(record.kit));
  const auto mistyped = support::done("100-hour inspektion", record.kit);
  CHECK_KINDS(record.kinds("2025-03-04", mistyped), CheckKind::no_such_task);
  const auto asked = record.only("2025-03-04", mistyped);
  BOOST_CHECK(asked.severity == Severity::doubtful);
  BOOST_CHECK(
      (asked.names == std::vector<std::string>{"100-hour inspektion", "100-hour inspection"}));
  CHECK_KINDS(record.kinds("2025-03-04", support::done("100-hour inspection", record.kit)));
}

BOOST_AUTO_TEST_CASE(a_task_on_a_model_is_known_on_its_aircraft_only) {
  Record record;
  record.say("2025-03-01", logbook::AircraftIs{record.kit, {"Larkwing 5"}, {}, {}, {}});
  record.say("2025-03-01", logbook::AircraftIs{record.mob, {"Larkwing 6"}, {}, {}, {}});
  record.say("2025-03-01", hundred_hours(logbook::Model{{"Larkwing 5"}}));
  CHECK_KINDS(record.kinds("2025-03-04", support::done("100-hour inspection", record.kit)));
  CHECK_KINDS(record.kinds("2025-03-04", support::done("100-hour inspection", record.mob)),
              CheckKind::no_such_task);
}

BOOST_AUTO_TEST_CASE(a_done_may_precede_its_declaration_in_the_history) {
  Record record;
  record.begin("4400.0", "");
  record.say("2025-03-05", hundred_hours(record.kit));
  CHECK_KINDS(record.kinds("2025-02-04", support::done("100-hour inspection", record.kit)));
}

BOOST_AUTO_TEST_CASE(a_life_is_shared_in_one_way_unless_the_other_is_replaced) {
  Record record;
  const logbook::Scope number = logbook::PartKind{{"PN-4411"}};
  const logbook::Scope blade = support::part("PN-4411", "B-88");
  const logbook::SharesByFractions fractions{number, {}};
  const logbook::ShorterLimitStays shorter{blade, {}, {}};
  record.say("2025-03-01", logbook::PartIs{support::part("PN-4411", "B-88"), "blade", {}, {}, {}});
  const auto first = record.say("2025-03-01", fractions);
  CHECK_KINDS(record.kinds("2025-03-02", fractions));
  CHECK_KINDS(record.kinds("2025-03-02", shorter), CheckKind::lives_shared_otherwise);
  BOOST_CHECK(record.only("2025-03-02", shorter).entries == std::vector{first});
  auto replaces = said("2025-03-02", logbook::ShorterLimitStays{number, {}, {}});
  replaces.instead_of = name_of(first);
  CHECK_KINDS(record.kinds(replaces));
  record.say(replaces);
  CHECK_KINDS(record.kinds("2025-03-03", shorter));
  CHECK_KINDS(record.kinds("2025-03-03", fractions), CheckKind::lives_shared_otherwise);
}

BOOST_AUTO_TEST_CASE(a_task_declared_again_is_asked_about_unless_it_replaces_or_has_ended) {
  Record record;
  record.begin("4400.0", "");
  const auto first = record.say("2025-03-01", hundred_hours(record.kit));
  CHECK_KINDS(record.kinds("2025-03-02", hundred_hours(record.kit)), CheckKind::task_defined_twice);
  BOOST_CHECK(record.only("2025-03-02", hundred_hours(record.kit)).entries == std::vector{first});
  auto replaces = said("2025-03-02", hundred_hours(record.kit));
  replaces.instead_of = name_of(first);
  CHECK_KINDS(record.kinds(replaces));
  record.say("2025-03-02",
             logbook::TaskEnds{logbook::TaskClass::task, {"100-hour inspection"}, record.kit, {}});
  CHECK_KINDS(record.kinds("2025-03-03", hundred_hours(record.kit)));
}

BOOST_AUTO_TEST_SUITE_END()
