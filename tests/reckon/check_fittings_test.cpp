// One serial in one place, one place for one serial (derived from cases/records, B3).

#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using support::fitted;
using support::removed;

namespace {

class TwoAircraft : public Record {
 public:
  TwoAircraft() {
    begin("5000.0", "", "2025-01-01");
    say("2025-01-01", support::forward(mob, "3000.0"));
  }
  const logbook::Thing blade = support::part("PN-4411", "B-88");
  const std::string place = "main rotor blade 1";
};

}  // namespace

BOOST_AUTO_TEST_SUITE(check_fittings)

BOOST_AUTO_TEST_CASE(s28_a_serial_fitted_elsewhere_is_refused_until_it_is_removed) {
  TwoAircraft record;
  const auto on_kit =
      record.say("2025-02-01", fitted(record.blade, {record.kit, record.place, ""}));
  const auto on_mob = fitted(record.blade, {record.mob, record.place, ""});
  CHECK_KINDS(record.kinds("2025-02-20", on_mob), CheckKind::serial_elsewhere);
  const auto refused = record.only("2025-02-20", on_mob);
  BOOST_CHECK(refused.severity == Severity::impossible);
  BOOST_CHECK(refused.entries == std::vector{on_kit});
  BOOST_CHECK((refused.names == std::vector<std::string>{"part PN-4411 B-88", "aircraft ZZ-KIT",
                                                         "main rotor blade 1"}));
  record.say("2025-02-20", removed(record.blade, {record.kit, record.place, ""}));
  CHECK_KINDS(record.kinds("2025-02-20", on_mob));
}

// Until its removal is entered too, the later fitting does not follow it.
BOOST_AUTO_TEST_CASE(an_earlier_stay_may_be_entered_late) {
  TwoAircraft record;
  const auto later = record.say("2025-02-20", fitted(record.blade, {record.mob, record.place, ""}));
  const auto earlier = fitted(record.blade, {record.kit, record.place, ""});
  CHECK_KINDS(record.kinds("2025-02-01", earlier), CheckKind::moved_later);
  const auto asked = record.only("2025-02-01", earlier);
  BOOST_CHECK(asked.severity == Severity::doubtful);
  BOOST_CHECK(asked.entries == std::vector{later});
  record.say("2025-02-01", earlier);
  CHECK_KINDS(record.kinds("2025-02-10", removed(record.blade, {record.kit, record.place, ""})));
}

BOOST_AUTO_TEST_CASE(a_late_removal_leaves_a_later_one_without_its_fitting) {
  TwoAircraft record;
  const auto off = removed(record.blade, {record.kit, record.place, ""});
  record.say("2025-02-01", fitted(record.blade, {record.kit, record.place, ""}));
  const auto later = record.say("2025-02-20", off);
  CHECK_KINDS(record.kinds("2025-02-10", off), CheckKind::moved_later);
  BOOST_CHECK(record.only("2025-02-10", off).entries == std::vector{later});
  BOOST_CHECK_EQUAL(record.only("2025-02-10", off).slot, "removed");
  record.say("2025-02-10", off);
  CHECK_KINDS(record.kinds("2025-02-15", fitted(record.blade, {record.kit, record.place, ""})));
  CHECK_KINDS(record.kinds("2025-02-15", fitted(record.blade, {record.mob, record.place, ""})),
              CheckKind::moved_later);
}

BOOST_AUTO_TEST_CASE(a_late_removal_makes_room_for_a_later_fitting) {
  TwoAircraft record;
  record.say("2025-02-01", fitted(record.blade, {record.kit, record.place, ""}));
  record.say("2025-02-20", fitted(record.blade, {record.mob, record.place, ""}));
  CHECK_KINDS(record.kinds("2025-02-10", removed(record.blade, {record.kit, record.place, ""})));
}

BOOST_AUTO_TEST_CASE(a_late_fitting_may_not_take_the_place_of_a_later_one) {
  TwoAircraft record;
  const auto other = support::part("PN-4411", "B-91");
  const auto later = record.say("2025-02-20", fitted(other, {record.kit, record.place, ""}));
  const auto late = fitted(record.blade, {record.kit, record.place, ""});
  CHECK_KINDS(record.kinds("2025-02-01", late), CheckKind::moved_later);
  BOOST_CHECK(record.only("2025-02-01", late).entries == std::vector{later});
  BOOST_CHECK_EQUAL(record.only("2025-02-01", late).slot, "place");
}

BOOST_AUTO_TEST_CASE(a_place_holds_one_thing) {
  TwoAircraft record;
  record.say("2025-02-01", fitted(record.blade, {record.kit, record.place, ""}));
  const auto other = fitted(support::part("PN-4411", "B-91"), {record.kit, record.place, ""});
  CHECK_KINDS(record.kinds("2025-02-20", other), CheckKind::place_taken);
  BOOST_CHECK_EQUAL(record.only("2025-02-20", other).names.at(0), "part PN-4411 B-88");
  CHECK_KINDS(record.kinds("2025-02-20", fitted(support::part("PN-4411", "B-91"),
                                                {record.kit, "main rotor blade 2", ""})));
}

BOOST_AUTO_TEST_CASE(what_is_not_there_is_not_removed) {
  TwoAircraft record;
  record.say("2025-02-01", fitted(record.blade, {record.kit, record.place, ""}));
  const auto elsewhere = removed(record.blade, {record.mob, record.place, ""});
  CHECK_KINDS(record.kinds("2025-02-20", elsewhere), CheckKind::not_fitted_there);
  const auto names = record.only("2025-02-20", elsewhere).names;
  BOOST_CHECK_EQUAL(names.at(1), "main rotor blade 1 of aircraft ZZ-MOB");
  BOOST_CHECK_EQUAL(names.at(2), "main rotor blade 1 of aircraft ZZ-KIT");
  CHECK_KINDS(record.kinds("2025-01-31", removed(record.blade, {record.kit, record.place, ""})),
              CheckKind::not_fitted_there);
  CHECK_KINDS(record.kinds("2025-02-20", removed(record.blade, {record.kit, record.place, ""})));
}

BOOST_AUTO_TEST_CASE(a_thing_is_not_inside_itself) {
  TwoAircraft record;
  const auto module = support::part("M-3", "M-31");
  const auto disc = support::part("D-1", "D-12");
  record.say("2025-02-01", fitted(disc, {module, "disc 2", ""}));
  CHECK_KINDS(record.kinds("2025-02-02", fitted(module, {disc, "anywhere", ""})),
              CheckKind::serial_elsewhere);
}

BOOST_AUTO_TEST_CASE(the_engine_believed_in_a_place_is_compared_with_the_record) {
  TwoAircraft record;
  record.say("2025-02-01",
             fitted(support::engine("TS-40", "E-1001"), {record.kit, "engine 1", ""}));
  auto tried = support::tried(record.kit, "engine 1", 1);
  tried.serial = logbook::Serial{"E-1002"};
  CHECK_KINDS(record.kinds("2025-02-20", tried), CheckKind::not_fitted_there);
  BOOST_CHECK(record.only("2025-02-20", tried).severity == Severity::doubtful);
  tried.serial = logbook::Serial{"E-1001"};
  CHECK_KINDS(record.kinds("2025-02-20", tried));
}

BOOST_AUTO_TEST_SUITE_END()
