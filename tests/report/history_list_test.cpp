#include <boost/test/unit_test.hpp>

#include "report/history_page.h"
#include "report/sheets.h"

namespace {

using namespace words_test;
using namespace report_test;

logbook::Entry entry_on(std::int64_t number, logbook::Fact fact, std::string sentence) {
  logbook::Entry made;
  made.id = entry(number);
  made.said = logbook::Said{};
  made.said->day = day(2026, 3, static_cast<unsigned>(number));
  made.said->fact = std::move(fact);
  made.sentence = std::move(sentence);
  return made;
}

logbook::Entry flight_on(std::int64_t number) {
  logbook::Flew flew;
  flew.aircraft = kit;
  return entry_on(number, flew, "aircraft ZZ-KIT flew 1.3 h, entry " + std::to_string(number));
}

logbook::Entry correction_of(std::int64_t target, std::int64_t number) {
  logbook::Corrected fact;
  fact.entry = {"K7QXM", target};
  fact.because = "typed 1.3, was 1.8";
  logbook::Entry made = entry_on(
      number, fact, "entry corrected because \"typed 1.3, was 1.8\": aircraft ZZ-KIT flew 1.8 h.");
  made.frame.refers = {entry(target)};
  return made;
}

logbook::Entry strike_of(std::int64_t target, std::int64_t number) {
  logbook::Entry made = entry_on(number, logbook::Struck{{"K7QXM", target}, "entered twice"},
                                 "entry struck because \"entered twice\".");
  made.frame.refers = {entry(target)};
  return made;
}

reckon::StandingFact fact_of(std::vector<logbook::EntryId> chain) {
  reckon::StandingFact fact;
  fact.root = chain.front();
  fact.chain = std::move(chain);
  return fact;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(history_list)

BOOST_AUTO_TEST_CASE(a_correction_stands_beneath_what_it_corrects_with_its_reason) {
  const auto first = flight_on(4);
  const auto between = flight_on(5);
  const auto correction = correction_of(4, 12);
  reckon::Standing standing;
  standing.facts = {fact_of({entry(4), entry(12)}), fact_of({entry(5)})};
  const auto answer = report::history_page(
      {"aircraft ZZ-KIT", {&first, &between, &correction}, {}, {}}, standing, sheet());
  const std::string text = text_of(answer, 200);
  BOOST_TEST(text.find("corrected on 12 March 2026 because \"typed 1.3, was 1.8\": aircraft ZZ-KIT "
                       "flew 1.8 h.") < text.find("entry 5"));
  BOOST_TEST(json_says(answer, "\"about_entry\":\"K7QXM-4\",\"standing\":\"corrected\""));
  BOOST_TEST(json_says(answer, "\"about_entry\":\"K7QXM-4\",\"standing\":\"counts\""));
  BOOST_TEST_MESSAGE(text_of(answer, 80));
}

BOOST_AUTO_TEST_CASE(what_was_struck_stays_readable_and_a_struck_strike_is_marked_itself) {
  const auto first = flight_on(4);
  const auto strike = strike_of(4, 6);
  reckon::Standing standing;
  standing.struck = {fact_of({entry(4)})};
  const auto answer =
      report::history_page({"aircraft ZZ-KIT", {&first, &strike}, {}, {}}, standing, sheet());
  BOOST_TEST(json_says(answer, "\"standing\":\"struck\""));
  BOOST_TEST(says(answer, "flew 1.3 h, entry 4"));
  const auto again = strike_of(6, 7);
  reckon::Standing back;
  back.facts = {fact_of({entry(4)})};
  const auto undone =
      report::history_page({"aircraft ZZ-KIT", {&first, &strike, &again}, {}, {}}, back, sheet());
  BOOST_TEST(times(undone.json.in_one_line(), "\"standing\":\"struck\"") == 1u);
  BOOST_TEST(times(undone.json.in_one_line(), "\"standing\":\"counts\"") == 2u);
}

BOOST_AUTO_TEST_CASE(work_that_does_not_count_yet_is_told_apart) {
  const auto work = flight_on(4);
  reckon::Standing standing;
  standing.facts = {fact_of({entry(4)})};
  standing.facts.front().is_counted = false;
  const auto answer = report::history_page({"aircraft ZZ-KIT", {&work}, {}, {}}, standing, sheet());
  BOOST_TEST(says(answer, "not counted"));
  BOOST_TEST(json_says(answer, "\"standing\":\"not counted\""));
}

BOOST_AUTO_TEST_CASE(stays_are_told_with_their_entries) {
  reckon::Stay stay;
  stay.thing = blade;
  stay.host = kit;
  stay.place = {"main rotor blade 1"};
  stay.from.day = day(2024, 5, 2);
  stay.fitted = entry(88);
  const auto answer = report::history_page({"part PN-4411 B-88", {}, {stay}, {}}, {}, sheet());
  BOOST_TEST(says(answer,
                  "main rotor blade 1 of aircraft ZZ-KIT from 2 May 2024 (K7QXM-88), and "
                  "still there."));
  BOOST_TEST(says(answer, "No entry is about part PN-4411 B-88."));
}

BOOST_AUTO_TEST_CASE(a_total_that_has_moved_is_told_with_what_moved_it) {
  reckon::Statement moved;
  moved.entry = entry(88);
  moved.thing = kit;
  moved.stated = tenths(43000);
  moved.reckoned = tenths(43005);
  moved.moved_by = entry(530);
  const auto answer = report::history_page({"aircraft ZZ-KIT", {}, {}, {}, {moved}}, {}, sheet());
  BOOST_TEST(
      says(answer, "Aircraft ZZ-KIT in K7QXM-88: written 4300.0 h, now 4300.5 h since K7QXM-530."));
  BOOST_TEST(json_says(answer, "\"since\":\"K7QXM-530\""));
}

BOOST_AUTO_TEST_SUITE_END()
