// What definitions touch one another, and what may stand instead of what. Derived from design 5
// (a stated policy), design 6 (identity = name + subject; ends withdraws it) and record-language 8
// ("instead of": a definition that replaces one).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/check_hours.h"
#include "reckon/checking.h"
#include "reckon/rules_in_force.h"

using checking::CheckKind;
using checking::Record;
using definitions::limit;
using definitions::on_condition;
using support::done;
using support::flew;
using support::had_hours;

namespace {

const logbook::Engine engine = support::engine("TS-40", "E-1");
const logbook::Part part = support::part("PN-1", "B-1");
const logbook::Part sister = support::part("PN-1", "B-2");
const logbook::PartKind kind{{"PN-1"}};
const logbook::Model engines{{"TS-40"}};
const logbook::Model airframes{{"Larkwing 5"}};

logbook::SharesByFractions by_fractions(const logbook::Scope& scope) { return {scope, {}}; }
logbook::ShorterLimitStays shorter(const logbook::Scope& scope) {
  return {scope, logbook::LimitThatStays::shorter, {}};
}

struct Fleet : Record {
  Fleet() {
    begin("100.0", "");
    say("2025-03-01", support::forward(mob, "50.0"));
    say("2025-03-01", definitions::is_model(kit, "Larkwing 5"));
    say("2025-03-01", support::forward(engine, {had_hours("10.0")}));
    say("2025-03-01", support::forward(part, {had_hours("10.0")}));
    say("2025-03-01", support::forward(sister, {had_hours("20.0")}));
  }
  // Whether a policy is asked about once the other one is on record; the same in both orders.
  bool clash(const logbook::Scope& a, const logbook::Scope& b) const {
    Fleet one = *this;
    one.say("2025-03-02", by_fractions(a));
    Fleet other = *this;
    other.say("2025-03-02", shorter(b));
    const auto forth = one.kinds("2025-03-03", shorter(b));
    const auto back = other.kinds("2025-03-03", by_fractions(a));
    BOOST_CHECK(forth == back);
    return forth == checking::Kinds{CheckKind::lives_shared_otherwise};
  }
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(rules_rare, Fleet)

BOOST_AUTO_TEST_CASE(policies_clash_where_one_thing_has_both) {
  BOOST_TEST(clash(kind, kind));
  BOOST_TEST(clash(part, kind));
  BOOST_TEST(clash(engine, engines));
  BOOST_TEST(clash(kit, airframes));
  BOOST_TEST(!clash(mob, airframes));  // of which model it is nobody said
  BOOST_TEST(!clash(part, engines));
  BOOST_TEST(!clash(engine, kind));
  BOOST_TEST(!clash(part, sister));
  BOOST_TEST(!clash(kit, mob));
  BOOST_TEST(!clash(engines, airframes));
}

BOOST_AUTO_TEST_CASE(the_same_policy_twice_is_no_clash) {
  say("2025-03-02", shorter(kind));
  CHECK_KINDS(kinds("2025-03-03", shorter(kind)));
  CHECK_KINDS(kinds("2025-03-03", shorter(part)));
}

BOOST_AUTO_TEST_CASE(a_limit_stands_instead_of_a_limit_and_a_policy_of_a_policy) {
  const auto may = [](const logbook::Fact& newer, const logbook::Fact& older) {
    return reckon::may_stand_instead(newer, older);
  };
  logbook::MixedLimit mixed;
  mixed.scope = kind;
  BOOST_TEST(may(mixed, limit(kind, {})));
  BOOST_TEST(may(on_condition(kind), mixed));
  BOOST_TEST(may(shorter(kind), by_fractions(kind)));
  BOOST_TEST(may(flew(kit, "1.0"), flew(kit, "2.0")));
  BOOST_TEST(!may(shorter(kind), limit(kind, {})));
  BOOST_TEST(!may(limit(kind, {}), by_fractions(kind)));
  BOOST_TEST(!may(flew(kit, "1.0"), limit(kind, {})));
}

BOOST_AUTO_TEST_CASE(a_task_is_declared_again_once_it_has_ended_there) {
  const auto task = definitions::task("look", kit, {});
  const auto first = say("2025-03-02", task);
  CHECK_KINDS(kinds("2025-03-05", task), CheckKind::task_defined_twice);
  CHECK_KINDS(kinds("2025-03-05", definitions::task("look", mob, {})));
  auto directive = task;
  directive.class_ = logbook::TaskClass::directive;
  CHECK_KINDS(kinds("2025-03-05", directive));
  // Ended elsewhere, or before it was declared: it stands.
  say("2025-03-02", definitions::task("look", mob, {}));
  say("2025-03-03", definitions::ends("look", mob));
  say("2025-03-01", definitions::ends("look", kit));
  CHECK_KINDS(kinds("2025-03-05", task), CheckKind::task_defined_twice);
  BOOST_CHECK(only("2025-03-05", task).entries == std::vector{first});
  say("2025-03-04", definitions::ends("look", kit));
  CHECK_KINDS(kinds("2025-03-05", task));
}

BOOST_AUTO_TEST_CASE(what_names_another_subject_replaces_nothing) {
  using definitions::AsOf;
  const auto left = [](const Record& record) {
    const AsOf asked(record, "2025-03-10");
    std::vector<std::string> all;
    for (const reckon::Item& item : asked.due(support::aircraft("ZZ-KIT"))) {
      if (!item.sides.empty()) all.push_back(definitions::text(item.sides.front().limit));
    }
    return all;
  };
  const auto old = say("2025-03-01", definitions::task("look", kit, {definitions::hours("50.0")}));
  const auto renamed = definitions::task("look again", kit, {definitions::hours("70.0")});
  Fleet other_name = *this;
  other_name.say(definitions::instead("2025-03-02", renamed, old));
  BOOST_TEST(left(other_name).size() == 2U);
  auto other_class = definitions::task("look", kit, {definitions::hours("70.0")});
  other_class.class_ = logbook::TaskClass::directive;
  Fleet of_class = *this;
  of_class.say(definitions::instead("2025-03-02", other_class, old));
  BOOST_TEST(left(of_class).size() == 2U);
  say(definitions::instead("2025-03-02",
                           definitions::task("look", kit, {definitions::hours("70.0")}), old));
  BOOST_CHECK(left(*this) == std::vector<std::string>{"70.0"});
}

BOOST_AUTO_TEST_CASE(a_late_flight_that_overtakes_two_signed_totals_names_both) {
  say("2025-03-01", definitions::task("look", kit, {}));
  say("2025-03-02", flew(kit, "10.0"));
  const auto first = say("2025-03-05", done("look", kit, "110.0"));
  const auto second = say("2025-03-06", done("look", kit, "110.0"));
  const auto asked = only("2025-03-04", flew(kit, "1.3"));
  BOOST_CHECK(asked.kind == CheckKind::stated_total_differs);
  BOOST_CHECK((asked.entries == std::vector{first, second}));
  BOOST_CHECK(asked.day == support::day("2025-03-05"));
  CHECK_KINDS(kinds("2025-03-04", flew(mob, "1.3")));
}

BOOST_AUTO_TEST_CASE(figures_of_other_finenesses_agree_within_their_own) {
  const auto seconds = [](std::int64_t count) { return quantity::Hours::of(count); };
  // A whole second is finer than a minute: less than a minute apart may be rounding.
  BOOST_TEST(reckon::agree_with_clock(seconds(6001), seconds(6000)));
  BOOST_TEST(!reckon::agree_with_clock(seconds(6061), seconds(6000)));
  // A run that shows tenths at one end only is read to the hundredth.
  const logbook::MeterRun run = support::run("collective", "10.0", "11.75");
  BOOST_TEST(reckon::agree_with_meter(support::hours("1.75"), run));
  BOOST_TEST(reckon::agree_with_meter(support::hours("1:45"), run));
  BOOST_TEST(!reckon::agree_with_meter(support::hours("1.7"), run));
}

BOOST_AUTO_TEST_CASE(settings_stay_within_what_they_can_be) {
  logbook::TrendSettings trend;
  trend.model = engines;
  trend.serial_correlation = quantity::Decimal::of(950);
  trend.fuel_exponent = quantity::Decimal::of(3000);
  CHECK_KINDS(kinds("2025-03-03", trend));
  trend.serial_correlation = quantity::Decimal::of(951);
  CHECK_KINDS(kinds("2025-03-03", trend), CheckKind::out_of_bounds);
  trend.serial_correlation = quantity::Decimal::of(-1);
  trend.fuel_exponent = quantity::Decimal::of(3001);
  CHECK_KINDS(kinds("2025-03-03", trend), CheckKind::out_of_bounds, CheckKind::out_of_bounds);
  logbook::StartCheck check;
  check.model = engines;
  CHECK_KINDS(kinds("2025-03-03", check));
}

BOOST_AUTO_TEST_SUITE_END()
