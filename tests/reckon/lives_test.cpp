#include "reckon/lives.h"

#include <boost/test/unit_test.hpp>

#include "definitions.h"

using namespace definitions;
using logbook::CounterKind;
using support::day;
using support::had;
using support::had_hours;

BOOST_AUTO_TEST_SUITE(lives)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Aircraft mob = support::aircraft("ZZ-MOB");
const logbook::Engine engine = support::engine("TS-40", "E-1001");

// ZZ-KIT with 1000.0 h at the start of 2020, one engine with 2000.0 h.
support::Book plain_book() {
  support::Book book;
  book.say("2020-01-01", support::forward(kit, "1000.0", {had(support::landings(3000))}));
  book.say("2020-01-01",
           support::forward(engine, {had_hours("2000.0"), had(support::starts(900))}));
  book.say("2020-01-01", support::fitted(engine, {kit, "engine 1", ""}));
  return book;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_disc_inside_a_module_runs_out_before_the_module) {  // records S32
  const logbook::Part module = support::part("PN-M", "M-4");
  const logbook::Part disc = support::part("PN-T1", "T1-77");
  support::Book book = plain_book();
  book.say("2020-01-01",
           support::forward(module, {had_hours("9000.0"), had_hours("0.0", Basis::overhaul)}));
  book.say("2020-01-01", support::forward(disc, {had_hours("2760.0")}));
  book.say("2020-01-01", support::fitted(disc, {module, "disc", ""}));
  book.say("2020-01-01", support::fitted(module, {engine, "module", ""}));
  book.say("2020-01-01", limit(logbook::PartKind{{"PN-M"}}, {hours("3500.0", Basis::overhaul)}));
  book.say("2020-01-01", limit(logbook::PartKind{{"PN-T1"}}, {hours("6000.0", Basis::new_)}));
  book.say("2024-01-01", support::flew(kit, "3100.0"));
  const AsOf asked(book, "2024-01-02");
  BOOST_TEST(left(life_item(asked, "limit:PN-M")) == "400.0");
  BOOST_TEST(left(life_item(asked, "limit:PN-T1")) == "140.0");
  const std::vector<reckon::Item> items = asked.due(kit);
  BOOST_TEST(items.front().id.starts_with("limit:PN-T1 T1-77"));
  BOOST_TEST(text(governing(items.front()).due_at) == "6000.0");
  BOOST_TEST(text(governing(items.front()).due_at_airframe) == "4240.0");
}

BOOST_AUTO_TEST_CASE(a_lowered_limit_holds_from_its_day) {  // records S35
  const logbook::Part a = support::part("PN-B", "A-1");
  const logbook::Part b = support::part("PN-B", "B-1");
  support::Book book = plain_book();
  book.say("2020-01-01", support::fitted(a, {kit, "blade 1", ""}, {had_hours("2986.0")}));
  book.say("2020-01-01", support::fitted(b, {kit, "blade 2", ""}, {had_hours("3210.0")}));
  const logbook::EntryId old =
      book.say("2020-01-01", limit(logbook::PartKind{{"PN-B"}}, {hours("6000.0", Basis::new_)}));
  book.say(instead("2025-03-01", limit(logbook::PartKind{{"PN-B"}}, {hours("3000.0", Basis::new_)}),
                   old));
  const AsOf before(book, "2025-02-28");
  BOOST_TEST(left(life_item(before, "limit:PN-B A-1")) == "3014.0");
  const AsOf after_it(book, "2025-03-01");
  BOOST_TEST(left(life_item(after_it, "limit:PN-B A-1")) == "14.0");
  BOOST_TEST(left(life_item(after_it, "limit:PN-B B-1")) == "-210.0");
  BOOST_TEST(text(life_item(after_it, "limit:PN-B B-1").state) == "over");
}

BOOST_AUTO_TEST_CASE(a_limit_without_instead_of_adds) {
  support::Book book = plain_book();
  book.say("2020-01-01", limit(engine, {hours("3000.0", Basis::new_)}));
  book.say("2020-01-02", limit(engine, {hours("2500.0", Basis::new_)}));
  const AsOf asked(book, "2020-02-01");
  BOOST_TEST(asked.lives().size() == 2U);
}

