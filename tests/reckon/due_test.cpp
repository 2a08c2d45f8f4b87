#include "reckon/due.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"

using namespace definitions;
using support::day;

BOOST_AUTO_TEST_SUITE(due)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");

support::Book book_at(const std::string& begins, const std::string& airframe) {
  support::Book book;
  book.say(begins, support::forward(kit, airframe));
  return book;
}

// A 100-hour inspection whose excess counts (14 CFR 91.409(b)).
logbook::Task hundred_hours() {
  logbook::Task fact = task("100-hour inspection", kit, {hours("100.0", Basis::done)});
  fact.excess_counts = true;
  return fact;
}

std::string last_legal(const support::Book& book, const std::string& as_of) {
  const AsOf asked(book, as_of);
  return text(governing(due_item(asked, kit, "task:")).last_legal);
}

std::string due_at(const support::Book& book, const std::string& as_of) {
  const AsOf asked(book, as_of);
  return text(governing(due_item(asked, kit, "task:")).due_at);
}

// Done on a day, with a calendar interval.
std::string annual(const std::string& done, const Term& every) {
  support::Book book = book_at("2000-01-01", "100.0");
  book.say("2000-01-01", task("annual inspection", kit, {every}));
  book.say(done, support::done("annual inspection", kit));
  return last_legal(book, done);
}

}  // namespace

BOOST_AUTO_TEST_CASE(an_annual_runs_through_the_last_day_of_its_month) {
  const Term twelve = period(12, PeriodUnit::calendar_months);
  const Term twenty_four = period(24, PeriodUnit::calendar_months);
  BOOST_TEST(annual("2014-06-06", twelve) == "2015-06-30");                          // rules 9
  BOOST_TEST(annual("2015-06-04", twelve) == "2016-06-30");                          // rules 10
  BOOST_TEST(annual("2020-07-22", twenty_four) == "2022-07-31");                     // rules 11
  BOOST_TEST(annual("2003-03-01", twenty_four) == "2005-03-31");                     // rules 12
  BOOST_TEST(annual("2023-02-28", twelve) == "2024-02-29");                          // rules 13
  BOOST_TEST(annual("2024-09-07", twelve) == "2025-09-30");                          // records S46
  BOOST_TEST(annual("2024-09-07", period(12, PeriodUnit::months)) == "2025-09-07");  // S46
  BOOST_TEST(annual("2024-02-29", period(24, PeriodUnit::months)) == "2026-02-28");  // S46
}

BOOST_AUTO_TEST_CASE(an_annual_counts_from_its_return_to_service) {  // rules 14
  support::Book book = book_at("2025-01-01", "100.0");
  book.say("2025-01-01", task("annual inspection", kit, {period(12, PeriodUnit::calendar_months)}));
  logbook::Done done = support::done("annual inspection", kit);
  done.begun = day("2025-03-28");
  done.returned_to_service = true;
  book.say("2025-04-03", done);
  BOOST_TEST(last_legal(book, "2025-04-03") == "2026-04-30");
}

BOOST_AUTO_TEST_CASE(the_last_legal_day_is_due_and_the_next_is_over) {  // rules 9
  support::Book book = book_at("2014-01-01", "100.0");
  book.say("2014-01-01", task("annual inspection", kit, {period(12, PeriodUnit::calendar_months)}));
  book.say("2014-06-06", support::done("annual inspection", kit));
  const AsOf soon(book, "2015-06-29");
  BOOST_TEST(text(due_item(soon, kit, "task:").state) == "soon");
  const AsOf last(book, "2015-06-30");
  BOOST_TEST(text(due_item(last, kit, "task:").state) == "due");
  BOOST_TEST(left(due_item(last, kit, "task:")) == "0");
  const AsOf past(book, "2015-07-01");
  BOOST_TEST(text(due_item(past, kit, "task:").state) == "over");
  BOOST_TEST(left(due_item(past, kit, "task:")) == "-1");
}

