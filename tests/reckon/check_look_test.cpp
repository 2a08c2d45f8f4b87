// What a look into an exceedance, a correction or a strike may name. Derived from record-language
// (looked into; corrected names the newest of its chain; struck) and practice 2.
#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;

namespace {

logbook::Exceeded exceeded(const logbook::Aircraft& aircraft, std::int64_t seconds) {
  logbook::Exceeded fact;
  fact.aircraft = aircraft;
  fact.place = {"engine 1"};
  fact.what = {logbook::GaugeTemperature{quantity::Temperature::of(9150)}, seconds};
  return fact;
}
logbook::LookedInto looked_into(const logbook::EntryId& entry) {
  return {name_of(entry), "gauge checked"};
}

struct Hot : Record {
  Hot() {
    begin("4300.0", "");
    entry = say("2025-03-03", exceeded(kit, 3));
  }
  logbook::EntryId entry;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(check_look, Hot)

BOOST_AUTO_TEST_CASE(what_stood_past_a_limit_is_looked_into_from_its_day_on) {
  CHECK_KINDS(kinds("2025-03-03", looked_into(entry)));
  const auto early = only("2025-03-02", looked_into(entry));
  BOOST_CHECK(early.kind == CheckKind::looked_before);
  BOOST_CHECK(early.entries == std::vector{entry});
  BOOST_CHECK(early.day == support::day("2025-03-03"));
}

BOOST_AUTO_TEST_CASE(there_is_nothing_to_look_into_behind_a_flight) {
  const auto flight = say("2025-03-03", support::flew(kit, "1.0"));
  const auto asked = only("2025-03-04", looked_into(flight));
  BOOST_CHECK(asked.kind == CheckKind::nothing_to_look_into);
  BOOST_CHECK(asked.severity == Severity::impossible);
  BOOST_CHECK(asked.entries == std::vector{flight});
  logbook::Started started;
  started.aircraft = kit;
  started.place = {"engine 1"};
  const auto start = say("2025-03-03", started);
  CHECK_KINDS(kinds("2025-03-04", looked_into(start)));
  strike(start);
  CHECK_KINDS(kinds("2025-03-04", looked_into(start)), CheckKind::entry_unknown);
}

BOOST_AUTO_TEST_CASE(the_newest_of_a_chain_is_looked_into) {
  const auto newest = correct(entry, "2025-03-03", exceeded(kit, 5));
  CHECK_KINDS(kinds("2025-03-04", looked_into(newest)));
  const auto asked = only("2025-03-04", looked_into(entry));
  BOOST_CHECK(asked.kind == CheckKind::correction_of_older_entry);
  BOOST_CHECK((asked.entries == std::vector{entry, newest}));
}

BOOST_AUTO_TEST_CASE(
    a_value_whose_correction_was_struck_is_corrected_again_and_not_the_struck_one) {
  const auto slip = correct(entry, "2025-03-03", exceeded(kit, 5));
  const auto strike_of_it = strike(slip);
  const auto again = checking::said("2025-03-03", exceeded(kit, 4));
  CHECK_KINDS(kinds(corrected(entry, again)));
  CHECK_KINDS(kinds(corrected(slip, again)), CheckKind::already_struck);
  CHECK_KINDS(kinds(corrected(strike_of_it, again)), CheckKind::correction_of_other_kind);
  CHECK_KINDS(kinds(struck(slip)), CheckKind::already_struck);
  CHECK_KINDS(kinds(struck(strike_of_it)));  // what it struck returns
}

BOOST_AUTO_TEST_CASE(what_a_definition_replaced_is_not_struck_without_a_word) {
  logbook::Task task;
  task.name = {"inspection"};
  task.scope = kit;
  const auto old = say("2025-03-01", task);
  CHECK_KINDS(kinds(struck(old)));
  auto revised = checking::said("2025-03-02", task);
  revised.instead_of = name_of(old);
  const auto newer = say(revised);
  CHECK_KINDS(kinds(struck(old)), CheckKind::referred_to);
  BOOST_CHECK(objections(struck(old)).front().entries == std::vector{newer});
  CHECK_KINDS(kinds(struck(newer)));
}

BOOST_AUTO_TEST_CASE(a_fitting_is_not_struck_from_under_its_removal) {
  const auto part = support::part("PN-1", "B-1");
  const auto fitting = say("2025-03-02", support::fitted(part, {kit, "hub", ""}));
  CHECK_KINDS(kinds(struck(fitting)));
  const auto removal = say("2025-03-04", support::removed(part, {kit, "hub", ""}));
  CHECK_KINDS(kinds(struck(fitting)), CheckKind::referred_to);
  BOOST_CHECK(objections(struck(fitting)).front().entries == std::vector{removal});
  // The removal of another thing, from another place or another aircraft rests on nothing of it.
  const auto other = say("2025-03-05", support::fitted(part, {kit, "other", ""}));
  CHECK_KINDS(kinds(struck(other)));
}

BOOST_AUTO_TEST_SUITE_END()
