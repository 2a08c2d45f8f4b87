#include "report/ready_answer.h"

#include <boost/test/unit_test.hpp>

#include "report/sheets.h"
#include "words/words.h"

namespace {

using namespace words_test;
using namespace report_test;
using reckon::Answer;
using reckon::Ready;

struct Empty {
  reckon::Standing standing;
  reckon::Histories histories{standing, day(2026, 3, 4), reckon::Ambiguous::early};
};

report::Answer answer_to(const Ready& ready, std::optional<std::int64_t> tenths_of_an_hour) {
  const Empty empty;
  reckon::Trip trip;
  if (tenths_of_an_hour) trip.hours = quantity::Hours::of(*tenths_of_an_hour * 360);
  return report::ready_answer(empty.histories, {kit, trip, day(2026, 3, 4)}, ready, sheet());
}

Ready stopped() {
  Ready ready;
  ready.answer = Answer::no;
  ready.obstacles = {{directive(28, State::soon), 0, tenths(28), tenths(30), false}};
  ready.next = {blade_life(410, State::ok), annual(day(2026, 6, 30), State::ok)};
  ready.allowed_hours = tenths(28).hours();
  ready.allowed_until = day(2026, 6, 30);
  ready.last_flight = day(2026, 3, 3);
  return ready;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(ready_answer)

BOOST_AUTO_TEST_CASE(no_is_said_first_then_why_then_what_comes_next) {
  const auto answer = answer_to(stopped(), 30);
  const std::string text = text_of(answer);
  BOOST_TEST(text.starts_with(
      "No. A 3.0 h trip would pass directive D-26-04 by 0.2 h. You can fly 2.8 h.\n"));
  BOOST_TEST(says(answer,
                  "Then: life of part PN-4411 B-88 in 41.0 h; annual inspection by 30 "
                  "June 2026."));
  BOOST_TEST(says(answer, "Counted: flights to 3 March 2026 (yesterday)."));
  BOOST_TEST(answer.needs_attention);
  check_no_banned_word(answer);
  BOOST_TEST_MESSAGE(text_of(answer, 80));
}

BOOST_AUTO_TEST_CASE(json_has_answer_first_allowed_and_obstacles) {
  const auto answer = answer_to(stopped(), 30);
  BOOST_TEST(json_says(answer, "\"answer\":\"no\",\"first\":\"No. A 3.0 h trip"));
  BOOST_TEST(json_says(
      answer, "\"allowed\":{\"hours\":10080,\"shown\":\"2.8 h\",\"until\":\"2026-06-30\"}"));
  BOOST_TEST(json_says(answer, "\"left\":10080,\"needed\":10800"));
}

BOOST_AUTO_TEST_CASE(not_known_gives_the_sentence_to_say) {
  Ready ready;
  ready.missing.resize(2);
  ready.missing[0].condition = reckon::Condition::programme;
  ready.missing[1].condition = reckon::Condition::reviewed;
  const auto answer = answer_to(ready, {});
  const std::string text = text_of(answer, 200);
  BOOST_TEST(text.starts_with("Not known. No inspection programme is on record for ZZ-KIT.\n"));
  BOOST_TEST(says(answer,
                  "Say for example: inspection \"annual inspection\" on aircraft ZZ-KIT "
                  "every 12 calendar months."));
  BOOST_TEST(says(answer, "Also: No review of directives"));
  BOOST_TEST(json_says(answer, "\"condition\":\"reviewed\""));
  BOOST_TEST_MESSAGE(text_of(answer, 80));
}

BOOST_AUTO_TEST_CASE(what_is_missing_is_told_beside_a_no_too) {
  Ready ready = stopped();
  ready.missing.resize(1);
  ready.missing[0].condition = reckon::Condition::bases_heard;
  BOOST_TEST(says(answer_to(ready, 30), "Not known: Not every base has been heard"));
}

BOOST_AUTO_TEST_CASE(more_items_than_are_told_are_counted) {
  Ready ready;
  ready.answer = Answer::yes;
  ready.next = std::vector<Item>(8, blade_life(410, State::ok));
  BOOST_TEST(says(answer_to(ready, {}), "3 more items: timeworn due ZZ-KIT lists all."));
}

BOOST_AUTO_TEST_CASE(yes_needs_no_attention) {
  Ready ready;
  ready.answer = Answer::yes;
  const auto answer = answer_to(ready, 10);
  BOOST_TEST(!answer.needs_attention);
  BOOST_TEST(text_of(answer).starts_with("Yes. A 1.0 h trip passes no limit on record.\n"));
}

BOOST_AUTO_TEST_SUITE_END()
