#include "report/record_check.h"

#include <boost/test/unit_test.hpp>

#include "report/sheets.h"

namespace {

using namespace words_test;
using namespace report_test;

}  // namespace

BOOST_AUTO_TEST_SUITE(record_check)

BOOST_AUTO_TEST_CASE(a_clean_record_says_so) {
  report::Checked checked;
  checked.entries = 130;
  checked.figures_compared = 1;
  const auto answer = report::record_check(checked, sheet());
  BOOST_TEST(
      text_of(answer).starts_with("The record holds: no fault, no doubt, no open question."));
  BOOST_TEST(says(answer, "Looked at 130 entries and proved 1 figure in two more ways."));
  BOOST_TEST(!answer.needs_attention);
}

BOOST_AUTO_TEST_CASE(faults_doubts_and_questions_want_attention_and_accepted_ones_do_not) {
  reckon::RecordFinding gap;
  gap.entry = entry(12);
  gap.objection.kind = reckon::CheckKind::meter_gap;
  gap.objection.difference = tenths(23);
  report::Checked checked;
  checked.accepted = {gap};
  BOOST_TEST(!report::record_check(checked, sheet()).needs_attention);
  checked.findings = {gap};
  checked.faults = {{"chain", "K7QXM-12", "the entry does not follow the one before."}};
  const auto answer = report::record_check(checked, sheet());
  BOOST_TEST(answer.needs_attention);
  BOOST_TEST(says(answer, "Fault in chain, K7QXM-12:"));
  BOOST_TEST(says(answer, "2.3 h are missing before this flight"));
  BOOST_TEST(json_says(answer, "\"doubt\":\"2.3 h are missing before this flight\""));
  check_no_banned_word(answer);
}

// That a signature does not count is told in any case; attention is for work that waits for it.
BOOST_AUTO_TEST_CASE(signatures_that_do_not_count_are_told_and_want_attention_if_work_waits) {
  report::Checked checked;
  checked.refused = {{entry(14), entry(10), "The signature in K7QXM-14 does not count.", false}};
  const auto quiet = report::record_check(checked, sheet());
  BOOST_TEST(says(quiet, "The signature in K7QXM-14 does not count."));
  BOOST_TEST(!quiet.needs_attention);
  checked.refused.front().wants_attention = true;
  const auto loud = report::record_check(checked, sheet());
  BOOST_TEST(loud.needs_attention);
  BOOST_TEST(says(loud, "1 signature that does not count"));
  BOOST_TEST(
      json_says(loud, "\"refused_signatures\":[{\"entry\":\"K7QXM-14\",\"on\":\"K7QXM-10\""));
}

BOOST_AUTO_TEST_SUITE_END()
