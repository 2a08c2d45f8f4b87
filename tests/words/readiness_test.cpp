#include "words/readiness.h"

#include <boost/test/unit_test.hpp>

#include "text/unicode.h"
#include "words/dues.h"
#include "words/items.h"
#include "words/told.h"

namespace {

using namespace words_test;
using reckon::Answer;
using reckon::Condition;
using reckon::Missing;
using reckon::Obstacle;
using reckon::Ready;
using reckon::Trip;

Trip of_hours(std::int64_t tenths_of_an_hour) {
  Trip trip;
  trip.hours = quantity::Hours::of(tenths_of_an_hour * 360);
  return trip;
}

Ready no_because(Item item, const Figure& needed, std::int64_t allowed_tenths) {
  Ready ready;
  ready.answer = Answer::no;
  const Figure left = *item.sides.front().left;
  ready.obstacles = {{std::move(item), 0, left, needed, left.raw() < 0}};
  ready.allowed_hours = tenths(allowed_tenths).hours();
  return ready;
}

std::string line(const Ready& ready, const Trip& trip) {
  const std::string first = words::first_line(ready, trip, kit);
  BOOST_TEST(text::columns(first) <= 80u, first);
  return first;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(readiness)

BOOST_AUTO_TEST_CASE(a_trip_past_a_limit_says_by_how_much_and_what_may_be_flown) {
  const Ready ready = no_because(directive(28, State::soon), tenths(30), 28);
  BOOST_TEST(line(ready, of_hours(30)) ==
             "No. A 3.0 h trip would pass directive D-26-04 by 0.2 h. You can fly 2.8 h.");
  BOOST_TEST(words::obstacle_text(ready.obstacles.front()) ==
             "Directive D-26-04: the trip needs 3.0 h; left: 2.8 h.");
}

BOOST_AUTO_TEST_CASE(what_is_over_or_used_up_is_said_without_the_trip) {
  BOOST_TEST(line(no_because(directive(-6, State::over), tenths(30), 0), of_hours(30)) ==
             "No. Directive D-26-04 is over by 0.6 h.");
  BOOST_TEST(line(no_because(directive(0, State::due), tenths(0), 0), {}) ==
             "No. Directive D-26-04 is due now: 0.0 h left.");
  const Ready late = no_because(annual(day(2026, 2, 28), State::over), Figure(quantity::Days{}), 0);
  BOOST_TEST(line(late, {}) == "No. Annual inspection was due by 28 February 2026.");
}

BOOST_AUTO_TEST_CASE(a_trip_that_ends_too_late_names_the_last_day) {
  const Ready ready =
      no_because(annual(day(2026, 3, 6), State::soon), Figure(quantity::Days::of(3)), 30);
  BOOST_TEST(line(ready, {}) ==
             "No. The trip ends after 6 March 2026, the last day for annual inspection.");
}

BOOST_AUTO_TEST_CASE(counts_stop_a_trip_too) {
  const Item item = with_sides(limit_item(blade, logbook::LimitVerb::retires),
                               {count_side(landings, 100, 1, State::soon)}, 0);
  BOOST_TEST(line(no_because(item, whole(2), 0), {}) ==
             "No. This trip would pass life of part PN-4411 B-88 by 1 landing.");
}

BOOST_AUTO_TEST_CASE(a_long_name_is_cut_and_the_line_still_fits) {
  const Item item = with_sides(
      task_item(logbook::TaskClass::inspection, std::string(90, 'x') + " inspection", engine),
      {hours_side(1000, 10, State::soon)}, 0);
  line(no_because(item, tenths(30), 10), of_hours(30));
}

BOOST_AUTO_TEST_CASE(yes_says_how_much) {
  Ready ready;
  ready.answer = Answer::yes;
  ready.allowed_hours = tenths(124).hours();
  BOOST_TEST(line(ready, of_hours(30)) ==
             "Yes. A 3.0 h trip passes no limit on record. You can fly 12.4 h.");
}

BOOST_AUTO_TEST_CASE(not_known_names_the_first_that_is_missing) {
  Ready ready;
  ready.missing = {{}};
  ready.missing.front().condition = Condition::programme;
  ready.missing.front().thing = mob;
  BOOST_TEST(line(ready, {}) == "Not known. No inspection programme is on record for ZZ-MOB.");
  BOOST_TEST(words::missing_words(ready.missing.front(), mob).example ==
             "inspection \"annual inspection\" on aircraft ZZ-MOB every 12 calendar months.");
}

BOOST_AUTO_TEST_CASE(every_condition_is_said_and_most_give_a_sentence) {
  for (int condition = 0; condition <= static_cast<int>(Condition::bases_heard); ++condition) {
    Missing missing;
    missing.condition = static_cast<Condition>(condition);
    missing.thing = engine;
    missing.lack = reckon::Lack::total;
    missing.clock = starts;
    missing.since = logbook::Basis::new_;
    missing.entries = {entry(5)};
    missing.question = "4F7Q";
    const words::MissingWords lack = words::missing_words(missing, kit);
    check_told(lack.what);
    BOOST_TEST(!words::condition_key(missing.condition).empty());
    const bool has_example = condition != static_cast<int>(Condition::unread) &&
                             condition != static_cast<int>(Condition::bases_heard);
    BOOST_TEST(lack.example.empty() != has_example);
  }
}

BOOST_AUTO_TEST_CASE(a_missing_count_is_asked_for_by_its_name) {
  Missing missing;
  missing.condition = Condition::unknown_read;
  missing.thing = engine;
  missing.lack = reckon::Lack::total;
  missing.clock = starts;
  missing.since = logbook::Basis::new_;
  const words::MissingWords lack = words::missing_words(missing, kit);
  BOOST_TEST(lack.what ==
             "What is left of engine TS-40 E-1001 is not known: its starts since new are not "
             "known.");
  BOOST_TEST(lack.example == "engine TS-40 E-1001 brings forward 2101 starts.");
}

BOOST_AUTO_TEST_CASE(freshness_is_told_only_when_there_is_something_to_tell) {
  Ready ready;
  ready.last_flight = day(2026, 2, 19);
  BOOST_TEST(words::freshness_texts(ready, day(2026, 3, 4)).empty());
  ready.may_be_missing = tenths(160).hours();
  ready.gap = tenths(5).hours();
  const auto texts = words::freshness_texts(ready, day(2026, 3, 4));
  BOOST_REQUIRE(texts.size() == 2);
  BOOST_TEST(texts[0] == "The meter shows 0.5 h more than the book; that is counted in.");
  BOOST_TEST(texts[1] == "No flight for 13 days: at recent use about 16.0 h may be missing.");
}

BOOST_AUTO_TEST_CASE(next_items_say_by_what_they_fall_due) {
  BOOST_TEST(words::next_text(directive(34, State::soon)) == "directive D-26-04 in 3.4 h");
  BOOST_TEST(words::next_text(annual(day(2026, 6, 30), State::ok)) ==
             "annual inspection by 30 June 2026");
  BOOST_TEST(words::next_text(unknown_starts()) == "overhaul of engine TS-40 E-1001 not known");
}

BOOST_AUTO_TEST_CASE(attention_is_a_whole_sentence) {
  BOOST_TEST(words::attention_text(directive(-32, State::over)) ==
             "Over: directive D-26-04 is over by 3.2 h.");
  BOOST_TEST(words::attention_text(annual(day(2026, 3, 4), State::due)) ==
             "Due: annual inspection may be flown through 4 March 2026 only.");
  BOOST_TEST(words::attention_text(unknown_starts()) ==
             "Not known: overhaul of engine TS-40 E-1001, since its starts since new are not "
             "known.");
}

BOOST_AUTO_TEST_CASE(counted_to_says_how_long_ago) {
  BOOST_TEST(words::counted_to_text(day(2026, 3, 4), day(2026, 3, 5)) ==
             "Counted: flights to 4 March 2026 (yesterday).");
  BOOST_TEST(words::counted_to_text({}, day(2026, 3, 5)) == "Counted: no flight is on record.");
}

BOOST_AUTO_TEST_SUITE_END()