BOOST_AUTO_TEST_CASE(an_overhaul_does_not_restart_a_calendar_life) {  // records S38
  const logbook::Part module = support::part("PN-M", "M-4");
  support::Book book = plain_book();
  book.say("2010-03-01", made(module, "2010-03-01"));
  book.say("2010-03-01", limit(module, {period(15, PeriodUnit::years, Basis::manufacture)}));
  book.say("2019-06-01", support::overhauled(module));
  const AsOf last(book, "2025-03-01");
  BOOST_TEST(text(governing(life_item(last, "limit:")).last_legal) == "2025-03-01");
  BOOST_TEST(text(life_item(last, "limit:").state) == "due");
  const AsOf next(book, "2025-03-02");
  BOOST_TEST(text(life_item(next, "limit:").state) == "over");
}

BOOST_AUTO_TEST_CASE(five_years_or_3000_h_is_over_by_the_date) {  // records S55
  const logbook::Part propeller = support::part("PN-P", "P-1");
  support::Book book;
  book.say("2020-02-14", support::forward(kit, "1000.0"));
  book.say("2020-02-14", support::forward(propeller, {had_hours("4000.0")}));
  book.say("2020-02-14", support::overhauled(propeller));
  book.say("2020-02-14", support::fitted(propeller, {kit, "propeller", ""}));
  book.say("2020-02-14", limit(propeller, {hours("3000.0", Basis::overhaul),
                                           period(5, PeriodUnit::years, Basis::overhaul)}));
  book.say("2024-02-14", support::flew(kit, "2197.2"));
  const AsOf asked(book, "2025-03-10");
  const reckon::Item item = life_item(asked, "limit:");
  BOOST_TEST(text(item.sides.at(0).left) == "802.8");
  BOOST_TEST(text(item.sides.at(1).last_legal) == "2025-02-14");
  BOOST_TEST(left(item) == "-24");
  BOOST_TEST(item.governs == 1);
  BOOST_TEST(text(item.state) == "over");
}

BOOST_AUTO_TEST_CASE(bolts_pass_a_landing_limit_on_the_tenth_flight) {  // records S25
  const logbook::Part bolts = support::part("PN-TB", "T-1");
  support::Book book = plain_book();
  book.say("2020-01-01", support::fitted(bolts, {kit, "tail", ""}, {had(support::landings(4981))}));
  book.say("2020-01-01", limit(bolts, {count(support::landings(5000), Basis::new_)}));
  for (int flight = 1; flight <= 17; ++flight) {
    book.say("2020-01-02", support::flew(kit, "0.5", {support::landings(2)}));
    const AsOf asked(book, "2020-01-02");
    BOOST_TEST(left(life_item(asked, "limit:")) == std::to_string(19 - 2 * flight));
    const bool is_over = text(life_item(asked, "limit:").state) == "over";
    BOOST_TEST(is_over == (flight >= 10));
  }
}

BOOST_AUTO_TEST_CASE(what_already_happened_past_a_limit_is_shown_as_over) {  // records S41
  const logbook::Part disc = support::part("PN-T1", "T1-77");
  support::Book book = plain_book();
  book.say("2020-01-01", support::fitted(disc, {engine, "disc", ""}, {had_hours("1774.2")}));
  book.say("2020-01-01", limit(disc, {hours("1775.0", Basis::new_)}));
  book.say("2020-01-02", support::flew(kit, "1.4"));
  const AsOf asked(book, "2020-01-02");
  BOOST_TEST(left(life_item(asked, "limit:")) == "-0.6");
}

BOOST_AUTO_TEST_CASE(a_part_carries_its_life_from_one_aircraft_to_another) {  // rules 63
  const logbook::Part part = support::part("PN-4411", "B-88");
  support::Book book;
  book.say("2020-01-01", support::forward(kit, "1200.0"));
  book.say("2020-01-01", support::forward(mob, "7810.3"));
  book.say("2020-01-01", support::fitted(part, {kit, "blade", ""}, {had_hours("0.0")}));
  book.say("2020-01-01", limit(part, {hours("4000.0", Basis::new_)}));
  book.say("2022-01-01", support::flew(kit, "1150.5"));
  book.say("2022-01-02", support::removed(part, {kit, "blade", "2350.5"}));
  const AsOf off(book, "2022-01-02");
  BOOST_TEST(left(life_item(off, "limit:")) == "2849.5");
  BOOST_TEST(!life_item(off, "limit:").aircraft.has_value());
  BOOST_TEST(!governing(life_item(off, "limit:")).due_at_airframe.has_value());
  book.say("2022-01-03", support::fitted(part, {mob, "blade", "7810.3"}));
  const AsOf on(book, "2022-01-03");
  BOOST_TEST(left(life_item(on, "limit:")) == "2849.5");
  BOOST_TEST(text(governing(life_item(on, "limit:")).due_at_airframe) == "10659.8");
}

