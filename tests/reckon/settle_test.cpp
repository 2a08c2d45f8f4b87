#include "reckon/settle.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"

using reckon::Figure;
using reckon::Item;
using reckon::Side;
using reckon::State;

BOOST_AUTO_TEST_SUITE(settle)

namespace {

Side hours_side(const std::string& left, const std::string& limit, State state) {
  Side side;
  side.limit = Figure(support::service(limit));
  side.left = Figure(support::service(left));
  side.state = state;
  return side;
}

Side days_side(std::int64_t left, std::int64_t limit, State state) {
  Side side;
  side.is_calendar = true;
  side.limit = Figure(quantity::Days::of(limit));
  side.left = Figure(quantity::Days::of(left));
  side.state = state;
  return side;
}

Side unknown_side() {
  Side side;
  side.state = State::not_known;
  side.lack = reckon::Lack::basis_day;
  return side;
}

Item settled(std::vector<Side> sides, logbook::Combine combine = logbook::Combine::first) {
  Item item;
  item.sides = std::move(sides);
  item.combine = combine;
  reckon::settle(item);
  return item;
}

}  // namespace

BOOST_AUTO_TEST_CASE(without_a_forecast_the_smaller_part_of_its_limit_governs) {
  // 10 of 100 h against 30 of 365 days: 0.1 against 0.08.
  const Item item =
      settled({hours_side("10.0", "100.0", State::soon), days_side(30, 365, State::soon)});
  BOOST_TEST(item.governs == 1);
  BOOST_TEST(!item.expected.has_value());
}

BOOST_AUTO_TEST_CASE(with_a_forecast_the_earlier_day_governs) {
  Side hours = hours_side("10.0", "100.0", State::soon);
  hours.expected = support::day("2026-01-20");
  Side days = days_side(30, 365, State::soon);
  days.expected = support::day("2026-01-31");
  const Item item = settled({days, hours});
  BOOST_TEST(item.governs == 1);
  BOOST_TEST(definitions::text(item.expected) == "2026-01-20");
}

BOOST_AUTO_TEST_CASE(what_is_over_governs_whatever_else_is_not_known) {
  Side over = days_side(-24, 1827, State::over);
  const Item item = settled({unknown_side(), hours_side("802.8", "3000.0", State::ok), over});
  BOOST_TEST(item.governs == 2);
  BOOST_TEST(definitions::text(item.state) == "over");
  BOOST_TEST(!item.expected.has_value());
}

BOOST_AUTO_TEST_CASE(what_is_due_governs_whatever_else_is_not_known) {  // no beats not known
  const Side due = hours_side("0.0", "100.0", State::due);
  const Item item = settled({unknown_side(), due});
  BOOST_TEST(item.governs == 1);
  BOOST_TEST(definitions::text(item.state) == "due");
  const Item latest = settled({unknown_side(), due}, logbook::Combine::latest);
  BOOST_TEST(definitions::text(latest.state) == "not known");
}

BOOST_AUTO_TEST_CASE(one_side_not_known_leaves_the_item_not_known) {
  const Item item = settled({hours_side("10.0", "100.0", State::soon), unknown_side()});
  BOOST_TEST(definitions::text(item.state) == "not known");
  BOOST_TEST(item.governs == 1);
  BOOST_CHECK(item.lack == reckon::Lack::basis_day);
}

BOOST_AUTO_TEST_CASE(the_latest_is_over_only_when_all_sides_are) {
  using logbook::Combine;
  const Side over = days_side(-1, 100, State::over);
  const Side good = hours_side("40.0", "100.0", State::ok);
  const Item held = settled({over, good}, Combine::latest);
  BOOST_TEST(held.governs == 1);
  BOOST_TEST(definitions::text(held.state) == "ok");
  Side passed = good;
  passed.left = Figure(quantity::ServiceHours{}) - Figure(support::service("0.1"));
  passed.state = State::over;
  BOOST_TEST(definitions::text(settled({over, passed}, Combine::latest).state) == "over");
}

BOOST_AUTO_TEST_CASE(parts_of_huge_limits_compare_without_overflow) {
  const std::int64_t most = 999'999'999'000;
  Side a;
  a.left = Figure(quantity::Cycles::of(most - 1));
  a.limit = Figure(quantity::Cycles::of(most));
  Side b = hours_side("999999.0", "1000000.0", State::ok);
  BOOST_TEST(reckon::has_less_of_its_limit_left(b, a));
  BOOST_TEST(!reckon::has_less_of_its_limit_left(a, b));
}

BOOST_AUTO_TEST_SUITE_END()