BOOST_AUTO_TEST_CASE(hours_flown_past_the_due_point_come_out_of_the_next_hundred) {
  support::Book book = book_at("2025-01-01", "3000.0");
  book.say("2025-01-01", hundred_hours());
  book.say("2025-01-01", support::done("100-hour inspection", kit, "3000.0"));
  BOOST_TEST(due_at(book, "2025-01-01") == "3100.0");
  support::Book four = book;
  four.say("2025-02-01", support::flew(kit, "104.0"));
  four.say("2025-02-02", support::done("100-hour inspection", kit, "3104.0"));
  BOOST_TEST(due_at(four, "2025-02-02") == "3200.0");  // rules 31
  const AsOf asked(four, "2025-02-02");
  const reckon::Item item = due_item(asked, kit, "task:");
  BOOST_TEST(left(item) == "96.0");
  BOOST_TEST(text(governing(item).excess) == "4.0");
  BOOST_TEST(text(governing(item).used.figure) == "0.0");
  support::Book fifteen = book;
  fifteen.say("2025-02-01", support::flew(kit, "115.0"));
  fifteen.say("2025-02-02", support::done("100-hour inspection", kit, "3115.0"));
  BOOST_TEST(due_at(fifteen, "2025-02-02") == "3200.0");  // rules 32
  support::Book early = book;
  early.say("2025-02-01", support::flew(kit, "92.0"));
  early.say("2025-02-02", support::done("100-hour inspection", kit, "3092.0"));
  BOOST_TEST(due_at(early, "2025-02-02") == "3192.0");  // rules 33
}

BOOST_AUTO_TEST_CASE(a_check_reached_late_and_one_done_early) {  // records S44
  support::Book book = book_at("2025-01-01", "4143.0");
  book.say("2025-01-01", hundred_hours());
  book.say("2025-01-01", support::done("100-hour inspection", kit, "4143.0"));
  support::Book late = book;
  late.say("2025-02-01", support::flew(kit, "106.5"));
  late.say("2025-02-02", support::done("100-hour inspection", kit, "4249.5"));
  BOOST_TEST(due_at(late, "2025-02-02") == "4343.0");
  support::Book early = book;
  early.say("2025-02-01", support::flew(kit, "93.0"));
  early.say("2025-02-02", support::done("100-hour inspection", kit, "4236.0"));
  BOOST_TEST(due_at(early, "2025-02-02") == "4336.0");
}

BOOST_AUTO_TEST_CASE(from_due_keeps_to_the_due_point) {
  support::Book book = book_at("2025-01-01", "1000.0");
  logbook::Task from_due = task("check", kit, {hours("100.0"), period(6, PeriodUnit::months)});
  from_due.next_from = logbook::NextFrom::due;
  book.say("2025-01-01", from_due);
  book.say("2025-01-01", support::done("check", kit, "1000.0"));
  book.say("2025-02-01", support::flew(kit, "95.0"));
  book.say("2025-02-02", support::done("check", kit, "1095.0"));
  const AsOf asked(book, "2025-02-02");
  const reckon::Item item = due_item(asked, kit, "task:");
  BOOST_TEST(text(item.sides.at(0).due_at) == "1200.0");
  BOOST_TEST(text(item.sides.at(1).last_legal) == "2026-01-01");
}

BOOST_AUTO_TEST_CASE(a_chain_from_a_clamped_day_keeps_the_earlier_day) {  // rules 28
  support::Book book = book_at("2024-08-31", "1000.0");
  logbook::Task from_due = task("check", kit, {period(6, PeriodUnit::months)});
  from_due.next_from = logbook::NextFrom::due;
  book.say("2024-08-31", from_due);
  book.say("2024-08-31", support::done("check", kit));
  BOOST_TEST(last_legal(book, "2024-09-01") == "2025-02-28");
  book.say("2025-02-20", support::done("check", kit));
  BOOST_TEST(last_legal(book, "2025-02-20") == "2025-08-28");
}

