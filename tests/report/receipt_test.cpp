#include <boost/test/unit_test.hpp>

#include "report/receipt_page.h"
#include "report/sheets.h"

namespace {

using namespace words_test;
using namespace report_test;

report::Saved flight() {
  logbook::Entry saved;
  saved.id = entry(512);
  saved.sentence = "2026-03-04 aircraft ZZ-KIT flew 1.7 h, 1 start, 3 landings.";
  saved.said = logbook::Said{};
  saved.said->day = day(2026, 3, 4);
  logbook::Flew flew;
  flew.aircraft = kit;
  saved.said->fact = flew;
  report::Saved all;
  all.entries = {saved};
  all.today = day(2026, 3, 4);
  all.day_was_left_out = true;
  return all;
}

report::Touched kit_with(std::vector<Item> items) {
  report::Touched touched;
  touched.thing = kit;
  touched.hours = tenths(43233);
  touched.counter = landings;
  touched.count = whole(5611);
  touched.items = std::move(items);
  logbook::UseRow row;
  row.key = "hours";
  row.amount = tenths(17).raw();
  touched.used = {row};
  return touched;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(receipt)

BOOST_AUTO_TEST_CASE(a_flight_tells_what_was_saved_the_totals_and_what_is_next) {
  const auto answer =
      report::receipt_page(flight(), {kit_with({directive(28, State::soon)})}, sheet());
  BOOST_TEST(text_of(answer, 200) ==
             "Saved K7QXM-512 (today): 2026-03-04 aircraft ZZ-KIT flew 1.7 h, 1 start, 3 "
             "landings.\nZZ-KIT now has 4323.3 h and 5611 landings. Next: directive D-26-04 in 2.8 "
             "h.\n");
  BOOST_TEST(!answer.needs_attention);
  check_no_banned_word(answer);
}

BOOST_AUTO_TEST_CASE(what_this_flight_took_over_its_limit_is_said_plainly) {
  const auto answer =
      report::receipt_page(flight(), {kit_with({directive(-6, State::over)})}, sheet());
  BOOST_TEST(says(answer, "Directive D-26-04 went over by 0.6 h in this flight."));
  BOOST_TEST(answer.needs_attention);
}

BOOST_AUTO_TEST_CASE(what_was_over_before_is_not_blamed_on_this_flight) {
  const auto answer =
      report::receipt_page(flight(), {kit_with({directive(-18, State::over)})}, sheet());
  BOOST_TEST(says(answer, "Over: directive D-26-04 is over by 1.8 h."));
  BOOST_TEST(!says(answer, "in this flight"));
}

BOOST_AUTO_TEST_CASE(many_entries_are_counted_only) {
  report::Saved many = flight();
  many.entries = std::vector<logbook::Entry>(11, many.entries.front());
  BOOST_TEST(says(report::receipt_page(many, {}, sheet()), "Saved 11 entries, K7QXM-512"));
}

BOOST_AUTO_TEST_CASE(totals_that_are_not_known_are_not_shown_as_figures) {
  report::Touched touched = kit_with({});
  touched.count = whole(3).as_sure_as(quantity::Sureness::unknown);
  BOOST_TEST(says(report::receipt_page(flight(), {touched}, sheet()),
                  "ZZ-KIT now has 4323.3 h; its landings are not known."));
  touched.hours = tenths(17).as_sure_as(quantity::Sureness::unknown);
  BOOST_TEST(says(report::receipt_page(flight(), {touched}, sheet()),
                  "The totals of ZZ-KIT are not on record yet."));
}

BOOST_AUTO_TEST_SUITE_END()
