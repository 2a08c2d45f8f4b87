// Totals before an aircraft was brought forward, and of things whose use is not on record from end
// to end. Derived from design 4 (before the brought-forward day there are no flights: there, stated
// figures are the source) and design 3 (a sum is unknown if a term is).
#include <boost/test/unit_test.hpp>

#include "told.h"

using logbook::CounterKind;
using support::Book;
using support::done;
using support::fitted;
using support::flew;
using support::forward;
using support::had;
using support::had_hours;
using support::landings;
using support::removed;
using support::starts;
using told::Told;

BOOST_AUTO_TEST_SUITE(before_the_book)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Aircraft mob = support::aircraft("ZZ-MOB");
const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::Engine other = support::engine("TS-40", "E-1002");
const logbook::Counter cycles{CounterKind::cycles, ""};

std::string count_at(const Told& told, const logbook::Thing& thing, const reckon::Clock& clock,
                     const logbook::EntryId& entry) {
  return told::text(told.histories.total(thing, clock, told.histories.mark_of(entry)).figure);
}
std::string since_overhaul(const Told& told, const logbook::Counter& counter) {
  return told::text(told.histories.since_overhaul(engine, counter, told.histories.now()).figure);
}

// ZZ-KIT brought forward with 1000.0 h on 1 March, and 4.0 h flown on 2 March.
Book with_flights(Book book) {
  book.say("2025-03-01", forward(kit, "1000.0", {had(landings(700))}));
  book.say("2025-03-02", flew(kit, "4.0", {starts(4), landings(4)}));
  return book;
}

// The engine fitted before that with 100.0 h, where the airframe's hours were not written down.
Book fitted_without_airframe(std::vector<logbook::Had> with) {
  Book book;
  book.say("2025-01-10", fitted(engine, {kit, "engine 1", ""}, std::move(with)));
  return book;
}

}  // namespace

BOOST_AUTO_TEST_CASE(stated_figures_are_the_source_there) {
  Book book;
  const auto early = book.say("2025-01-05", done("check", kit));
  const auto fit =
      book.say("2025-01-10", fitted(engine, {kit, "engine 1", "900.0"}, {had_hours("100.0")}));
  const auto between = book.say("2025-01-15", done("check", kit));
  const auto at_930 = book.say("2025-01-20", done("check", kit, "930.0"));
  const auto of_mob = book.say("2025-01-20", done("check", mob));
  book.say("2025-03-01", forward(mob, "50.0"));
  book = with_flights(book);
  const Told told(book, "2025-03-10");
  BOOST_TEST(told.hours_at(kit, early) == "unknown");
  BOOST_TEST(told.hours_at(kit, fit) == "900.0");
  BOOST_TEST(told.hours_at(kit, between) == "at least 900.0");
  BOOST_TEST(told.hours_at(kit, at_930) == "930.0");
  BOOST_TEST(told.hours(kit) == "1004.0");
  BOOST_TEST(count_at(told, kit, support::landings(1).counter, fit) == "unknown");
  BOOST_TEST(told.hours_at(mob, of_mob) == "unknown");
}

BOOST_AUTO_TEST_CASE(an_engine_uses_what_lies_between_two_stated_figures) {
  Book book;
  book.say("2025-01-10",
           fitted(engine, {kit, "engine 1", "900.0"}, {had_hours("100.0"), had(starts(50))}));
  book.say("2025-02-10", removed(engine, {kit, "engine 1", "950.0"}));
  book.say("2025-02-10", fitted(other, {kit, "engine 1", "950.0"}, {had_hours("500.0")}));
  book = with_flights(book);
  const Told told(book, "2025-03-10");
  BOOST_TEST(told.hours(engine) == "150.0");  // 100 + 950 - 900
  BOOST_TEST(told.hours(other) == "554.0");   // 500 + 1000 - 950 + 4
  // Nobody wrote down the starts of January and February.
  BOOST_TEST(told.count(engine, CounterKind::starts) == "unknown");
}

BOOST_AUTO_TEST_CASE(an_engine_whose_airframe_is_stated_at_one_end_only_is_not_known) {
  Book without_end;
  without_end.say("2025-01-10", fitted(engine, {kit, "engine 1", "900.0"}, {had_hours("100.0")}));
  without_end.say("2025-03-01", forward(kit, {had(landings(700))}));
  BOOST_TEST(Told(without_end, "2025-03-10").hours(engine) == "unknown");
  Book without_start = fitted_without_airframe({had_hours("100.0")});
  BOOST_TEST(Told(with_flights(without_start), "2025-03-10").hours(engine) == "unknown");
  without_start.say("2025-01-20", done("check", kit, "930.0"));
  BOOST_TEST(Told(with_flights(without_start), "2025-03-10").hours(engine) == "unknown");
}

