// Totals that work entries state, at places of the day and on clocks that are seldom stated; and
// meters read in place of a total. Derived from design 4 (statements, order within a day, "reading
// on the wrong clock").
#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using support::done;
using support::fitted;
using support::flew;
using support::had;
using support::had_hours;
using support::landings;

namespace {

const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::Part hub = support::part("PN-1", "B-1");

logbook::Task inspection(const logbook::Scope& scope) {
  logbook::Task task;
  task.name = {"inspection"};
  task.scope = scope;
  return task;
}
logbook::MeterReading reading(const std::string& meter, const std::string& shown) {
  return {{meter}, support::meter(shown)};
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(check_totals, Record)

BOOST_AUTO_TEST_CASE(a_place_that_is_said_is_the_only_one) {
  begin("4400.0", "");
  say("2025-03-01", inspection(kit));
  say("2025-03-05", flew(kit, "1.0"));
  say("2025-03-05", flew(kit, "2.0"));
  auto before = done("inspection", kit, "4400.0");
  before.before_the_first_flight = true;
  CHECK_KINDS(kinds("2025-03-05", before));
  before.airframe = support::hours("4401.0");
  CHECK_KINDS(kinds("2025-03-05", before), CheckKind::stated_total_differs);
  auto after = done("inspection", kit, "4403.0");
  after.after_the_last_flight = true;
  CHECK_KINDS(kinds("2025-03-05", after));
  after.airframe = support::hours("4401.0");
  CHECK_KINDS(kinds("2025-03-05", after), CheckKind::stated_total_differs);
  BOOST_CHECK(only("2025-03-05", after).reckoned == hours("4403.0"));
}

BOOST_AUTO_TEST_CASE(counts_that_work_states_are_compared_too) {
  auto forward = support::forward(kit, "4400.0", {had(landings(500))});
  say("2025-03-01", forward);
  say("2025-03-01", inspection(kit));
  say("2025-03-02", flew(kit, "1.0", {landings(3)}));
  auto typed = done("inspection", kit);
  typed.counts = {landings(503)};
  CHECK_KINDS(kinds("2025-03-04", typed));
  typed.counts = {landings(530)};
  const auto asked = only("2025-03-04", typed);
  BOOST_CHECK(asked.kind == CheckKind::stated_total_differs);
  BOOST_CHECK(asked.severity == Severity::doubtful);
  BOOST_CHECK_EQUAL(asked.slot, "counts");
  BOOST_CHECK(asked.clock == reckon::Clock(landings(1).counter));
  BOOST_CHECK(asked.difference == reckon::Figure(landings(27).amount));
  // Before the book begins the figure of the papers is the source.
  CHECK_KINDS(kinds("2024-06-05", typed));
}

BOOST_AUTO_TEST_CASE(a_total_far_off_and_near_no_meter_is_only_a_total_that_differs) {
  begin("4400.0", "");
  say("2025-03-01", inspection(kit));
  const auto far_off = done("inspection", kit, "1230.0");
  CHECK_KINDS(kinds("2025-03-05", far_off), CheckKind::stated_total_differs);
  // A meter that was first read later shows nothing yet; one that shows something else is no cause.
  say("2025-03-08", flew(kit, "1.0", {}, collective("1230.0", "1231.0")));
  CHECK_KINDS(kinds("2025-03-05", far_off), CheckKind::stated_total_differs);
  CHECK_KINDS(kinds("2025-03-09", far_off), CheckKind::wrong_clock);
  CHECK_KINDS(kinds("2025-03-09", done("inspection", kit, "2230.0")),
              CheckKind::stated_total_differs);
  // Within a day of its own clock it is a slip, not another clock.
  CHECK_KINDS(kinds("2025-03-09", done("inspection", kit, "4410.0")),
              CheckKind::stated_total_differs);
}

BOOST_AUTO_TEST_CASE(a_meter_is_compared_where_there_is_something_to_compare) {
  begin("4400.0", "");
  say("2025-03-01", inspection(kit));
  auto typed = done("inspection", kit);
  typed.meter = reading("collective", "4400.0");
  CHECK_KINDS(kinds("2025-03-05", typed));  // the first reading of this meter
  say("2025-03-06", flew(kit, "1.0", {}, collective("1230.0", "1231.0")));
  typed.meter = reading("collective", "4401.0");
  const auto asked = only("2025-03-09", typed);
  BOOST_CHECK(asked.kind == CheckKind::wrong_clock);
  BOOST_CHECK_EQUAL(asked.slot, "meter");
  BOOST_CHECK(asked.names == std::vector<std::string>{"collective"});
  BOOST_CHECK(asked.reckoned == hours("1231.0"));
  // Far from both: not the airframe's clock.
  typed.meter = reading("collective", "2500.0");
  CHECK_KINDS(kinds("2025-03-09", typed), CheckKind::stated_total_differs);
}

BOOST_AUTO_TEST_CASE(an_airframe_whose_total_nobody_knows_lends_its_figure_to_no_meter) {
  auto forward = support::forward(kit, {});
  forward.meters = {reading("collective", "1230.0")};
  forward.unknown = {{std::monostate{}, std::nullopt}};
  say("2025-03-01", forward);
  say("2025-03-01", inspection(kit));
  auto typed = done("inspection", kit);
  typed.meter = reading("collective", "4400.0");
  CHECK_KINDS(kinds("2025-03-05", typed), CheckKind::stated_total_differs);
  // Neither can a total be compared that nobody knows.
  CHECK_KINDS(kinds("2025-03-05", done("inspection", kit, "4400.0")));
}

BOOST_AUTO_TEST_CASE(a_meter_that_was_exchanged_is_compared_with_the_one_that_went_out) {
  begin("4400.0", "1230.0");
  say("2025-03-02", flew(kit, "1.0", {}, collective("1230.0", "1231.0")));
  logbook::MeterChanged change;
  change.aircraft = kit;
  change.meter = {"collective"};
  change.out = support::meter("1231.0");
  change.in = support::meter("12.0");
  change.airframe = support::hours("4401.0");
  CHECK_KINDS(kinds("2025-03-03", change));
  change.out = support::meter("4401.0");
  CHECK_KINDS(kinds("2025-03-03", change), CheckKind::meter_gap, CheckKind::wrong_clock);
  change.out = support::meter("1231.0");
  say("2025-03-03", change);
  // On record, what the meter shows now is the new one's; nothing is asked about it.
  BOOST_CHECK(reckon::check_record(entries(), today).empty());
}

BOOST_AUTO_TEST_CASE(engine_hours_are_those_of_the_engine_around_a_part_or_the_only_one_aboard) {
  begin("4400.0", "");
  const auto other = support::engine("TS-40", "E-2");
  say("2025-03-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("1000.0")}));
  say("2025-03-01", support::forward(other, {had_hours("700.0")}));  // in no aircraft
  say("2025-03-01", fitted(hub, {engine, "hub", ""}, {had_hours("50.0")}));
  say("2025-03-01", inspection(hub));
  say("2025-03-01", inspection(kit));
  for (const logbook::Thing& thing : {logbook::Thing(hub), logbook::Thing(kit)}) {
    auto typed = done("inspection", thing);
    typed.engine = support::hours("1000.0");
    CHECK_KINDS(kinds("2025-03-04", typed));
    typed.engine = support::hours("1010.0");
    CHECK_KINDS(kinds("2025-03-04", typed), CheckKind::stated_total_differs);
    BOOST_CHECK_EQUAL(only("2025-03-04", typed).slot, "engine");
  }
  // Of a part in nothing, engine hours say nothing that the record could hold against them.
  const auto loose = support::part("PN-1", "B-2");
  say("2025-03-01", support::forward(loose, {had_hours("5.0")}));
  say("2025-03-01", inspection(loose));
  auto typed = done("inspection", loose);
  typed.engine = support::hours("1010.0");
  CHECK_KINDS(kinds("2025-03-04", typed));
}

BOOST_AUTO_TEST_SUITE_END()
