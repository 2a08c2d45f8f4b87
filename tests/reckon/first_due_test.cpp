// What the first terms of a task say about the next time: excess and "from due" count from the due
// point that stood before it was done for the first time (design 6; 14 CFR 91.409(b) for excess).
#include "reckon/first_due.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"

using namespace definitions;
using support::day;

BOOST_AUTO_TEST_SUITE(first_due)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Part part = support::part("PN-X", "X-1");

logbook::Task excess_counts(const logbook::Thing& thing, logbook::Terms first) {
  logbook::Task fact = std::visit(
      [&](const auto& one) { return task("check", logbook::Scope(one), {hours("100.0")}); }, thing);
  fact.first = std::move(first);
  fact.excess_counts = true;
  return fact;
}

logbook::Task from_due(logbook::Terms first, std::vector<Term> every) {
  logbook::Task fact = task("check", kit, std::move(every));
  fact.first = std::move(first);
  fact.next_from = logbook::NextFrom::due;
  return fact;
}

// ZZ-KIT of 1000.0 h flies so much and is done on the next day.
support::Book done_after(const logbook::Task& task, const std::string& flown) {
  support::Book book;
  book.say("2025-01-01", support::forward(kit, "1000.0"));
  book.say("2025-01-01", task);
  book.say("2025-02-01", support::flew(kit, flown));
  book.say("2025-02-02", support::done("check", kit));
  return book;
}

std::string due_at(const support::Book& book) {
  const AsOf asked(book, "2025-02-03");
  return text(governing(due_item(asked, kit, "task:")).due_at);
}

std::string last_legal(const support::Book& book) {
  const AsOf asked(book, "2025-02-03");
  return text(governing(due_item(asked, kit, "task:")).last_legal);
}

}  // namespace

// The earlier of two first points stands first whatever their order in the sentence, and the later
// of "the latest of".
BOOST_AUTO_TEST_CASE(excess_counts_from_the_first_point_that_governed) {
  const std::vector<std::vector<Term>> orders{
      {hours("1100.0", Basis::new_), hours("1140.0", Basis::new_)},
      {hours("1140.0", Basis::new_), hours("1100.0", Basis::new_)}};
  for (const std::vector<Term>& terms : orders) {
    // Due at 1100, done at 1150: the next is due at 1200. Due at 1140: at 1240.
    BOOST_TEST(due_at(done_after(excess_counts(kit, {Combine::first, terms}), "150.0")) ==
               "1200.0");
    BOOST_TEST(due_at(done_after(excess_counts(kit, {Combine::latest, terms}), "150.0")) ==
               "1240.0");
    // Done at 1120, before the latest of them: nothing was flown too much.
    BOOST_TEST(due_at(done_after(excess_counts(kit, {Combine::latest, terms}), "120.0")) ==
               "1220.0");
  }
}

BOOST_AUTO_TEST_CASE(first_terms_on_other_clocks_say_nothing_of_the_hours) {
  const logbook::Terms terms{Combine::first,
                             {count(support::landings(500), Basis::new_),
                              after(period(1, PeriodUnit::years), "2025-01-01")}};
  BOOST_TEST(due_at(done_after(excess_counts(kit, terms), "150.0")) == "1250.0");
}

BOOST_AUTO_TEST_CASE(a_first_time_after_a_day_counts_from_what_it_had_then) {
  const logbook::Terms terms{Combine::first, {after(hours("50.0"), "2025-01-15")}};
  BOOST_TEST(due_at(done_after(excess_counts(kit, terms), "60.0")) == "1150.0");
}

// A part of 300.0 h was overhauled at 250.0 h and is first due 60.0 h later, at 310.0 h. Done at
// 320.0 h, the next hundred end at 410.0 h: 90.0 h are left. As "since fitting", fitted at 300.0 h,
// it was due at 360.0 h, and nothing was flown too much.
BOOST_AUTO_TEST_CASE(a_first_time_since_overhaul_or_fitting_is_a_point_too) {
  for (const auto& [basis, amount, wanted] :
       {std::tuple{Basis::overhaul, "60.0", "90.0"}, std::tuple{Basis::fitting, "60.0", "100.0"},
        std::tuple{Basis::fitting, "15.0", "95.0"}}) {
    support::Book book;
    book.say("2025-01-01", support::forward(kit, "1000.0"));
    book.say("2025-01-01", support::fitted(part, {kit, "hook", ""},
                                           {support::had_hours("300.0"),
                                            support::had_hours("50.0", Basis::overhaul)}));
    book.say("2025-01-01", excess_counts(part, {Combine::first, {hours(amount, basis)}}));
    book.say("2025-02-01", support::flew(kit, "20.0"));
    book.say("2025-02-02", support::done("check", part));
    const AsOf asked(book, "2025-02-03");
    BOOST_TEST(left(due_item(asked, kit, "task:")) == wanted);
  }
}

