// Yes needs nine things on record (design 7). Each is taken from the demo in turn, and each time
// the answer must be "not known", exit code 3. Common practice, no source: the conditions are our
// own.
#include <boost/test/unit_test.hpp>

#include "laws/demo_book.h"
#include "sentence/frame.h"

namespace {

using laws::DemoBook;
using logbook::Entry;

const std::vector<std::string> question{"ready", "ZZ-KIT", "--hours", "3", "--as-of", "2026-03-04"};

bool says(const Entry& entry, const std::string& words) {
  return entry.sentence.find(words) != std::string::npos;
}

// Strikes what holds all the words; asks; the answer names what is missing.
void taking_away_makes_it_not_known(const std::string& words, const std::string& named) {
  const DemoBook book;
  BOOST_TEST_REQUIRE(book.run(question).code == 0);
  BOOST_TEST(book.strike([&](const Entry& entry) { return says(entry, words); }) > 0);
  const laws::Answer answer = book.run(question);
  BOOST_TEST(answer.code == 3, answer.out);
  BOOST_TEST(answer.out.find("Not known.") == 0U, answer.out);
  BOOST_TEST(answer.out.find(named) != std::string::npos, answer.out);
}

void a_line_makes_it_not_known(const DemoBook& book, const std::string& named) {
  const laws::Answer answer = book.run(question);
  BOOST_TEST(answer.code == 3, answer.out);
  BOOST_TEST(answer.out.find("Not known.") == 0U, answer.out);
  BOOST_TEST(answer.out.find(named) != std::string::npos, answer.out);
}

logbook::Said correction_of(const Entry& entry, quantity::Hours hours) {
  logbook::Said inner = *entry.said;
  std::get<logbook::Flew>(inner.fact).hours = hours;
  logbook::Corrected corrected;
  corrected.entry = {sentence::short_writer(entry.id.writer), entry.id.number};
  corrected.because = "two people looked";
  corrected.instead = logbook::InnerSaid(inner);
  logbook::Said said;
  said.day = *quantity::make_day({2026, 3, 5});
  said.fact = corrected;
  return said;
}

Entry a_flight_of(const DemoBook& book, const std::string& words) {
  for (Entry& entry : book.entries()) {
    if (entry.said && says(entry, words)) return entry;
  }
  BOOST_FAIL("no such flight in the demo: " + words);
  return {};
}

}  // namespace

BOOST_AUTO_TEST_CASE(condition_1_totals_of_the_engine) {
  taking_away_makes_it_not_known("engine TS-40 E-1001 brings forward", "E-1001");
}
BOOST_AUTO_TEST_CASE(condition_2_every_required_place_is_filled) {
  taking_away_makes_it_not_known("fitted to aircraft ZZ-KIT \"main gearbox\"", "main gearbox");
}
BOOST_AUTO_TEST_CASE(condition_3_a_last_done_for_each_inspection) {
  taking_away_makes_it_not_known("\"annual inspection\" done on aircraft ZZ-KIT",
                                 "annual inspection");
}
BOOST_AUTO_TEST_CASE(condition_4_a_limit_for_the_engine) {
  taking_away_makes_it_not_known("model TS-40 overhaul at", "E-1001");
}
BOOST_AUTO_TEST_CASE(condition_5_no_unknown_that_a_limit_reads) {
  taking_away_makes_it_not_known("part T1 D-77 brings forward", "D-77");
}
BOOST_AUTO_TEST_CASE(condition_6_directives_reviewed) {
  taking_away_makes_it_not_known("aircraft ZZ-KIT reviewed", "reviewed");
}
BOOST_AUTO_TEST_CASE(condition_7_no_open_question) {
  const DemoBook book;
  const Entry flight = a_flight_of(book, "2026-02-25 aircraft ZZ-KIT flew");
  book.append(correction_of(flight, std::get<logbook::Flew>(flight.said->fact).hours));
  book.append(correction_of(
      flight, std::get<logbook::Flew>(flight.said->fact).hours + quantity::Hours::of(360)));
  a_line_makes_it_not_known(book, "Question");
}
BOOST_AUTO_TEST_CASE(condition_8_no_entry_that_cannot_be_read) {
  const DemoBook book;
  book.put_line_of_another_base("aircraft:ZZ-KIT", "2026-03-01 aircraft ZZ-KIT gleams.", 2);
  a_line_makes_it_not_known(book, "read");
}
BOOST_AUTO_TEST_CASE(condition_9_all_bases_heard) {
  const DemoBook book;
  book.put_line_of_another_base("base:North", "2026-01-05 base \"North\" joins.", 1);
  a_line_makes_it_not_known(book, "base");
}
BOOST_AUTO_TEST_CASE(a_base_heard_since_the_last_flight_blocks_nothing) {
  const DemoBook book;
  book.put_line_of_another_base("base:North", "2026-03-02 base \"North\" joins.", 1);
  BOOST_TEST(book.run(question).code == 0);
}