BOOST_AUTO_TEST_CASE(what_it_had_and_what_it_has_tell_the_use_between) {
  Book book = with_flights(fitted_without_airframe({had_hours("100.0")}));
  BOOST_TEST(Told(book, "2025-03-10").fitting(engine) == "unknown");
  book.say("2025-03-01", forward(engine, {had_hours("180.0")}));
  const Told told(book, "2025-03-10");
  BOOST_TEST(told.hours(engine) == "184.0");
  BOOST_TEST(told.fitting(engine) == "84.0");  // 184 - 100
}

BOOST_AUTO_TEST_CASE(from_a_start_that_is_not_exact_no_difference_is_told) {
  auto at_least = had_hours("100.0");
  at_least.grade = logbook::Grade::at_least;
  for (const std::vector<logbook::Had>& with : {std::vector{at_least}, {}}) {
    Book book = with_flights(fitted_without_airframe(with));
    book.say("2025-03-01", forward(engine, {had_hours("180.0")}));
    BOOST_TEST(Told(book, "2025-03-10").fitting(engine) == "unknown");
  }
}

BOOST_AUTO_TEST_CASE(the_same_holds_since_overhaul) {
  Book book = fitted_without_airframe({had_hours("100.0")});
  Book without = book;
  book.say("2025-01-15", support::overhauled(engine, {had_hours("110.0")}));
  without.say("2025-01-15", support::overhauled(engine));
  for (Book* each : {&book, &without}) {
    *each = with_flights(*each);
    each->say("2025-03-01", forward(engine, {had_hours("180.0")}));
  }
  BOOST_TEST(Told(book, "2025-03-10").overhaul(engine) == "74.0");  // 184 - 110
  BOOST_TEST(Told(without, "2025-03-10").overhaul(engine) == "unknown");
}

BOOST_AUTO_TEST_CASE(cycles_that_no_rule_counts_are_told_by_what_was_stated) {
  const auto had_cycles = [](const std::string& amount) {
    return had(support::count(CounterKind::cycles, amount));
  };
  Book book;
  book.say("2025-02-20", forward(engine, {had_hours("90.0"), had_cycles("40")}));
  book.say("2025-02-25", support::overhauled(engine, {had_hours("90.0"), had_cycles("40")}));
  book.say("2025-03-01",
           fitted(engine, {kit, "engine 1", ""}, {had_hours("90.0"), had_cycles("40")}));
  book = with_flights(book);
  const Told before(book, "2025-03-10");
  BOOST_TEST(before.count(engine, CounterKind::cycles) == "at least 40");
  BOOST_TEST(before.fitting(engine, CounterKind::cycles) == "at least 0");
  BOOST_TEST(since_overhaul(before, cycles) == "at least 0");
  book.say("2025-03-05", forward(engine, {had_hours("94.0"), had_cycles("47")}));
  const Told after(book, "2025-03-10");
  BOOST_TEST(after.count(engine, CounterKind::cycles) == "47");
  BOOST_TEST(after.fitting(engine, CounterKind::cycles) == "7");
  BOOST_TEST(since_overhaul(after, cycles) == "7");
}

BOOST_AUTO_TEST_CASE(since_overhaul_is_since_new_for_what_came_new) {
  const auto since = [](const std::string& hours) {
    Book book;
    book.say("2025-03-01", fitted(engine, {kit, "engine 1", ""}, {had_hours(hours)}));
    return Told(with_flights(book), "2025-03-10").overhaul(engine);
  };
  BOOST_TEST(since("0.0") == "4.0");
  BOOST_TEST(since("100.0") == "unknown");
  Book named_only;
  named_only.say("2025-03-01", done("check", engine));
  const Told told(named_only, "2025-03-10");
  BOOST_TEST(told.overhaul(engine) == "unknown");
  BOOST_TEST(told.fitting(engine) == "unknown");
  BOOST_TEST(told.hours(engine) == "unknown");
}

BOOST_AUTO_TEST_SUITE_END()