BOOST_AUTO_TEST_CASE(done_resets_both_sides) {  // rules 38
  for (const auto& [unit, expected] : {std::pair{PeriodUnit::months, "2026-01-20"},
                                       std::pair{PeriodUnit::calendar_months, "2026-01-31"}}) {
    support::Book book = book_at("2024-05-10", "1000.0");
    book.say("2024-05-10", task("check", kit, {hours("100.0"), period(12, unit)}));
    book.say("2024-05-10", support::done("check", kit, "1000.0"));
    book.say("2024-12-01", support::flew(kit, "60.0"));
    book.say("2025-01-20", support::done("check", kit, "1060.0"));
    const AsOf asked(book, "2025-01-20");
    const reckon::Item item = due_item(asked, kit, "task:");
    BOOST_TEST(text(item.sides.at(0).due_at) == "1160.0");
    BOOST_TEST(text(item.sides.at(1).last_legal) == expected);
  }
}

BOOST_AUTO_TEST_CASE(with_a_stated_rate_the_calendar_side_governs) {  // records S47
  support::Book book = book_at("2024-05-15", "4100.0");
  book.say("2024-05-15", task("check", kit, {hours("300.0"), period(12, PeriodUnit::months)}));
  book.say("2024-05-15", support::done("check", kit, "4100.0"));
  book.say("2025-03-01", support::flew(kit, "110.0"));
  logbook::Plan plan;
  plan.aircraft = kit;
  plan.use = logbook::HoursIn{support::hours("110.0"), 299};
  book.say("2025-03-10", plan);
  const AsOf asked(book, "2025-03-10");
  const reckon::Item item = due_item(asked, kit, "task:");
  BOOST_TEST(text(item.sides.at(0).left) == "190.0");
  BOOST_TEST(text(item.sides.at(1).left) == "66");
  BOOST_TEST(item.governs == 1);
  BOOST_TEST(text(item.expected) == "2025-05-15");
  // It lasts 516 whole days: the limit is reached on the day after them.
  BOOST_TEST(text(item.sides.at(0).expected) ==
             quantity::say(day("2025-03-10") + quantity::Days::of(517)));
}

BOOST_AUTO_TEST_CASE(hours_run_out_before_the_date_and_govern) {  // rules 91
  support::Book book = book_at("2024-05-31", "1000.0");
  book.say("2024-05-31", task("check", kit, {hours("200.0"), period(12, PeriodUnit::months)}));
  book.say("2024-05-31", support::done("check", kit, "1000.0"));
  book.say("2024-12-01", support::flew(kit, "80.0"));
  logbook::Plan plan;
  plan.aircraft = kit;
  plan.use = logbook::Rate{support::hours("1.25"), logbook::Per::day};
  book.say("2025-01-15", plan);
  const AsOf asked(book, "2025-01-15");
  const reckon::Item item = due_item(asked, kit, "task:");
  BOOST_TEST(left(item) == "120.0");
  BOOST_TEST(item.governs == 0);
  BOOST_TEST(text(item.expected) == "2025-04-21");
  BOOST_TEST(text(item.sides.at(1).last_legal) == "2025-05-31");
}

BOOST_AUTO_TEST_CASE(what_is_over_comes_first_and_is_never_clipped) {  // rules 93, records S53
  support::Book book = book_at("2025-01-01", "1000.0");
  book.say("2025-01-01", task("early", kit, {hours("10.0")}));
  book.say("2025-01-01", task("late", kit, {hours("18.0")}));
  book.say("2025-01-01", task("never", kit, {hours("18.0")}));
  book.say("2025-01-01", task("calm", kit, {hours("500.0")}));
  book.say("2025-01-01", support::done("early", kit, "1000.0"));
  book.say("2025-01-01", support::done("late", kit, "1000.0"));
  book.say("2025-01-01", support::done("calm", kit, "1000.0"));
  book.say("2025-01-10", support::flew(kit, "13.2"));
  book.say("2025-01-14", support::flew(kit, "8.2"));
  const AsOf asked(book, "2025-01-14");
  const std::vector<reckon::Item> items = asked.due(kit);
  BOOST_REQUIRE(items.size() == 4U);
  BOOST_TEST(left(items.at(0)) == "-11.4");
  BOOST_TEST(left(items.at(1)) == "-3.4");
  BOOST_TEST(items.at(2).id == "task:never:ZZ-KIT");
  BOOST_TEST(items.at(3).id == "task:calm:ZZ-KIT");
  BOOST_TEST(!items.at(0).expected.has_value());
}