BOOST_AUTO_TEST_CASE(a_disc_keeps_its_life_when_the_engine_is_overhauled) {  // rules 65
  const logbook::Part disc = support::part("PN-T1", "T1-77");
  support::Book book;
  book.say("2020-01-01", support::forward(kit, "4000.0"));
  book.say("2020-01-01", support::forward(engine, {had_hours("8200.0")}));
  book.say("2020-01-01", support::overhauled(engine, {had_hours("8200.0")}));
  book.say("2020-01-01", support::fitted(disc, {engine, "disc", ""}, {had_hours("8200.0")}));
  book.say("2020-01-01", support::fitted(engine, {kit, "engine 1", "4000.0"}));
  book.say("2020-01-01", limit(logbook::Model{{"TS-40"}}, {hours("3500.0", Basis::overhaul)}));
  book.say("2020-01-01", limit(disc, {hours("10000.0", Basis::new_)}));
  const AsOf asked(book, "2020-01-02");
  const std::vector<reckon::Item> items = asked.due(kit);
  BOOST_TEST(text(governing(item_of(items, "limit:TS-40")).due_at_airframe) == "7500.0");
  BOOST_TEST(text(governing(item_of(items, "limit:PN-T1")).due_at_airframe) == "5800.0");
  BOOST_TEST(items.front().id.starts_with("limit:PN-T1"));
}

BOOST_AUTO_TEST_CASE(a_life_that_was_cut_below_what_is_used_is_over) {  // rules 71
  support::Book book = plain_book();
  const logbook::Part disc = support::part("PN-T1", "T1-77");
  const auto cycles = [](const std::string& amount) {
    return support::count(CounterKind::cycles, amount);
  };
  book.say("2020-01-01", support::fitted(disc, {engine, "disc", ""}, {had(cycles("9400"))}));
  const logbook::EntryId old =
      book.say("2020-01-01", limit(disc, {count(cycles("12000"), Basis::new_)}));
  book.say(instead("2020-02-01", limit(disc, {count(cycles("9000"), Basis::new_)}), old));
  const AsOf asked(book, "2020-02-01");
  BOOST_TEST(left(life_item(asked, "limit:")) == "-400");
}

BOOST_AUTO_TEST_CASE(two_engines_of_a_twin_are_reckoned_each_by_itself) {  // rules 74
  const logbook::Aircraft twin = support::aircraft("ZZ-TWN");
  const logbook::Engine left_engine = support::engine("TS-40", "E-1");
  const logbook::Engine right_engine = support::engine("TS-40", "E-2");
  support::Book book;
  book.say("2020-01-01", support::forward(twin, "5210.0"));
  book.say("2020-01-01", support::forward(left_engine, {had_hours("4870.3"),
                                                        had_hours("1120.3", Basis::overhaul)}));
  book.say("2020-01-01", support::forward(right_engine, {had_hours("2006.9"),
                                                         had_hours("2006.9", Basis::overhaul)}));
  book.say("2020-01-01", support::fitted(left_engine, {twin, "engine 1", ""}));
  book.say("2020-01-01", support::fitted(right_engine, {twin, "engine 2", ""}));
  book.say("2020-01-01", limit(logbook::Model{{"TS-40"}}, {hours("3600.0", Basis::overhaul)}));
  const AsOf asked(book, "2020-01-01");
  const reckon::Item one = life_item(asked, "limit:TS-40 E-1");
  const reckon::Item two = life_item(asked, "limit:TS-40 E-2");
  BOOST_TEST(left(one) == "2479.7");
  BOOST_TEST(left(two) == "1593.1");
  BOOST_TEST(text(governing(one).due_at_airframe) == "7689.7");
  BOOST_TEST(text(governing(two).due_at_airframe) == "6803.1");
}

BOOST_AUTO_TEST_CASE(a_life_that_nobody_knows_has_no_figure) {  // rules 66
  const logbook::Part part = support::part("PN-X", "X-1");
  support::Book book = plain_book();
  logbook::BringsForward unknown = support::forward(part, {});
  unknown.unknown = {logbook::Unknown{}};
  book.say("2020-01-01", unknown);
  book.say("2020-01-01", support::fitted(part, {kit, "hook", ""}));
  book.say("2020-01-01", limit(part, {hours("5000.0", Basis::new_)}));
  book.say("2020-01-02", support::flew(kit, "1.0"));
  const AsOf asked(book, "2020-01-02");
  const reckon::Item item = life_item(asked, "limit:");
  BOOST_TEST(text(item.state) == "not known");
  BOOST_TEST(!governing(item).left.has_value());
  BOOST_CHECK(item.lack == reckon::Lack::total);
}

