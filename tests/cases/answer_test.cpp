#include "cases/answer.h"

#include <boost/test/unit_test.hpp>

namespace {

cases::Answer answer() {
  cases::Answer answer;
  answer.exit = 1;
  answer.text = "No. A 3.0 h trip would pass it.";
  answer.json = nlohmann::json::parse(R"({
    "answer": "no", "allowed": {"hours": 10080, "until": null},
    "missing": [{"condition": "reviewed"}],
    "items": [
      {"item": "check", "about": "aircraft ZZ-KIT", "unit": "h", "left": 12240, "due_at": 15000,
       "due_day": null, "state": "soon", "governs": true, "left_is_at_most": false},
      {"item": "check", "about": "aircraft ZZ-KIT", "unit": "days", "left": 12,
       "due_day": "2026-01-13", "state": "ok", "governs": false}],
    "totals": [{"unit": "landings", "amount": 5611, "sureness": "exact"},
               {"unit": "starts", "amount": 2102, "sureness": "at least"}]})");
  return answer;
}

void holds(const std::string& expectation) {
  BOOST_TEST_CONTEXT(expectation) BOOST_TEST(cases::against(expectation, answer()) == "");
}

void fails(const std::string& expectation) {
  BOOST_TEST_CONTEXT(expectation) BOOST_TEST(cases::against(expectation, answer()) != "");
}

}  // namespace

BOOST_AUTO_TEST_SUITE(expectations)

BOOST_AUTO_TEST_CASE(of_the_whole_answer_hold_or_fail) {
  holds("exit 1");
  fails("exit 0");
  holds("answer no");
  fails("answer yes");
  holds("allowed 2.8 h");
  fails("allowed 2.9 h");
  holds("allowed until null");
  holds("missing reviewed");
  fails("missing totals");
  fails("missing nothing");
  holds("words \"would pass it\"");
  fails("words \"airborne\"");
  fails("no words \"would pass it\"");
  holds("json items.0.left 12240");
  fails("json items.7.left 12240");
  fails("nonsense");
}

BOOST_AUTO_TEST_CASE(of_a_row_choose_the_side_by_its_unit) {
  holds("item \"check\" | left 3.4 h | state soon | governs");
  holds("item check | left 12 days | due 2026-01-13 | not governs");
  fails("item check | left 3.5 h");
  fails("item check | left 13 days");
  fails("item check | left 3.4 h | state ok");
  fails("item check | left at most 3.4 h");
  fails("item check | governs");
  fails("item blade | left 3.4 h");
  holds("item blade | not listed");
  fails("item check | not listed");
  holds("first check");
  fails("first blade");
}

BOOST_AUTO_TEST_CASE(of_totals_want_their_sureness) {
  holds("total 5611 landings");
  fails("total 5610 landings");
  fails("total at least 5611 landings");
  holds("total at least 2102 starts");
  fails("total 2102 starts");
  fails("total unknown landings");
  fails("total 1 flight");
}

BOOST_AUTO_TEST_SUITE_END()