BOOST_AUTO_TEST_CASE(late_papers_are_counted_in_the_order_of_their_days) {  // records S50
  support::Book book = book_at("2025-03-01", "4400.0");
  book.say("2025-03-01", task("directive work", kit, {hours("3.0")}));
  book.say("2025-03-01", support::done("directive work", kit, "4400.0"));
  book.say("2025-03-05", support::flew(kit, "0.9"));
  book.say("2025-03-03", support::flew(kit, "1.2"));
  book.say("2025-03-04", support::flew(kit, "2.1"));
  for (const auto& [as_of, expected] :
       {std::pair{"2025-03-03", "1.8"}, {"2025-03-04", "-0.3"}, {"2025-03-05", "-1.2"}}) {
    const AsOf asked(book, as_of);
    BOOST_TEST(left(due_item(asked, kit, "task:")) == expected);
  }
}

BOOST_AUTO_TEST_CASE(a_task_never_done_is_not_known) {
  support::Book book = book_at("2025-01-01", "1000.0");
  book.say("2025-01-01", task("check", kit, {hours("100.0")}));
  const AsOf asked(book, "2025-01-02");
  const reckon::Item item = due_item(asked, kit, "task:");
  BOOST_TEST(text(item.state) == "not known");
  BOOST_CHECK(item.lack == reckon::Lack::last_done);
}

BOOST_AUTO_TEST_CASE(a_done_may_precede_its_declaration) {
  support::Book book = book_at("2025-01-01", "1000.0");
  book.say("2025-01-02", support::done("check", kit, "1000.0"));
  book.say("2025-01-03", support::flew(kit, "10.0"));
  book.say("2025-02-01", task("check", kit, {hours("100.0")}));
  BOOST_TEST(due_at(book, "2025-02-01") == "1100.0");
}

BOOST_AUTO_TEST_CASE(a_done_before_the_book_counts_from_its_stated_total) {
  support::Book book = book_at("2025-01-01", "1000.0");
  book.say("2025-01-01", task("check", kit, {hours("100.0")}));
  book.say("2024-11-01", support::done("check", kit, "960.0"));
  BOOST_TEST(due_at(book, "2025-01-01") == "1060.0");
  support::Book without = book_at("2025-01-01", "1000.0");
  without.say("2025-01-01", task("check", kit, {hours("100.0")}));
  without.say("2024-11-01", support::done("check", kit));
  const AsOf asked(without, "2025-01-01");
  BOOST_CHECK(due_item(asked, kit, "task:").lack == reckon::Lack::total_at_done);
}

BOOST_AUTO_TEST_CASE(first_terms_hold_until_it_is_done) {
  support::Book book = book_at("2025-01-01", "1000.0");
  logbook::Task directive = task("D-26-04", kit, {hours("500.0")});
  directive.class_ = logbook::TaskClass::directive;
  directive.first = logbook::Terms{Combine::first, {after(hours("50.0"), "2025-01-31")}};
  book.say("2025-01-01", directive);
  book.say("2025-01-20", support::flew(kit, "10.0"));
  book.say("2025-02-10", support::flew(kit, "7.0"));
  const AsOf before(book, "2025-02-10");
  BOOST_TEST(left(due_item(before, kit, "directive:")) == "43.0");
  BOOST_TEST(text(governing(due_item(before, kit, "directive:")).due_at) == "1060.0");
  logbook::Done done = support::done("D-26-04", kit, "1017.0");
  done.class_ = logbook::TaskClass::directive;
  book.say("2025-02-11", done);
  const AsOf after_it(book, "2025-02-11");
  BOOST_TEST(text(governing(due_item(after_it, kit, "directive:")).due_at) == "1517.0");
}