BOOST_AUTO_TEST_CASE(hours_after_a_day_are_counted_though_the_total_is_not_known) {
  const logbook::Part part = support::part("PN-X", "X-1");
  support::Book book = plain_book();
  logbook::BringsForward unknown = support::forward(part, {});
  unknown.unknown = {logbook::Unknown{}};
  book.say("2020-01-01", unknown);
  book.say("2020-01-01", support::fitted(part, {kit, "hook", ""}));
  book.say("2020-01-01", limit(part, {after(hours("50.0"), "2020-01-05")}));
  book.say("2020-01-05", support::flew(kit, "3.0"));
  book.say("2020-01-06", support::flew(kit, "4.0"));
  const AsOf asked(book, "2020-01-06");
  BOOST_TEST(left(life_item(asked, "limit:")) == "46.0");
}

BOOST_AUTO_TEST_CASE(hours_after_a_day_before_the_record_are_not_known) {
  support::Book book = plain_book();
  book.say("2020-01-01", limit(engine, {after(hours("50.0"), "2019-06-01")}));
  const AsOf asked(book, "2020-01-06");
  BOOST_CHECK(life_item(asked, "limit:").lack == reckon::Lack::total_at_start);
}

BOOST_AUTO_TEST_CASE(a_day_that_is_not_on_record_is_named) {
  support::Book book = plain_book();
  book.say("2020-01-01", limit(engine, {period(12, PeriodUnit::years, Basis::release)}));
  const AsOf asked(book, "2020-01-06");
  const reckon::Item item = life_item(asked, "limit:");
  BOOST_CHECK(item.lack == reckon::Lack::basis_day);
  BOOST_CHECK(governing(item).since == Basis::release);
}

BOOST_AUTO_TEST_CASE(since_fitting_restarts_at_each_fitting) {
  const logbook::Part part = support::part("PN-X", "X-1");
  support::Book book = plain_book();
  book.say("2020-01-01", limit(part, {hours("100.0", Basis::fitting)}));
  book.say("2020-01-01", support::fitted(part, {kit, "hook", ""}, {had_hours("500.0")}));
  book.say("2020-01-02", support::flew(kit, "30.0"));
  const AsOf first(book, "2020-01-02");
  BOOST_TEST(left(life_item(first, "limit:")) == "70.0");
  book.say("2020-01-03", support::removed(part, {kit, "hook", ""}));
  book.say("2020-01-03", support::flew(kit, "1.0"));
  const AsOf off(book, "2020-01-03");
  BOOST_TEST(left(life_item(off, "limit:")) == "70.0");  // off the aircraft it stands still
  BOOST_TEST(life_item(off, "limit:").because.size() == 2U);
  book.say("2020-01-04", support::fitted(part, {kit, "hook", ""}));
  book.say("2020-01-05", support::flew(kit, "10.0"));
  const AsOf second(book, "2020-01-05");
  BOOST_TEST(left(life_item(second, "limit:")) == "90.0");
}

BOOST_AUTO_TEST_CASE(what_was_over_since_fitting_is_over_when_it_is_off) {
  const logbook::Part part = support::part("PN-X", "X-1");
  support::Book book = plain_book();
  book.say("2020-01-01", limit(part, {hours("20.0", Basis::fitting)}));
  book.say("2020-01-01", support::fitted(part, {kit, "hook", ""}, {had_hours("500.0")}));
  book.say("2020-01-02", support::flew(kit, "30.0"));
  book.say("2020-01-03", support::removed(part, {kit, "hook", ""}));
  const reckon::Item item = life_item(AsOf(book, "2020-06-01"), "limit:");
  BOOST_TEST(left(item) == "-10.0");
  BOOST_TEST(text(item.state) == "over");
}

BOOST_AUTO_TEST_CASE(what_was_never_fitted_has_used_nothing_since_fitting) {
  const logbook::Part part = support::part("PN-X", "X-1");
  support::Book book = plain_book();
  book.say("2020-01-01", limit(part, {hours("100.0", Basis::fitting)}));
  book.say("2020-01-01", support::forward(part, {had_hours("500.0")}));
  BOOST_TEST(left(life_item(AsOf(book, "2020-01-05"), "limit:")) == "100.0");
}

