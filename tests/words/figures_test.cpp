#include "words/figures.h"

#include <boost/test/unit_test.hpp>
#include <random>

#include "words/items.h"
#include "words/names.h"
#include "words/words.h"

namespace {

using namespace words_test;
using quantity::ServiceHours;
using quantity::Sureness;

// The figure in thousandths of a second, read from its shown text the other way round.
std::int64_t value_of(const std::string& shown) {
  const auto read = quantity::read_hours(
      shown.substr(shown.front() == '-' ? 1 : 0, shown.find(' ') - (shown.front() == '-' ? 1 : 0)));
  BOOST_REQUIRE(read.is_read());
  const std::int64_t size = read.value().count() * 1000;
  return shown.front() == '-' ? -size : size;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(figures)

BOOST_AUTO_TEST_CASE(tenths_and_hundredths_are_shown_as_they_are) {
  BOOST_TEST(words::hours_used(ServiceHours::of(4'323'300LL * 3600)) == "4323.3 h");
  BOOST_TEST(words::hours_left(ServiceHours::of(1250 * 3600)) == "1.25 h");
  BOOST_TEST(words::hours_left(ServiceHours{}) == "0.0 h");
}

BOOST_AUTO_TEST_CASE(used_is_rounded_up_and_left_is_rounded_down) {
  const auto hours = ServiceHours::of(20 * 60 * 1000);  // 20 minutes
  BOOST_TEST(words::hours_used(hours) == "0.34 h");
  BOOST_TEST(words::hours_left(hours) == "0.33 h");
  BOOST_TEST(words::hours_left(-hours) == "-0.34 h");
}

BOOST_AUTO_TEST_CASE(rounding_is_safe_for_every_total) {
  const unsigned seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937 random(seed);
  std::uniform_int_distribution<std::int64_t> raw(-400'000'000, 400'000'000);
  for (int i = 0; i < 20'000; ++i) {
    const std::int64_t total = raw(random);
    const std::int64_t used = value_of(words::hours_used(ServiceHours::of(total)));
    const std::int64_t left = value_of(words::hours_left(ServiceHours::of(total)));
    BOOST_REQUIRE(left <= total && total <= used);
    BOOST_REQUIRE(used - total < 36'000 && total - left < 36'000);
  }
}

BOOST_AUTO_TEST_CASE(terms_of_a_sum_are_exact) {
  using words::Toward;
  BOOST_TEST(words::hours_exact(ServiceHours::of(1700 * 3600), Toward::up) == "1.7 h");
  BOOST_TEST(words::hours_exact(ServiceHours::of(1205 * 1000), Toward::up) == "0:20:05 h");
  BOOST_TEST(words::hours_exact(ServiceHours::of(1232 * 3600), Toward::up) == "1.232 h");
  BOOST_TEST(words::hours_exact(ServiceHours::of(1), Toward::up) == "0:00:01 h");
}

BOOST_AUTO_TEST_CASE(a_figure_says_how_surely_it_is_known) {
  BOOST_TEST(words::figure_used(whole(2310).as_sure_as(Sureness::at_least), starts) ==
             "at least 2310 starts");
  BOOST_TEST(words::figure_used(whole(1), starts) == "1 start");
  BOOST_TEST(words::figure_left(tenths(28).as_sure_as(Sureness::at_least), reckon::service_clock) ==
             "at most 2.8 h");
  BOOST_TEST(words::figure_used(tenths(28).as_sure_as(Sureness::unknown), reckon::service_clock) ==
             "not known");
}

BOOST_AUTO_TEST_CASE(a_figure_on_a_meter_says_which) {
  const reckon::Clock collective = reckon::HoursClock{logbook::MeterName{"collective"}};
  BOOST_TEST(words::figure_left(tenths(28), collective) == "2.8 h on the collective meter");
}

BOOST_AUTO_TEST_CASE(over_is_said_as_over_and_never_clipped) {
  const Side over = hours_side(1500, -32, State::over);
  BOOST_TEST(words::left_text(over) == "over by 3.2 h");
  Side hair = hours_side(1500, 0, State::over);
  hair.left = Figure(ServiceHours::of(-1));
  BOOST_TEST(words::left_text(hair) == "over by 0.01 h");
  const Side day_late = calendar_side(day(2025, 3, 3), day(2026, 3, 3), State::over);
  BOOST_TEST(words::left_text(day_late) == "over by 1 day");
}

BOOST_AUTO_TEST_CASE(what_is_missing_makes_left_at_most_and_over_at_least) {
  Side side = count_side(landings, 100, 12, State::soon);
  side.left_is_at_most = true;
  BOOST_TEST(words::left_text(side) == "at most 12 landings");
  side.left = whole(-1);
  BOOST_TEST(words::left_text(side) == "over by at least 1 landing");
}

BOOST_AUTO_TEST_CASE(due_points_name_both_clocks_and_days_stand_in_full) {
  Side side = hours_side(22000, 410, State::ok);
  BOOST_TEST(words::due_text(side) == "airframe 4364.3 h");
  side.due_at = tenths(22000);
  BOOST_TEST(words::due_text(side) == "2200.0 h (airframe 4364.3 h)");
  BOOST_TEST(words::due_text(calendar_side(day(2025, 6, 6), day(2026, 6, 30), State::ok)) ==
             "30 June 2026");
}

BOOST_AUTO_TEST_CASE(names_stand_bare_only_where_sentences_let_them) {
  BOOST_TEST(words::thing_name(kit) == "aircraft ZZ-KIT");
  BOOST_TEST(words::thing_name(engine) == "engine TS-40 E-1001");
  BOOST_TEST(words::written_name("Larkwing 5") == "\"Larkwing 5\"");
  BOOST_TEST(words::written_name("KIT") == "\"KIT\"");
  BOOST_TEST(words::in_quotes("a \"b\" \\ c") == "\"a \\\"b\\\" \\\\ c\"");
  BOOST_TEST(words::written_place({"engine 2"}) == "engine 2");
  BOOST_TEST(words::written_place({"engine 0"}) == "\"engine 0\"");
  BOOST_TEST(words::entry_name(entry(512)) == "K7QXM-512");
  BOOST_TEST(words::horizon_text({{entry(1).writer, 130}, {entry(1).writer, 88}}) ==
             "K7QXM-130 K7QXM-88");
}

BOOST_AUTO_TEST_CASE(items_are_named_by_what_they_are) {
  BOOST_TEST(words::item_name(directive(28, State::ok)) == "directive D-26-04");
  BOOST_TEST(words::item_name(blade_life(410, State::ok)) == "life of part PN-4411 B-88");
  BOOST_TEST(words::item_name(unknown_starts()) == "overhaul of engine TS-40 E-1001");
  BOOST_TEST(words::item_name(task_item(logbook::TaskClass::task, "oil change", engine)) ==
             "oil change on engine TS-40 E-1001");
}

BOOST_AUTO_TEST_SUITE_END()