BOOST_AUTO_TEST_CASE(a_directive_is_not_done_by_a_plain_task_of_its_name) {
  support::Book book = book_at("2025-01-01", "1000.0");
  logbook::Task directive = task("D-26-04", kit, {hours("500.0")});
  directive.class_ = logbook::TaskClass::directive;
  book.say("2025-01-01", directive);
  book.say("2025-01-02", support::done("D-26-04", kit, "1000.0"));
  const AsOf asked(book, "2025-01-02");
  BOOST_TEST(text(due_item(asked, kit, "directive:").state) == "not known");
}

BOOST_AUTO_TEST_CASE(first_or_later_waits_for_the_last_of_its_terms) {  // after rules 53
  support::Book book = book_at("2014-10-08", "2340.0");
  logbook::Task directive = task("D-1", kit, {hours("500.0")});
  directive.first = logbook::Terms{Combine::latest,
                                   {after(hours("150.0"), "2014-10-08"),
                                    hours("2800.0", Basis::new_), hours("500.0", Basis::new_)}};
  book.say("2014-10-08", directive);
  book.say("2015-06-04", support::flew(kit, "110.0"));
  BOOST_TEST(due_at(book, "2015-06-05") == "2800.0");
  book.say("2016-01-01", support::flew(kit, "345.0"));
  book.say("2016-01-02", support::done("D-1", kit, "2795.0"));
  BOOST_TEST(due_at(book, "2016-01-02") == "3295.0");
}

BOOST_AUTO_TEST_CASE(a_task_done_once_leaves_the_list) {
  support::Book book = book_at("2025-01-01", "1000.0");
  logbook::Task once = task("modification", kit, {});
  once.first = logbook::Terms{Combine::first, {after(hours("50.0"), "2025-01-01")}};
  book.say("2025-01-01", once);
  const AsOf before(book, "2025-01-01");
  BOOST_TEST(before.due(kit).size() == 1U);
  book.say("2025-01-02", support::done("modification", kit));
  const AsOf after_it(book, "2025-01-02");
  BOOST_TEST(after_it.due(kit).empty());
}

BOOST_AUTO_TEST_CASE(a_stated_next_due_holds_until_it_is_done) {
  support::Book book = book_at("2025-01-01", "4321.6");
  book.say("2025-01-01", task("300-hour", kit, {hours("300.0"), period(12, PeriodUnit::months)}));
  book.say("2025-01-01",
           next_due("300-hour", kit,
                    {logbook::AtAirframe{support::hours("4339.6")}, day("2025-09-01")}));
  book.say("2025-01-10", support::flew(kit, "20.0"));
  const AsOf before(book, "2025-01-10");
  const reckon::Item item = due_item(before, kit, "task:");
  BOOST_TEST(text(item.sides.at(0).left) == "-2.0");
  BOOST_TEST(text(item.sides.at(0).due_at) == "4339.6");
  BOOST_TEST(text(item.sides.at(1).last_legal) == "2025-09-01");
  book.say("2025-01-11", support::done("300-hour", kit, "4341.6"));
  const AsOf after_it(book, "2025-01-11");
  BOOST_TEST(text(due_item(after_it, kit, "task:").sides.at(0).due_at) == "4641.6");
}

