// What a meter shows against the entries around it, where flights do not state it, where it was
// exchanged, and where it was never read. Derived from design 4 (checks: meter gap, overlap; a
// changed or dead meter is an entry).
#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using support::done;
using support::flew;
using support::ran;

namespace {

logbook::MeterChanged changed(const logbook::Aircraft& aircraft, const std::string& out,
                              const std::string& in) {
  logbook::MeterChanged fact;
  fact.aircraft = aircraft;
  fact.meter = {"collective"};
  fact.out = support::meter(out);
  fact.in = support::meter(in);
  return fact;
}

// ZZ-KIT with its collective meter at 1231.0 after a flight of 2 March.
struct Metered : Record {
  Metered() {
    begin("4300.0", "1230.0");
    flight = say("2025-03-02", flew(kit, "1.0", {}, collective("1230.0", "1231.0")));
  }
  logbook::EntryId flight;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(check_meters, Metered)

BOOST_AUTO_TEST_CASE(what_ran_without_a_word_about_the_meter_explains_its_gap) {
  const auto next = flew(kit, "1.0", {}, collective("1231.9", "1232.9"));
  CHECK_KINDS(kinds("2025-03-05", next), CheckKind::meter_gap);
  auto ground = ran(kit, "engine 1", {});
  ground.hours = support::hours("0.3");
  say("2025-03-03", ground);
  say("2025-03-03", ran(kit, "engine 1", {support::starts(1)}));  // nobody wrote how long
  say("2025-03-03", support::unaccounted(kit, "0.2"));
  BOOST_CHECK(only("2025-03-05", next).difference == hours("0.4"));
  say("2025-03-04", flew(kit, "0.4", {}, {support::run("tach", "50.0", "50.4")}));
  CHECK_KINDS(kinds("2025-03-05", next));
}

BOOST_AUTO_TEST_CASE(a_meter_goes_out_and_is_lost_where_it_stood) {
  CHECK_KINDS(kinds("2025-03-05", changed(kit, "1231.0", "0.0")));
  const auto out = only("2025-03-05", changed(kit, "1235.0", "0.0"));
  BOOST_CHECK(out.kind == CheckKind::meter_gap);
  BOOST_CHECK_EQUAL(out.slot, "out");
  BOOST_CHECK(out.entries == std::vector{flight});
  BOOST_CHECK(out.difference == hours("4.0"));
  const auto lost =
      only("2025-03-05", logbook::MeterLost{kit, {"collective"}, support::meter("1230.5")});
  BOOST_CHECK(lost.kind == CheckKind::meter_overlap);
  BOOST_CHECK_EQUAL(lost.slot, "at");
  BOOST_CHECK(lost.stated == hours("1230.5"));
  BOOST_CHECK(lost.reckoned == hours("1231.0"));
}

BOOST_AUTO_TEST_CASE(on_the_day_of_a_change_the_reading_tells_which_meter_ran) {
  say("2025-03-05", changed(kit, "1232.0", "5000.0"));
  CHECK_KINDS(kinds("2025-03-05", flew(kit, "1.0", {}, collective("1231.0", "1232.0"))));
  CHECK_KINDS(kinds("2025-03-05", flew(kit, "1.0", {}, collective("5000.0", "5001.0"))));
  // Of neither: nearer to the old one, which would have run past where it went out; nearer to the
  // new one, which would have run before it came in.
  CHECK_KINDS(kinds("2025-03-05", flew(kit, "2.0", {}, collective("1231.0", "1233.0"))),
              CheckKind::meter_overlap);
  CHECK_KINDS(kinds("2025-03-05", flew(kit, "1.0", {}, collective("4999.5", "5000.5"))),
              CheckKind::meter_overlap);
}

BOOST_AUTO_TEST_CASE(a_run_that_both_meters_may_show_belongs_to_the_one_of_its_time) {
  Record record;
  record.begin("4300.0", "5.0");
  const auto run = flew(record.kit, "1.0", {}, collective("5.0", "6.0"));
  Record before = record;
  before.say("2025-03-05", run);
  before.say("2025-03-05", changed(record.kit, "6.0", "0.0"));
  BOOST_CHECK(reckon::check_record(before.entries(), record.today).empty());
  record.say("2025-03-05", changed(record.kit, "6.0", "0.0"));
  // Written after the change it is the new meter's, of which 5.0 h are missing.
  CHECK_KINDS(record.kinds("2025-03-05", run), CheckKind::meter_gap);
  BOOST_CHECK(record.only("2025-03-05", run).difference == hours("5.0"));
}

BOOST_AUTO_TEST_CASE(the_same_flight_again_is_told_once_and_not_as_an_overlap) {
  say("2025-03-04", flew(kit, "1.0", {}, collective("1231.0", "1232.0")));
  CHECK_KINDS(kinds("2025-03-02", flew(kit, "1.0", {}, collective("1230.0", "1231.0"))),
              CheckKind::duplicate);
  // A late flight that ran into the next one is an overlap.
  const auto asked = only("2025-03-03", flew(kit, "0.5", {}, collective("1231.0", "1231.5")));
  BOOST_CHECK(asked.kind == CheckKind::meter_overlap);
  BOOST_CHECK(asked.stated == hours("1231.5"));
  BOOST_CHECK(asked.reckoned == hours("1231.0"));
}

BOOST_AUTO_TEST_CASE(a_meter_that_was_never_read_bounds_nothing) {
  logbook::Task inspection;
  inspection.name = {"inspection"};
  inspection.scope = kit;
  say("2025-03-01", inspection);
  auto typed = done("inspection", kit);
  typed.meter = {{"tach"}, support::meter("77.0")};
  CHECK_KINDS(kinds("2025-03-05", typed));
  // On the day of a change, either meter may have been meant.
  say("2025-03-05", changed(kit, "1231.0", "12.0"));
  for (const std::string shown : {"12.0", "1231.0"}) {
    typed.meter = {{"collective"}, support::meter(shown)};
    CHECK_KINDS(kinds("2025-03-05", typed));
  }
  CHECK_KINDS(kinds("2025-03-06", typed), CheckKind::stated_total_differs);
}

BOOST_AUTO_TEST_SUITE_END()
