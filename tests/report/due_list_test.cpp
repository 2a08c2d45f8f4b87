#include <boost/test/unit_test.hpp>
#include <random>

#include "report/due_page.h"
#include "report/lives_list.h"
#include "report/pieces.h"
#include "report/sheets.h"
#include "words/words.h"

namespace {

using namespace words_test;
using namespace report_test;

Item hundred_hours() {
  Item item = task_item(logbook::TaskClass::inspection, "100-hour inspection", kit);
  item.last_done = entry(90);
  item.last_done_day = day(2025, 11, 2);
  Side by_date = calendar_side(day(2025, 11, 2), day(2026, 11, 30), State::ok);
  Side by_hours = hours_side(1000, 34, State::soon);
  by_hours.expected = day(2026, 3, 9);
  return with_sides(item, {by_date, by_hours}, 1);
}

std::vector<Item> fleet_items() {
  return {directive(-6, State::over),          unknown_starts(),           hundred_hours(),
          annual(day(2026, 6, 30), State::ok), blade_life(410, State::ok), on_condition()};
}

report::DuePage about_kit() { return {kit, day(2026, 3, 3), {}}; }

State random_state(std::mt19937& random) { return static_cast<State>(random() % 5); }

}  // namespace

BOOST_AUTO_TEST_SUITE(due_list)

BOOST_AUTO_TEST_CASE(what_is_over_is_said_before_the_table) {
  const auto answer = report::due_page(about_kit(), fleet_items(), sheet());
  const std::string text = text_of(answer);
  BOOST_TEST(text.find("Over: directive D-26-04 is over by 0.6 h.") < text.find("Item"));
  BOOST_TEST(text.find("Not known: overhaul of engine TS-40 E-1001") < text.find("Item"));
  BOOST_TEST(answer.needs_attention);
  check_no_banned_word(answer);
}

BOOST_AUTO_TEST_CASE(the_head_says_what_was_counted_and_the_foot_cautions) {
  const auto answer = report::due_page(about_kit(), fleet_items(), sheet());
  BOOST_TEST(says(answer, "As of 4 March 2026, counting news up to K7QXM-130."));
  BOOST_TEST(says(answer, "Counted: flights to 3 March 2026 (yesterday)."));
  BOOST_TEST(text_of(answer, 400).ends_with(std::string(words::caution()) + "\n"));
}

BOOST_AUTO_TEST_CASE(hours_and_calendar_stand_side_by_side_with_the_governing_one_first) {
  const auto answer = report::due_page(about_kit(), {hundred_hours()}, sheet());
  const std::string text = text_of(answer, 200);
  BOOST_TEST(text.find("4326.7 h") < text.find("also: 100-hour inspection"));
  BOOST_TEST(text.find("30 November 2026") > text.find("also: 100-hour inspection"));
  BOOST_TEST(text.find("9 March 2026") != std::string::npos);
  BOOST_TEST(!answer.needs_attention);
}

BOOST_AUTO_TEST_CASE(json_has_one_object_a_side_with_the_members_of_the_design) {
  const auto answer = report::due_page(about_kit(), {hundred_hours()}, sheet());
  const std::string json = answer.json.in_one_line();
  BOOST_TEST(
      json.starts_with("{\"as_of\":\"2026-03-04\",\"horizon\":\"K7QXM-130\","
                       "\"counted_to\":\"2026-03-03\",\"items\":["));
  BOOST_TEST(json_says(answer,
                       "{\"id\":\"task:100-hour inspection\",\"about\":\"aircraft ZZ-KIT\","
                       "\"item\":\"100-hour inspection\",\"unit\":\"h\",\"used\":347760,"
                       "\"limit\":360000,\"left\":12240,\"due_at\":15576120,\"due_day\":null,"
                       "\"governs\":true,\"state\":\"soon\",\"source\":\"manual 5-20\","
                       "\"because\":[\"K7QXM-31\",\"K7QXM-88\"]"));
  BOOST_TEST(json_says(answer, "\"unit\":\"days\""));
  BOOST_TEST(json_says(answer, "\"due_day\":\"2026-11-30\",\"governs\":false,\"state\":\"ok\""));
}

