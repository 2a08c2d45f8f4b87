// Corrections and strikes: what they name, and the record as it would then stand.

#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using support::fitted;
using support::flew;

BOOST_AUTO_TEST_SUITE(check_chain)

BOOST_AUTO_TEST_CASE(a_correction_is_checked_without_the_old_value) {
  Record record;
  record.begin("4400.0", "100.0");
  const auto flight =
      record.say("2025-03-03", flew(record.kit, "20.0", {}, collective("100.0", "120.0")));
  const auto right = flew(record.kit, "1.0", {}, collective("100.0", "101.0"));
  CHECK_KINDS(record.kinds(corrected(flight, said("2025-03-03", right))));
  const auto leaves_a_gap = flew(record.kit, "1.0", {}, collective("100.5", "101.5"));
  CHECK_KINDS(record.kinds(corrected(flight, said("2025-03-03", leaves_a_gap))),
              CheckKind::meter_gap);
  CHECK_KINDS(record.kinds(corrected(flight, said("2025-03-11", right))), CheckKind::in_the_future,
              CheckKind::in_the_future);
}

BOOST_AUTO_TEST_CASE(a_corrected_flight_overlaps_the_next) {
  Record record;
  record.begin("4400.0", "100.0");
  const auto flight =
      record.say("2025-03-03", flew(record.kit, "1.0", {}, collective("100.0", "101.0")));
  record.say("2025-03-04", flew(record.kit, "1.0", {}, collective("101.0", "102.0")));
  const auto longer = flew(record.kit, "1.2", {}, collective("100.0", "101.2"));
  CHECK_KINDS(record.kinds(corrected(flight, said("2025-03-03", longer))),
              CheckKind::meter_overlap);
}

BOOST_AUTO_TEST_CASE(an_entry_must_be_there_to_be_corrected_or_struck) {
  Record record;
  record.begin("4400.0", "");
  logbook::EntryId none;
  none.writer.bytes.fill('K');
  none.number = 99;
  CHECK_KINDS(record.kinds(corrected(none, said("2025-03-03", flew(record.kit, "1.0")))),
              CheckKind::entry_unknown);
  CHECK_KINDS(record.kinds(struck(none)), CheckKind::entry_unknown);
}

BOOST_AUTO_TEST_CASE(a_correction_names_the_newest_of_its_chain) {
  Record record;
  record.begin("4400.0", "");
  const auto first = record.say("2025-03-03", flew(record.kit, "1.0"));
  const auto second = record.correct(first, "2025-03-03", flew(record.kit, "1.1"));
  const auto again = said("2025-03-03", flew(record.kit, "1.2"));
  CHECK_KINDS(record.kinds(corrected(first, again)), CheckKind::correction_of_older_entry);
  const auto entries = record.objections(corrected(first, again)).at(0).entries;
  BOOST_CHECK((entries == std::vector{first, second}));
  CHECK_KINDS(record.kinds(corrected(second, again)));
}

BOOST_AUTO_TEST_CASE(a_correction_keeps_the_kind_and_changes_something) {
  Record record;
  record.begin("4400.0", "");
  const auto flight = record.say("2025-03-03", flew(record.kit, "1.0"));
  CHECK_KINDS(
      record.kinds(corrected(flight, said("2025-03-03", support::unaccounted(record.kit, "1.0")))),
      CheckKind::correction_of_other_kind);
  CHECK_KINDS(record.kinds(corrected(flight, said("2025-03-03", flew(record.kit, "1.0")))),
              CheckKind::nothing_changes);
  CHECK_KINDS(record.kinds(corrected(flight, said("2025-03-04", flew(record.kit, "1.0")))));
}

BOOST_AUTO_TEST_CASE(what_is_struck_is_not_struck_again_nor_corrected) {
  Record record;
  record.begin("4400.0", "");
  const auto flight = record.say("2025-03-03", flew(record.kit, "1.0"));
  CHECK_KINDS(record.kinds(struck(flight)));
  const auto strike = record.strike(flight);
  CHECK_KINDS(record.kinds(struck(flight)), CheckKind::already_struck);
  CHECK_KINDS(record.kinds(corrected(flight, said("2025-03-03", flew(record.kit, "1.2")))),
              CheckKind::already_struck);
  CHECK_KINDS(record.kinds(corrected(strike, said("2025-03-03", flew(record.kit, "1.2")))),
              CheckKind::correction_of_other_kind);
  CHECK_KINDS(record.kinds(struck(strike)));
  record.strike(strike);
  CHECK_KINDS(record.kinds(struck(flight)));
}

BOOST_AUTO_TEST_CASE(striking_what_others_rest_on_is_asked_about) {
  Record record;
  record.begin("4400.0", "");
  const auto blade = support::part("PN-4411", "B-88");
  const auto fitting = record.say("2025-03-02", fitted(blade, {record.kit, "blade 1", ""}));
  CHECK_KINDS(record.kinds(struck(fitting)));
  const auto removal =
      record.say("2025-03-03", support::removed(blade, {record.kit, "blade 1", ""}));
  CHECK_KINDS(record.kinds(struck(fitting)), CheckKind::referred_to);
  BOOST_CHECK(record.objections(struck(fitting)).at(0).entries == std::vector{removal});
  CHECK_KINDS(record.kinds(struck(removal)));
}

BOOST_AUTO_TEST_CASE(what_is_replaced_must_be_there_and_of_the_same_kind) {
  Record record;
  record.begin("4400.0", "");
  const auto flight = record.say("2025-03-03", flew(record.kit, "1.0"));
  logbook::OnCondition condition;
  condition.scope = record.kit;
  auto replaces = said("2025-03-04", condition);
  replaces.instead_of = name_of(flight);
  CHECK_KINDS(record.kinds(replaces), CheckKind::correction_of_other_kind);
  replaces.instead_of->number = 99;
  CHECK_KINDS(record.kinds(replaces), CheckKind::entry_unknown);
  replaces.instead_of = name_of(record.say("2025-03-03", condition));
  CHECK_KINDS(record.kinds(replaces));
}

BOOST_AUTO_TEST_SUITE_END()
