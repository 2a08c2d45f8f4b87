#include "report/why_answer.h"

#include <boost/test/unit_test.hpp>

#include "report/sheets.h"

namespace {

using namespace words_test;
using namespace report_test;
using reckon::Term;
using reckon::TermKind;

report::Answer answer_for(const std::vector<Item>& items) {
  const reckon::Standing standing;
  const reckon::Histories histories(standing, day(2026, 3, 4), reckon::Ambiguous::early);
  return report::why_answer(histories, items, sheet());
}

Term term(TermKind kind, const Figure& figure) {
  Term made;
  made.kind = kind;
  made.figure = figure;
  made.from = day(2024, 5, 2);
  made.first = entry(89);
  made.last = entry(512);
  return made;
}

// 6000.0 h, of which 5550.0 h came with it and 310.0 h were flown.
Item disc() {
  Item item = limit_item(logbook::Part{{"T1"}, {"T1-77"}}, logbook::LimitVerb::retires);
  Side side = hours_side(60000, 1400, State::ok);
  side.since = logbook::Basis::new_;
  Term had = term(TermKind::had_when_fitted, tenths(55500));
  had.last = had.first;
  Term flown = term(TermKind::used_in_stay, tenths(3100));
  flown.host = engine;
  flown.flights = 212;
  side.used = {tenths(58600), {had, flown}};
  return with_sides(item, {side}, 0);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(why_answer)

BOOST_AUTO_TEST_CASE(a_life_is_a_short_sum_that_names_its_entries) {
  const auto answer = answer_for({disc()});
  BOOST_TEST(says(answer, "T1-77 has 140.0 h left before it must be retired."));
  BOOST_TEST(says(answer, "6000.0 h"));
  BOOST_TEST(says(answer, "-5550.0 h"));
  BOOST_TEST(says(answer, "212 flights (K7QXM-89 to K7QXM-512)"));
  BOOST_TEST(says(answer, "= 140.0 h"));
  check_no_banned_word(answer);
  BOOST_TEST_MESSAGE(text_of(answer, 80));
}

BOOST_AUTO_TEST_CASE(a_sum_that_does_not_add_up_is_told_by_its_due_point) {
  Item item = disc();
  item.sides[0].used.because.pop_back();
  const auto answer = answer_for({item});
  BOOST_TEST(says(answer, "due point on record"));
  BOOST_TEST(says(answer, "-4323.3 h"));
  BOOST_TEST(!says(answer, "-5550.0 h"));
}

BOOST_AUTO_TEST_CASE(a_sum_says_how_surely_its_terms_and_its_end_are_known) {
  Item item = disc();
  Side& side = item.sides[0];
  side.left_is_at_most = true;
  side.used.because[0].figure = tenths(55500).as_sure_as(reckon::Sureness::at_least);
  side.used.because[1].figure = tenths(3100).as_sure_as(reckon::Sureness::by_default);
  const auto answer = answer_for({item});
  BOOST_TEST(says(answer, "-5550.0 h at least"));
  BOOST_TEST(says(answer, "-310.0 h by default"));
  BOOST_TEST(says(answer, "= at most 140.0 h"));
  BOOST_TEST(!says(answer, "= 140.0 h"));
}

BOOST_AUTO_TEST_CASE(a_calendar_is_a_sentence_with_its_last_legal_day) {
  const auto answer = answer_for({annual(day(2026, 6, 30), State::ok)});
  BOOST_TEST(says(answer,
                  "By the calendar: 12 calendar months from 6 June 2025 (K7QXM-88); the "
                  "last legal day is 30 June 2026, 118 days left."));
}

BOOST_AUTO_TEST_CASE(the_one_that_runs_out_first_stands_first) {
  Item later = blade_life(410, State::ok);
  const std::string text = text_of(answer_for({disc(), later}), 200);
  BOOST_TEST(text.find("B-88 has 41.0 h left") < text.find("T1-77 has 140.0 h left"));
}

BOOST_AUTO_TEST_CASE(what_is_not_known_says_what_is_missing) {
  const auto answer = answer_for({unknown_starts()});
  BOOST_TEST(says(answer, "not known: its starts since new are not known."));
  BOOST_TEST(answer.needs_attention);
}

BOOST_AUTO_TEST_CASE(a_life_shared_by_fractions_shows_each_part_and_their_sum) {  // rules 70
  Item item = limit_item(logbook::Part{{"PN-70"}, {"A-1"}}, logbook::LimitVerb::retires);
  Side side = hours_side(20000, 4000, State::ok);
  side.parts = {{term(TermKind::used_in_stay, tenths(24000)), tenths(30000)}};
  side.life_used = reckon::LifeUsed({{24000, 30000}});
  item.sharing = reckon::Sharing::by_fractions;
  const auto answer = answer_for({with_sides(item, {side}, 0)});
  BOOST_TEST(says(answer, "2400.0 h of 3000.0 h"));
  BOOST_TEST(says(answer, "= 0.8"));
  BOOST_TEST(says(answer, "= 400.0 h"));
  BOOST_TEST(says(answer, "left, of 2000.0 h"));
  BOOST_TEST(json_says(answer, "\"shares_lives\":\"by fractions\",\"life_used\":0.8"));
  check_no_banned_word(answer);
}

BOOST_AUTO_TEST_SUITE_END()
