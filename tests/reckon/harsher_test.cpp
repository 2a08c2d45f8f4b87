// Of two orders of one day each item takes the one with less left (design 4: both orders are
// reckoned, each part takes the one with less left; design 5: no before not known before yes).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/due.h"

using namespace definitions;
using reckon::Item;
using reckon::Lack;
using reckon::Side;
using reckon::State;

BOOST_AUTO_TEST_SUITE(harsher)

namespace {

const logbook::Counter landings{logbook::CounterKind::landings, ""};

Side known(const std::string& left, bool is_at_most = false) {
  Side side;
  side.left = reckon::Figure(support::service(left));
  side.left_is_at_most = is_at_most;
  side.state = left.starts_with("-") ? State::over : State::ok;
  return side;
}
Side over_by(const std::string& hours) {
  Side side = known(hours);
  side.left = reckon::Figure(support::service("0.0")) - *side.left;
  side.state = State::over;
  return side;
}
Side not_known() {
  Side side;
  side.lack = Lack::total;
  side.state = State::not_known;
  return side;
}
Item item(std::vector<Side> sides, const std::string& id = "task:check") {
  Item item;
  item.id = id;
  item.sides = std::move(sides);
  if (!item.sides.empty()) {
    item.governs = 0;
    item.state = item.sides.front().state;
  }
  return item;
}
// What remains of two readings of one item, whichever comes first.
Item of(const Item& one, const Item& other) {
  const auto forth = reckon::harsher({one}, {other});
  const auto back = reckon::harsher({other}, {one});
  BOOST_REQUIRE_EQUAL(forth.size(), 1U);
  BOOST_REQUIRE_EQUAL(back.size(), 1U);
  BOOST_CHECK(forth.front().state == back.front().state);
  BOOST_CHECK(forth.front().lack == back.front().lack);
  return forth.front();
}

}  // namespace

BOOST_AUTO_TEST_CASE(not_known_is_worse_than_any_left_that_is_not_over) {
  BOOST_CHECK(of(item({not_known()}), item({known("7.0")})).state == State::not_known);
  BOOST_CHECK(of(item({not_known()}), item({not_known()})).state == State::not_known);
  const Item over = of(item({not_known()}), item({over_by("1.0")}));
  BOOST_CHECK(over.state == State::over);
  BOOST_TEST(left(over) == "-1.0");
  BOOST_TEST(left(of(item({known("7.0")}), item({known("9.0")}))) == "7.0");
}

BOOST_AUTO_TEST_CASE(at_most_is_worse_than_as_much_for_certain) {
  BOOST_CHECK(of(item({known("7.0", true)}), item({known("7.0")})).sides.front().left_is_at_most);
  BOOST_CHECK(!of(item({known("7.0", true)}), item({known("6.0")})).sides.front().left_is_at_most);
}

BOOST_AUTO_TEST_CASE(each_side_takes_its_own_worse_one) {
  Side few = known("3.0");
  Side many = known("8.0");
  few.clock = many.clock = landings;
  const Item both = of(item({known("7.0"), few}), item({known("5.0"), many}));
  BOOST_TEST(text(both.sides[0].left) == "5.0");
  BOOST_TEST(text(both.sides[1].left) == "3.0");
}

// A limit or task that was corrected to other terms, and nobody has decided (decision 0026).
BOOST_AUTO_TEST_CASE(by_terms_that_differ_both_are_told) {
  Side by_landings = known("1.0");
  by_landings.clock = landings;
  Side by_calendar = over_by("2.0");
  by_calendar.is_calendar = true;
  const Item by_hours = item({known("7.0")});
  const auto counted = reckon::harsher({by_hours}, {item({by_landings})});
  BOOST_REQUIRE_EQUAL(counted.size(), 2U);
  BOOST_TEST(counted[0].id != counted[1].id);
  const auto dated = reckon::harsher({by_hours}, {item({by_calendar})});
  BOOST_REQUIRE_EQUAL(dated.size(), 2U);
  BOOST_CHECK(dated.front().sides.front().is_calendar);  // what is over comes first
  BOOST_CHECK(dated.back().sides.front().clock == reckon::service_clock);
  const auto longer = reckon::harsher({by_hours}, {item({known("9.0"), not_known()})});
  BOOST_REQUIRE_EQUAL(longer.size(), 2U);
  // Again the same terms: each takes the harsher.
  BOOST_TEST(reckon::harsher(counted, {item({known("5.0")})}).size() == 2U);
}

BOOST_AUTO_TEST_CASE(an_open_limit_stays_open) {
  for (const Lack lack :
       {Lack::shared_lives, Lack::two_policies, Lack::not_shareable, Lack::model}) {
    Item open = item({not_known()});
    open.lack = open.sides.front().lack = lack;
    BOOST_CHECK(of(open, item({known("7.0")})).lack == lack);
    BOOST_CHECK(of(open, item({over_by("1.0")})).state == State::over);
  }
  // One that says nothing that could be counted has no side to be told by.
  Item nothing = item({});
  nothing.state = State::not_known;
  nothing.lack = Lack::terms;
  BOOST_CHECK(of(nothing, nothing).lack == Lack::terms);
}

BOOST_AUTO_TEST_CASE(the_counters_of_a_mixed_limit_stay_together) {
  const logbook::MixedLimit mix;
  const auto mixed = [&](std::vector<Side> sides, int governs) {
    Item one = item(std::move(sides));
    one.mixed = &mix;
    one.governs = governs;
    return one;
  };
  Side of_landings = known("9.0");
  of_landings.clock = landings;
  const Item few = of(mixed({known("4.0"), of_landings}, 0), mixed({known("5.0"), of_landings}, 0));
  BOOST_TEST(left(few) == "4.0");
  // Without a side that governs, the first stays.
  Item open = mixed({known("1.0"), of_landings}, -1);
  const auto stays = reckon::harsher({mixed({known("4.0"), of_landings}, 0)}, {open});
  BOOST_TEST(left(stays.front()) == "4.0");
  BOOST_CHECK(reckon::harsher({open}, {mixed({known("4.0")}, 0)}).front().governs == -1);
}

BOOST_AUTO_TEST_CASE(what_only_one_order_has_stands_and_the_worst_comes_first) {
  const auto all = reckon::harsher({item({known("7.0")}, "a"), item({not_known()}, "b")},
                                   {item({over_by("1.0")}, "c"), item({known("3.0")}, "d")});
  std::string order;
  for (const Item& one : all) order += one.id;
  BOOST_TEST(order == "cbda");
}

BOOST_AUTO_TEST_SUITE_END()