// Nobody can tell how far a point was passed that nobody can place; once it is done again, the
// next counts from there.
BOOST_AUTO_TEST_CASE(an_excess_over_a_point_that_nobody_knows_is_not_known) {
  for (const Term& first : {hours("60.0", Basis::overhaul), after(hours("50.0"), "2024-06-01"),
                            hours("50.0", Basis::done)}) {
    support::Book book = done_after(excess_counts(kit, {Combine::first, {first}}), "60.0");
    {
      const AsOf asked(book, "2025-02-03");
      const reckon::Item item = due_item(asked, kit, "task:");
      BOOST_TEST(text(item.state) == "not known");
      BOOST_CHECK(item.lack == reckon::Lack::due_point);
    }
    book.say("2025-02-04", support::flew(kit, "30.0"));
    book.say("2025-02-05", support::done("check", kit));
    const AsOf again(book, "2025-02-05");
    BOOST_TEST(text(governing(due_item(again, kit, "task:")).due_at) == "1190.0");
  }
}

BOOST_AUTO_TEST_CASE(only_the_first_time_is_held_against_the_first_terms) {
  support::Book book;
  book.say("2025-01-01", support::forward(kit, "5000.0"));
  book.say("2025-01-01", excess_counts(kit, {Combine::first, {hours("1100.0", Basis::new_)}}));
  book.say("2024-11-01", support::done("check", kit));  // at a total that nobody stated
  book.say("2025-02-01", support::flew(kit, "10.0"));
  book.say("2025-02-02", support::done("check", kit));
  BOOST_TEST(due_at(book) == "5110.0");
}

BOOST_AUTO_TEST_CASE(from_due_counts_from_the_first_day) {
  const std::vector<Term> yearly{period(12, PeriodUnit::months)};
  const Term early = after(period(10, PeriodUnit::days), "2025-01-10");
  const Term late = after(period(30, PeriodUnit::days), "2025-01-10");
  const auto done = [&](Combine combine, const std::vector<Term>& terms) {
    return last_legal(done_after(from_due({combine, terms}, yearly), "1.0"));
  };
  BOOST_TEST(done(Combine::first, {early, late}) == "2026-01-20");
  BOOST_TEST(done(Combine::first, {late, early}) == "2026-01-20");
  BOOST_TEST(done(Combine::latest, {early, late}) == "2026-02-09");
  BOOST_TEST(done(Combine::latest, {late, early}) == "2026-02-09");
  // Without a term by the calendar from the day on which it was done.
  BOOST_TEST(done(Combine::first, {hours("1100.0", Basis::new_)}) == "2026-02-02");
  support::Book without = done_after(from_due({}, yearly), "1.0");
  BOOST_TEST(last_legal(without) == "2026-02-02");
}

BOOST_AUTO_TEST_CASE(from_due_counts_from_the_first_day_since_it_was_made) {
  const logbook::Terms first{Combine::first, {period(2, PeriodUnit::years, Basis::manufacture)}};
  support::Book book = done_after(from_due(first, {period(12, PeriodUnit::months)}), "1.0");
  {
    const AsOf asked(book, "2025-02-03");
    BOOST_CHECK(due_item(asked, kit, "task:").lack == reckon::Lack::due_point);
  }
  logbook::AircraftIs is = is_model(kit, "Larkwing 5");
  is.made = day("2023-01-20");
  book.say("2025-01-01", is);
  BOOST_TEST(last_legal(book) == "2026-01-20");
}

// The fitting on record is a newer one than that before which it was done.
BOOST_AUTO_TEST_CASE(a_first_day_that_a_newer_fitting_hides_is_not_known) {
  support::Book book;
  book.say("2025-01-01", support::forward(kit, "1000.0"));
  book.say("2025-01-01", support::fitted(part, {kit, "hook", ""}, {support::had_hours("0.0")}));
  logbook::Task turn = task("check", part, {period(12, PeriodUnit::months)});
  turn.first = logbook::Terms{Combine::first, {period(30, PeriodUnit::days, Basis::fitting)}};
  turn.next_from = logbook::NextFrom::due;
  book.say("2025-01-01", turn);
  book.say("2025-02-02", support::done("check", part));
  BOOST_TEST(last_legal(book) == "2026-01-31");
  book.say("2025-02-03", support::removed(part, {kit, "hook", ""}));
  book.say("2025-02-03", support::fitted(part, {kit, "hook", ""}));
  const AsOf asked(book, "2025-02-03");
  BOOST_CHECK(due_item(asked, kit, "task:").lack == reckon::Lack::due_point);
}

BOOST_AUTO_TEST_SUITE_END()
