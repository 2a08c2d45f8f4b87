// What a thing is said to have had, held against what is on record of it already: later, earlier,
// and on other clocks. Derived from design 4 (a stated total is a statement) and 5 (a total is
// brought forward plus its stays; overhaul restarts "since overhaul" only).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/checking.h"

using namespace checking;
using logbook::Basis;
using support::fitted;
using support::flew;
using support::forward;
using support::had;
using support::had_hours;
using support::removed;
using support::starts;

namespace {

const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::Part part = support::part("PN-1", "B-1");

// ZZ-KIT at 4000.0 h on 1 March and 10.0 h with 10 starts flown on 3 March.
struct Flown : Record {
  Flown() {
    begin("4000.0", "");
    say("2025-03-03", flew(kit, "10.0", {starts(10)}));
  }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(check_had, Flown)

BOOST_AUTO_TEST_CASE(a_late_fitting_is_held_against_what_was_brought_forward_after_it) {
  say("2025-03-05", forward(engine, {had_hours("1010.0"), had(starts(510))}));
  const auto late = [&](const std::string& hours, std::int64_t count) {
    return fitted(engine, {kit, "engine 1", ""}, {had_hours(hours), had(starts(count))});
  };
  // 10 h lie between; how many starts of them were this engine's is not on record.
  CHECK_KINDS(kinds("2025-03-01", late("1000.0", 500)));
  CHECK_KINDS(kinds("2025-03-01", late("1000.0", 600)));
  CHECK_KINDS(kinds("2025-03-01", late("1005.0", 500)), CheckKind::had_differs);
  const auto asked = only("2025-03-01", late("1005.0", 500));
  BOOST_CHECK(asked.stated == hours("1005.0"));
  BOOST_CHECK(asked.reckoned == hours("1000.0"));
}

BOOST_AUTO_TEST_CASE(a_late_fitting_into_something_loose_uses_nothing) {
  const auto module = support::part("PN-M", "M-1");
  say("2025-03-01", forward(module, {had_hours("1.0")}));
  say("2025-03-05", forward(part, {had_hours("50.0")}));
  CHECK_KINDS(kinds("2025-03-01", fitted(part, {module, "a", ""}, {had_hours("50.0")})));
  CHECK_KINDS(kinds("2025-03-01", fitted(part, {module, "a", ""}, {had_hours("40.0")})),
              CheckKind::had_differs);
}

BOOST_AUTO_TEST_CASE(what_is_not_known_between_is_not_asked_about) {
  // ZZ-MOB's hours are not on record before 8 March.
  say("2025-03-08", forward(mob, "500.0"));
  say("2025-03-09", forward(engine, {had_hours("1010.0")}));
  CHECK_KINDS(kinds("2025-03-02", fitted(engine, {mob, "engine 1", ""}, {had_hours("900.0")})));
}

BOOST_AUTO_TEST_CASE(an_overhaul_says_what_it_had_since_new) {
  say("2025-03-01", fitted(engine, {kit, "engine 1", ""},
                           {had_hours("1000.0"), had_hours("200.0", Basis::overhaul)}));
  const auto overhauled = [](const std::string& since_new, const std::string& since_overhaul) {
    return support::overhauled(engine,
                               {had_hours(since_new), had_hours(since_overhaul, Basis::overhaul)});
  };
  CHECK_KINDS(kinds("2025-03-05", overhauled("1010.0", "210.0")));
  CHECK_KINDS(kinds("2025-03-05", overhauled("1010.0", "0.0")));  // since this one
  const auto asked = only("2025-03-05", overhauled("1030.0", "0.0"));
  BOOST_CHECK(asked.kind == CheckKind::had_differs);
  BOOST_CHECK(!asked.since);
  // What is brought forward since overhaul is compared since overhaul.
  const auto again = only("2025-03-05", forward(engine, {had_hours("250.0", Basis::overhaul)}));
  BOOST_CHECK(again.kind == CheckKind::had_differs);
  BOOST_CHECK(again.since == Basis::overhaul);
  BOOST_CHECK(again.reckoned == hours("210.0"));
}

BOOST_AUTO_TEST_CASE(before_an_overhaul_nothing_since_overhaul_can_be_told) {
  say("2025-03-04", support::overhauled(engine, {had_hours("1010.0")}));
  say("2025-03-05", forward(engine, {had_hours("1010.0"), had_hours("0.0", Basis::overhaul)}));
  CHECK_KINDS(kinds("2025-03-01", forward(engine, {had_hours("1800.0", Basis::overhaul)})));
}

BOOST_AUTO_TEST_CASE(only_an_engine_that_came_with_its_airframe_is_outdone_by_it) {
  // Fitted with more hours than its airframe: more later is only a difference.
  say("2025-03-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("5000.0")}));
  auto slip = removed(engine, {kit, "engine 1", ""});
  slip.with = {had_hours("5090.0")};
  CHECK_KINDS(kinds("2025-03-05", slip), CheckKind::had_differs);
  // A part, and an engine in a stand, have no airframe that could be younger.
  const auto module = support::part("PN-M", "M-1");
  const auto other = support::engine("TS-40", "E-2");
  say("2025-03-01", fitted(part, {kit, "hub", ""}, {had_hours("0.0")}));
  auto of_part = removed(part, {kit, "hub", ""});
  of_part.with = {had_hours("4090.0")};
  CHECK_KINDS(kinds("2025-03-05", of_part), CheckKind::had_differs);
  say("2025-03-01", forward(module, {had_hours("1.0")}));
  say("2025-03-01", fitted(other, {module, "a", ""}, {had_hours("0.0")}));
  auto of_stand = removed(other, {module, "a", ""});
  of_stand.with = {had_hours("4090.0")};
  CHECK_KINDS(kinds("2025-03-05", of_stand), CheckKind::had_differs);
}

BOOST_AUTO_TEST_CASE(an_airframe_brought_forward_again_is_compared) {
  CHECK_KINDS(kinds("2025-03-05", forward(kit, "4010.0")));
  const auto asked = only("2025-03-05", forward(kit, "4050.0"));
  BOOST_CHECK(asked.kind == CheckKind::stated_total_differs);
  BOOST_CHECK_EQUAL(asked.slot, "airframe");
  BOOST_CHECK(asked.reckoned == hours("4010.0"));
  CHECK_KINDS(kinds("2025-03-05", forward(support::aircraft("ZZ-NEW"), "1.0")));
}

BOOST_AUTO_TEST_CASE(one_name_on_an_aircraft_and_on_its_model_are_two_items) {
  using namespace definitions;
  say("2025-03-01", is_model(kit, "Larkwing 5"));
  say("2025-03-01", task("look", kit, {definitions::hours("50.0")}));
  say("2025-03-01", task("look", logbook::Model{{"Larkwing 5"}}, {definitions::hours("90.0")}));
  say("2025-03-01", support::done("look", kit, "4000.0"));
  const AsOf asked(*this, "2025-03-10");
  const auto items = asked.due(kit);
  BOOST_REQUIRE_EQUAL(items.size(), 2U);
  BOOST_TEST(items[0].id != items[1].id);
  BOOST_TEST(left(items[0]) == "40.0");
  BOOST_TEST(left(items[1]) == "80.0");
}

BOOST_AUTO_TEST_SUITE_END()