BOOST_AUTO_TEST_CASE(days_since_fitting_run_on_when_it_is_off) {  // docs/decisions/0028
  const logbook::Part part = support::part("PN-X", "X-1");
  support::Book book = plain_book();
  book.say("2020-01-01", limit(part, {period(30, PeriodUnit::days, Basis::fitting)}));
  book.say("2020-01-01", support::fitted(part, {kit, "hook", ""}, {had_hours("500.0")}));
  book.say("2020-01-03", support::removed(part, {kit, "hook", ""}));
  BOOST_TEST(left(life_item(AsOf(book, "2020-01-11"), "limit:")) == "20");
  book.say("2020-01-20", support::fitted(part, {kit, "hook", ""}));
  BOOST_TEST(left(life_item(AsOf(book, "2020-01-21"), "limit:")) == "29");
}

BOOST_AUTO_TEST_CASE(at_exactly_the_limit_it_is_due_unless_it_counts_when_exceeding) {
  support::Book book = plain_book();
  book.say("2020-01-01", limit(engine, {hours("2000.0", Basis::new_)}));
  logbook::Limit exceeding = limit(kit, {hours("1000.0", Basis::new_)});
  exceeding.when_exceeding = true;
  book.say("2020-01-01", exceeding);
  const AsOf asked(book, "2020-01-01");
  BOOST_TEST(text(life_item(asked, "limit:TS-40").state) == "due");
  BOOST_TEST(text(life_item(asked, "limit:ZZ-KIT").state) == "soon");
}

namespace {

// The part came new and flew 1900.0 h on the first model.
support::Book book_with_two_models() {
  support::Book book;
  const logbook::Part part = support::part("PN-S", "S-1");
  book.say("2020-01-01", is_model(kit, "A-1"));
  book.say("2020-01-01", is_model(mob, "B-1"));
  book.say("2020-01-01", support::forward(kit, "1000.0"));
  book.say("2020-01-01", support::forward(mob, "2000.0"));
  book.say("2020-01-01", support::fitted(part, {kit, "servo", ""}, {had_hours("0.0")}));
  book.say("2020-01-01", support::flew(kit, "1900.0"));
  logbook::Limit on_a = limit(logbook::PartKind{{"PN-S"}}, {hours("4400.0", Basis::new_)});
  on_a.on_model = logbook::ModelName{"A-1"};
  logbook::Limit on_b = limit(logbook::PartKind{{"PN-S"}}, {hours("2200.0", Basis::new_)});
  on_b.on_model = logbook::ModelName{"B-1"};
  book.say("2020-01-01", on_a);
  book.say("2020-01-01", on_b);
  return book;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_limit_for_a_model_holds_on_that_model) {
  const support::Book book = book_with_two_models();
  const AsOf asked(book, "2020-01-02");
  BOOST_TEST(asked.lives().size() == 1U);
  BOOST_TEST(left(life_item(asked, "limit:PN-S")) == "2500.0");
}

BOOST_AUTO_TEST_CASE(a_part_that_was_on_both_models_is_not_known_without_a_policy) {
  const logbook::Part part = support::part("PN-S", "S-1");
  support::Book book = book_with_two_models();
  book.say("2020-02-01", support::removed(part, {kit, "servo", ""}));
  book.say("2020-02-02", support::fitted(part, {mob, "servo", ""}));
  const AsOf asked(book, "2020-02-02");
  const reckon::Item item = life_item(asked, "limit:PN-S");
  BOOST_TEST(text(item.state) == "not known");
  BOOST_CHECK(item.lack == reckon::Lack::shared_lives);
  BOOST_TEST(!governing(item).left.has_value());
}

BOOST_AUTO_TEST_CASE(a_thing_without_a_limit_is_named) {
  const logbook::Part part = support::part("PN-X", "X-1");
  support::Book book = plain_book();
  book.say("2020-01-01", support::fitted(part, {kit, "hook", ""}));
  const AsOf before(book, "2020-01-01");
  BOOST_TEST(reckon::things_without_limit(before.histories, before.standing, kit).size() == 2U);
  book.say("2020-01-02", on_condition(logbook::PartKind{{"PN-X"}}));
  book.say("2020-01-02", limit(engine, {hours("3000.0", Basis::new_)}));
  const AsOf after_it(book, "2020-01-02");
  BOOST_TEST(reckon::things_without_limit(after_it.histories, after_it.standing, kit).empty());
}

BOOST_AUTO_TEST_SUITE_END()