BOOST_AUTO_TEST_CASE(a_next_due_for_one_side_leaves_the_other_not_known) {
  support::Book book = book_at("2025-01-01", "4321.6");
  book.say("2025-01-01", task("300-hour", kit, {hours("300.0"), period(12, PeriodUnit::months)}));
  book.say("2025-01-01",
           next_due("300-hour", kit, {logbook::AtAirframe{support::hours("4339.6")}}));
  const AsOf asked(book, "2025-01-01");
  BOOST_CHECK(due_item(asked, kit, "task:").lack == reckon::Lack::due_point);
}

BOOST_AUTO_TEST_CASE(a_next_due_of_an_engine_may_be_stated_on_the_airframe) {
  const logbook::Engine engine = support::engine("TS-40", "E-1001");
  support::Book book = book_at("2025-01-01", "4321.6");
  book.say("2025-01-01", support::forward(engine, {support::had_hours("1820.4")}));
  book.say("2025-01-01", support::fitted(engine, {kit, "engine 1", ""}));
  book.say("2025-01-01", task("oil change", logbook::Model{{"TS-40"}}, {hours("50.0")}));
  book.say("2025-01-01",
           next_due("oil change", engine, {logbook::AtAirframe{support::hours("4339.6")}}));
  book.say("2025-01-10", support::flew(kit, "3.0"));
  const AsOf asked(book, "2025-01-10");
  const reckon::Item item = due_item(asked, kit, "task:");
  BOOST_TEST(left(item) == "15.0");
  BOOST_TEST(text(governing(item).due_at) == "1838.4");
  BOOST_TEST(text(governing(item).due_at_airframe) == "4339.6");
}

BOOST_AUTO_TEST_CASE(a_revision_holds_from_its_day_and_an_end_withdraws) {
  support::Book book = book_at("2025-01-01", "1000.0");
  const logbook::EntryId old = book.say("2025-01-01", task("check", kit, {hours("400.0")}));
  book.say("2025-01-01", support::done("check", kit, "1000.0"));
  book.say("2025-02-01", support::flew(kit, "350.0"));
  book.say(instead("2025-03-01", task("check", kit, {hours("300.0")}), old));
  const AsOf before(book, "2025-02-28");
  BOOST_TEST(left(due_item(before, kit, "task:")) == "50.0");
  const AsOf revised(book, "2025-03-01");
  BOOST_TEST(left(due_item(revised, kit, "task:")) == "-50.0");  // rules 37
  book.say("2025-03-02", ends("check", kit));
  const AsOf ended(book, "2025-03-02");
  BOOST_TEST(ended.due(kit).empty());
  book.say("2025-03-03", task("check", kit, {hours("500.0")}));
  const AsOf again(book, "2025-03-03");
  BOOST_TEST(left(due_item(again, kit, "task:")) == "150.0");
}

BOOST_AUTO_TEST_CASE(a_task_on_a_part_number_is_reckoned_for_each_serial) {  // after rules 76
  const logbook::Part a = support::part("PN-B", "A-1");
  const logbook::Part b = support::part("PN-B", "B-1");
  support::Book book = book_at("2025-01-01", "2386.3");
  book.say("2025-01-01", support::fitted(a, {kit, "blade 1", ""}, {support::had_hours("0.0")}));
  book.say("2025-01-01", support::fitted(b, {kit, "blade 2", ""}, {support::had_hours("1800.0")}));
  logbook::Task check = task("blade inspection", logbook::PartKind{{"PN-B"}}, {hours("2400.0")});
  check.first = logbook::Terms{Combine::first, {hours("2400.0", Basis::new_)}};
  book.say("2025-01-01", check);
  const AsOf asked(book, "2025-01-01");
  const std::vector<reckon::Item> items = asked.due(kit);
  BOOST_TEST(items.size() == 2U);
  BOOST_TEST(text(governing(item_of(items, "task:blade inspection:PN-B A-1")).due_at_airframe) ==
             "4786.3");
  BOOST_TEST(text(governing(item_of(items, "task:blade inspection:PN-B B-1")).due_at_airframe) ==
             "2986.3");
}

BOOST_AUTO_TEST_SUITE_END()
