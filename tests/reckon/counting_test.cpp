// Which counting rules count on which day (design 4: a rule holds from its day): on each day those
// of the nearest of the thing, its part number or model and its hosts that has any on that day.
#include <boost/test/unit_test.hpp>

#include "checking.h"
#include "definitions.h"
#include "flyable.h"
#include "told.h"

using logbook::CountedEvent;
using logbook::CounterKind;
using support::Book;
using support::each;
using support::fitted;
using support::flew;
using support::had_hours;
using support::starts;
using told::Told;

BOOST_AUTO_TEST_SUITE(counting)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::Part disc = support::part("PN-T1", "T1-77");
const logbook::Scope engine_model = logbook::Model{{"TS-40"}};
const logbook::Scope disc_number = logbook::PartKind{{"PN-T1"}};

logbook::CountingRule starts_rule(const logbook::Scope& scope, const std::string& weight) {
  return support::rule(scope, CounterKind::cycles, {each(CountedEvent::start, weight)});
}

// A disc in an engine whose model counts a cycle each start.
struct Fitted : Book {
  Fitted() {
    say("2025-01-01", support::forward(kit, "100.0"));
    say("2025-01-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("0.0")}));
    say("2025-01-01", fitted(disc, {engine, "disc", ""}, {had_hours("0.0")}));
    models = say("2025-01-01", starts_rule(engine_model, "1"));
  }
  void fly(const std::string& day) { say(day, flew(kit, "1.0", {starts(10)})); }
  std::string cycles(const std::string& day) const {
    return Told(*this, day).count(disc, CounterKind::cycles);
  }
  logbook::EntryId models;
};

}  // namespace

BOOST_AUTO_TEST_CASE(a_discs_own_rule_changes_nothing_that_its_engines_counted_before) {
  Fitted book;
  book.fly("2025-01-05");
  book.say("2025-02-01", starts_rule(disc_number, "1.5"));
  BOOST_TEST(book.cycles("2025-02-01") == "10");
  book.fly("2025-02-02");
  BOOST_TEST(book.cycles("2025-02-02") == "25");
  BOOST_TEST(Told(book, "2025-02-02").count(engine, CounterKind::cycles) == "20");
}

BOOST_AUTO_TEST_CASE(one_serials_own_rule_changes_nothing_that_its_part_numbers_counted_before) {
  Fitted book;
  book.say("2025-01-02", starts_rule(disc_number, "2"));
  book.fly("2025-01-05");
  book.say("2025-02-01", starts_rule(disc, "0.5"));
  book.fly("2025-02-02");
  BOOST_TEST(book.cycles("2025-02-02") == "25");
}

BOOST_AUTO_TEST_CASE(where_a_discs_own_rule_has_ended_its_engines_counts_again) {
  Fitted book;
  const auto own = book.say("2025-01-02", starts_rule(disc_number, "3"));
  book.fly("2025-01-05");
  auto rule = checking::said("2025-02-01", starts_rule(engine_model, "2"));
  rule.instead_of = checking::name_of(own);
  book.say(rule);
  book.fly("2025-02-02");
  // 10 x 3, then 10 x (1 + 2): both rules of the engine's model add.
  BOOST_TEST(book.cycles("2025-02-02") == "60");
}

BOOST_AUTO_TEST_CASE(of_a_discs_and_its_engines_rule_within_several_days_the_dearer_counts) {
  for (const auto& [weight, cycles] : {std::pair{"1.5", "15"}, std::pair{"0.5", "10"}}) {
    Fitted book;
    logbook::Flew days = flew(kit, "8.0", {starts(10)});
    days.since = support::day("2025-02-03");
    book.say("2025-02-08", days);
    book.say("2025-02-05", starts_rule(disc_number, weight));
    BOOST_TEST(book.cycles("2025-02-08") == cycles);
  }
}

BOOST_AUTO_TEST_CASE(a_trip_counts_by_all_the_rules_of_its_day) {
  Book book = flyable::complete_book();
  book.say("2025-03-01",
           support::forward(disc, {had_hours("10.0"),
                                   support::had(support::count(CounterKind::cycles, "100"))}));
  book.say("2025-03-01", fitted(disc, {engine, "disc", ""}));
  book.say("2025-03-01", starts_rule(engine_model, "1"));
  book.say("2025-03-02",
           support::rule(engine_model, CounterKind::cycles, {each(CountedEvent::landing, "0.5")}));
  book.say("2025-03-01", definitions::limit(
                             disc, {definitions::count(support::count(CounterKind::cycles, "101.4"),
                                                       logbook::Basis::new_)}));
  const reckon::Ready ready = flyable::ask(book, "2025-03-10", {});
  BOOST_REQUIRE(!ready.obstacles.empty());
  BOOST_TEST(definitions::text(ready.obstacles.front().left) == "1.4");
  BOOST_TEST(definitions::text(ready.obstacles.front().needed) == "1.5");
}

BOOST_AUTO_TEST_SUITE_END()
