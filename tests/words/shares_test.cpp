#include "words/shares.h"

#include <boost/test/unit_test.hpp>

#include "items.h"
#include "words/dues.h"
#include "words/workings.h"

using namespace words_test;
using reckon::LifeUsed;
using reckon::Sharing;

BOOST_AUTO_TEST_SUITE(shares)

namespace {

reckon::PartUsed part_used(reckon::TermKind kind, const Figure& used, const Figure& of) {
  reckon::PartUsed part;
  part.term.kind = kind;
  part.term.figure = used;
  part.whole = of;
  return part;
}

// 2000 of 5000 and 8000 of 20000: rules 89.
Item mixed_item(State state) {
  static logbook::MixedLimit fact;  // for the whole run, since items point at it
  Item item = limit_item(blade, logbook::LimitVerb::retires);
  item.limit = nullptr;
  item.mixed = &fact;
  const logbook::Counter full{CounterKind::full_cycles, ""};
  const logbook::Counter abbreviated{CounterKind::abbreviated_cycles, ""};
  item = with_sides(
      item, {count_side(full, 5000, 500, state), count_side(abbreviated, 20000, 2000, state)}, 0);
  item.sides[0].used.figure = whole(2000);
  item.sides[1].used.figure = whole(8000);
  for (Side& side : item.sides) side.life_used = LifeUsed({{2000, 5000}, {8000, 20000}});
  return item;
}

}  // namespace

BOOST_AUTO_TEST_CASE(life_used_has_four_decimals_at_most_rounded_up) {
  BOOST_TEST(words::life_used_text(LifeUsed({{7, 10}})) == "0.7");
  BOOST_TEST(words::life_used_text(LifeUsed({{2, 3}})) == "0.6667");
  BOOST_TEST(words::life_used_text(LifeUsed({{1, 1}})) == "1");
  BOOST_TEST(words::life_used_text(LifeUsed({{100'001, 100'000}})) == "1.0001");
  BOOST_TEST(words::life_used_text(LifeUsed()) == "0");
  BOOST_TEST(words::life_used_text(LifeUsed({{5, 10'000}})) == "0.0005");
}

BOOST_AUTO_TEST_CASE(a_part_says_of_which_whole_it_is) {
  const auto brought = part_used(reckon::TermKind::brought_forward, tenths(24000), tenths(30000));
  BOOST_TEST(words::part_amount_text(brought, reckon::service_clock) == "2400.0 h of 3000.0 h");
  BOOST_TEST(words::part_text(brought) ==
             "brought forward; on which model is not on record, so the smallest limit counts");
  const auto flown = part_used(reckon::TermKind::used_in_stay, tenths(10), tenths(30000));
  BOOST_TEST(words::part_text(flown) == "used");
}

BOOST_AUTO_TEST_CASE(lives_say_how_they_are_shared) {
  Item item = limit_item(blade, logbook::LimitVerb::retires);
  Side side = hours_side(20000, 4000, State::ok);
  BOOST_TEST(words::sharing_text(item, side).empty());
  item.sharing = Sharing::shorter_stays;
  BOOST_TEST(words::sharing_text(item, side) == "shorter limit stays");
  item.sharing = Sharing::by_fractions;
  side.life_used = LifeUsed({{8, 10}});
  BOOST_TEST(words::sharing_text(item, side) == "by fractions, 0.8 used");
  side.left_is_at_most = true;
  BOOST_TEST(words::sharing_text(item, side) == "by fractions, at least 0.8 used");
}

BOOST_AUTO_TEST_CASE(a_mixed_life_tells_all_its_counters_together) {
  const Item item = mixed_item(State::ok);
  BOOST_TEST(words::sharing_text(item, item.sides[0]) == "at the same mix, 0.8 used");
  BOOST_TEST(words::next_text(item) ==
             "life of part PN-4411 B-88 in 500 full cycles and 2000 abbreviated cycles");
  BOOST_TEST(words::left_sentence(item) ==
             "Part PN-4411 B-88 has 500 full cycles and 2000 abbreviated cycles left before it "
             "must be retired: 0.8 of its life is used.");
}

BOOST_AUTO_TEST_CASE(a_mixed_life_that_is_over_says_how_much_is_used) {
  Item item = mixed_item(State::over);
  for (Side& side : item.sides) {
    side.left = whole(-1);
    side.life_used = LifeUsed({{11, 10}});
  }
  BOOST_TEST(words::attention_text(item) ==
             "Over: life of part PN-4411 B-88 is over: 1.1 of it is used.");
}

BOOST_AUTO_TEST_CASE(a_counter_that_was_not_used_goes_on_alone) {
  Item item = mixed_item(State::ok);
  item.sides[1].used.figure = whole(0);
  BOOST_TEST(words::mix_text(item.sides[1]) == "if it alone goes on");
}

BOOST_AUTO_TEST_SUITE_END()