BOOST_AUTO_TEST_CASE(hours_in_json_round_to_the_safe_side_and_cycles_keep_their_fraction) {
  Item item = blade_life(410, State::ok);
  item.sides[0].used.figure = Figure(quantity::ServiceHours::of(1001));
  item.sides[0].left = Figure(quantity::ServiceHours::of(1999));
  Item cycles =
      with_sides(limit_item(engine, logbook::LimitVerb::retires),
                 {count_side({CounterKind::gas_generator_cycles, ""}, 3000, 10, State::soon)}, 0);
  cycles.sides[0].left = Figure(quantity::Cycles::of(9350));
  const auto answer = report::due_page(about_kit(), {item, cycles}, sheet());
  BOOST_TEST(json_says(answer, "\"used\":2,"));
  BOOST_TEST(json_says(answer, "\"left\":1,"));
  BOOST_TEST(json_says(answer, "\"left\":9.35,"));
  BOOST_TEST(json_says(answer, "\"unit\":\"gas-generator cycles\""));
}

BOOST_AUTO_TEST_CASE(nothing_on_record_says_why_nothing_is_listed) {
  const auto answer = report::due_page({kit, {}, {}}, {}, sheet());
  BOOST_TEST(says(answer, "Nothing is listed: no task and no limit is on record for ZZ-KIT"));
  BOOST_TEST(says(answer, "Counted: no flight is on record."));
  BOOST_TEST(json_says(answer, "\"items\":[]"));
}

BOOST_AUTO_TEST_CASE(an_open_question_wants_attention) {
  report::DuePage about = about_kit();
  about.questions = {{"4F7Q", "order within a day", {entry(5), entry(6)}, {kit}, ""}};
  const auto answer = report::due_page(about, {hundred_hours()}, sheet());
  BOOST_TEST(answer.needs_attention);
  BOOST_TEST(says(answer, "Question 4F7Q"));
}

BOOST_AUTO_TEST_CASE(the_rate_behind_the_dates_is_named) {
  report::Sheet head = sheet();
  head.use_rate = reckon::UseRate{reckon::UseRate::From::last_90_days, tenths(1125).hours(),
                                  quantity::Days::of(90)};
  const auto answer = report::due_page(about_kit(), {hundred_hours()}, head);
  BOOST_TEST(says(answer, "Dates by hours rest on recent use: 112.5 h in the last 90 days."));
}

BOOST_AUTO_TEST_CASE(lives_show_limit_used_and_left_and_what_is_on_condition) {
  const reckon::Standing standing;
  const reckon::Histories histories(standing, day(2026, 3, 4), reckon::Ambiguous::early);
  const std::vector<Item> items = {blade_life(410, State::ok), on_condition()};
  const auto answer = report::lives_list(histories, "aircraft ZZ-KIT", items, sheet());
  BOOST_TEST(says(answer, "life of part PN-4411 B-88"));
  BOOST_TEST(says(answer, "2159.0 h"));
  BOOST_TEST(says(answer, "on condition"));
  BOOST_TEST(json_says(answer, "\"unit\":null"));
  BOOST_TEST(!answer.needs_attention);
  BOOST_TEST_MESSAGE(text_of(answer, 80));
}

BOOST_AUTO_TEST_CASE(text_and_json_tell_the_same_states) {
  const unsigned seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937 random(seed);
  for (int round = 0; round < 300; ++round) {
    std::vector<Item> items;
    for (std::size_t i = random() % 6; i > 0; --i) {
      Item item = blade_life(static_cast<std::int64_t>(random() % 900) - 200, State::ok);
      for (Side& side : item.sides) side.state = random_state(random);
      items.push_back(with_sides(item, item.sides, 0));
    }
    const auto answer = report::due_page(about_kit(), items, sheet());
    const std::string rows = document::render(answer.document, document::Format::csv, 80);
    const std::string json = answer.json.in_one_line();
    for (const char* state : {"ok", "soon", "due", "over", "not known"}) {
      const std::string word = state;
      BOOST_REQUIRE_EQUAL(times(rows, "," + word + "\r\n"),
                          times(json, "\"state\":\"" + word + "\""));
    }
  }
}

BOOST_AUTO_TEST_CASE(no_figure_is_cut_on_a_narrow_screen) {
  const auto answer = report::due_page(about_kit(), fleet_items(), sheet());
  for (const std::size_t columns : {40U, 80U, 132U}) {
    const std::string text = text_of(answer, columns);
    for (const char* figure : {"over by 0.6 h", "3.4 h", "41.0 h", "30 June"}) {
      BOOST_TEST(text.find(figure) != std::string::npos, figure << " at " << columns);
    }
  }
  BOOST_TEST_MESSAGE(text_of(answer, 80));
  BOOST_TEST_MESSAGE(text_of(answer, 40));
}

BOOST_AUTO_TEST_SUITE_END()
