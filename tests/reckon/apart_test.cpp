// Corrections made apart (practice.md C5): until a person decides, the value counts by which least
// is left, and there is a question whichever of them is taken (docs/decisions/0026).
#include "reckon/apart.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"

using namespace definitions;
using support::Book;
using support::flew;
using support::had_hours;
using support::starts;

BOOST_AUTO_TEST_SUITE(apart)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Part part = support::part("PN-X", "X-1");

// A new part of 100.0 h since new, and flights that two bases corrected without knowing of it.
struct Disputed : Book {
  Disputed() {
    say("2026-01-01", support::forward(kit, "1000.0"));
    say("2026-01-01", support::fitted(part, {kit, "hook", ""}, {had_hours("0.0")}));
    say("2026-01-01", limit(part, {hours("100.0", Basis::new_)}));
  }
  // The later base, M, is the one by whose value the facts stand.
  void correct_apart(const std::string& first, const std::string& later,
                     const std::string& later_day = "2026-01-05") {
    write_as('K');
    const auto flight = say("2026-01-05", flew(kit, "1.0"));
    write_as('M');
    hear();
    correct(flight, later_day, flew(kit, later));
    write_as('K');
    correct(flight, "2026-01-05", flew(kit, first));
  }
  std::vector<reckon::Item> items(const std::string& day) const {
    const AsOf own(*this, day);
    std::vector<std::vector<reckon::Item>> by_way{own.lives()};
    const auto ways = reckon::ways_to_decide(own.standing.made_apart);
    for (const reckon::Decided& way : ways.others) {
      const auto other = reckon::standing(entries(), support::day(day), way);
      const reckon::Histories histories(other, support::day(day), reckon::Ambiguous::early);
      by_way.push_back(reckon::lives(histories, other));
    }
    return reckon::with_least_left(std::move(by_way), ways.are_all);
  }
  reckon::Item life(const std::string& day) const { return item_of(items(day), "limit:"); }
};

}  // namespace

BOOST_AUTO_TEST_CASE(of_two_corrections_made_apart_the_one_with_less_left_counts) {
  for (const auto& [first, later] : {std::pair{"30.0", "20.0"}, std::pair{"20.0", "30.0"}}) {
    Disputed book;
    book.correct_apart(first, later);
    BOOST_TEST(left(book.life("2026-01-10")) == "70.0");
    BOOST_TEST(book.items("2026-01-10").size() == 1U);
  }
}

BOOST_AUTO_TEST_CASE(what_is_over_by_one_of_them_is_over) {
  Disputed book;
  book.correct_apart("101.0", "2.0");
  BOOST_TEST(text(book.life("2026-01-10").state) == "over");
}

BOOST_AUTO_TEST_CASE(several_disputes_are_decided_in_every_way) {
  Disputed book;
  book.correct_apart("30.0", "20.0");
  book.correct_apart("15.0", "25.0");
  BOOST_TEST(reckon::ways_to_decide(AsOf(book, "2026-01-10").standing.made_apart).others.size() ==
             3U);
  BOOST_TEST(left(book.life("2026-01-10")) == "45.0");  // neither base said both
}

BOOST_AUTO_TEST_CASE(one_that_is_of_a_later_day_hides_neither_the_other_nor_the_question) {
  Disputed book;
  book.correct_apart("30.0", "20.0", "2026-02-01");
  const AsOf asked(book, "2026-01-10");
  BOOST_REQUIRE_EQUAL(asked.standing.questions.size(), 1U);
  BOOST_TEST(asked.standing.questions[0].class_ == "two corrections");
  BOOST_TEST(left(life_item(asked, "limit:")) == "100.0");
  BOOST_TEST(left(book.life("2026-01-10")) == "70.0");
  const AsOf before(book, "2026-01-04");
  BOOST_TEST(before.standing.questions.empty());
}

BOOST_AUTO_TEST_CASE(past_sixteen_ways_what_differs_is_not_known) {
  Disputed book;
  for (int dispute = 0; dispute < 5; ++dispute) book.correct_apart("2.0", "1.0");
  book.say("2026-01-01", limit(kit, {hours("5000.0", Basis::new_)}));
  book.say("2026-01-01", limit(part, {period(30, PeriodUnit::days, Basis::fitting)}));
  const AsOf asked(book, "2026-01-10");
  const auto ways = reckon::ways_to_decide(asked.standing.made_apart);
  BOOST_TEST(!ways.are_all);
  BOOST_TEST(ways.others.size() == 2U);
  int open = 0;
  for (const reckon::Item& item : book.items("2026-01-10")) {
    const bool is_by_days = item.sides.front().is_calendar;
    BOOST_TEST(text(item.state) == (is_by_days ? "soon" : "not known"));
    if (item.lack == reckon::Lack::undecided) ++open;
  }
  BOOST_TEST(open == 2);
}

// Cut to whole units, one counter may be told alike by each way and the other not (derived).
BOOST_AUTO_TEST_CASE(past_sixteen_ways_a_life_that_counters_use_up_together_is_open_as_a_whole) {
  const logbook::MixedLimit mix;
  const auto mixed = [&](const char* few, const char* many) {
    reckon::Item item;
    item.id = "limit:mix";
    item.mixed = &mix;
    item.governs = 0;
    for (const char* left : {few, many}) {
      reckon::Side side;
      side.left = reckon::Figure(support::service(left));
      side.expected = support::day("2026-05-01");
      item.sides.push_back(side);
    }
    item.expected = item.sides.front().expected;
    return item;
  };
  const std::vector<reckon::Item> told{mixed("5.0", "21.0")};
  const auto open = reckon::with_least_left({told, {mixed("5.0", "20.0")}, told}, false);
  BOOST_REQUIRE_EQUAL(open.size(), 1U);
  BOOST_CHECK(open[0].state == reckon::State::not_known);
  BOOST_CHECK(open[0].lack == reckon::Lack::undecided);
  BOOST_CHECK(!open[0].expected);
  for (const reckon::Side& side : open[0].sides) BOOST_CHECK(!side.left);
  BOOST_CHECK(reckon::with_least_left({told, told, told}, false)[0].state == reckon::State::ok);
}

BOOST_AUTO_TEST_CASE(past_sixteen_ways_what_is_over_at_either_end_is_over) {
  for (const auto& [first, later] : {std::pair{"25.0", "1.0"}, std::pair{"1.0", "25.0"}}) {
    Disputed book;
    for (int dispute = 0; dispute < 5; ++dispute) book.correct_apart(first, later);
    BOOST_TEST(text(book.life("2026-01-10").state) == "over");
  }
}

BOOST_AUTO_TEST_CASE(a_limit_corrected_to_other_terms_is_told_by_both) {
  Disputed book;
  book.say("2026-01-05", flew(kit, "40.0", {starts(10)}));
  const auto other = book.say("2026-01-02", limit(kit, {hours("2000.0", Basis::new_)}));
  book.write_as('M');
  book.hear();
  book.correct(other, "2026-01-02", limit(kit, {hours("1500.0", Basis::new_)}));
  book.write_as('K');
  book.correct(other, "2026-01-02", limit(kit, {period(10, PeriodUnit::years, Basis::release)}));
  std::vector<std::string> states;
  for (const reckon::Item& item : book.items("2026-01-10")) {
    if (item.thing == logbook::Thing(kit)) states.push_back(text(item.state));
  }
  const std::vector<std::string> wanted{"not known", "ok"};
  BOOST_TEST(states == wanted, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_SUITE_END()
