// Several days in one entry of use, and what changes within them (derived from design 4: a part's
// life is never reckoned lower than it may be; a stated total has its place among the flights).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/checking.h"
#include "told.h"

using checking::CheckKind;
using checking::Record;
using logbook::CountedEvent;
using logbook::CounterKind;
using support::each;
using support::fitted;
using support::flew;
using support::forward;
using support::had_hours;
using support::landings;
using support::removed;
using support::starts;
using told::Told;

BOOST_AUTO_TEST_SUITE(spread)

namespace {

const logbook::Engine engine = support::engine("TS-40", "E-1");
const logbook::Part part = support::part("PN-4", "B-1");
const logbook::Part spare = support::part("PN-4", "B-2");
const logbook::Part disc = support::part("PN-T1", "T1-77");

logbook::Flew days(const logbook::Aircraft& aircraft, const std::string& hours,
                   const std::string& since) {
  logbook::Flew flown = flew(aircraft, hours, {starts(8), landings(8), support::flights(8)});
  flown.since = support::day(since);
  return flown;
}

// ZZ-KIT with a new part; 8.0 h from 3 to 8 March in one entry, and a removal on the 5th.
struct Sheet : Record {
  explicit Sheet(const std::string& total, const logbook::Thing& thing = part) {
    begin("2000.0", "");
    say("2025-03-01", forward(spare, {had_hours("0.0")}));
    say("2025-03-01", fitted(part, {kit, "hub", "2000.0"}, {had_hours("0.0")}));
    say("2025-03-01", fitted(engine, {kit, "engine 1", "2000.0"}, {had_hours("0.0")}));
    say("2025-03-01", fitted(disc, {engine, "disc", ""}, {had_hours("0.0")}));
    flight = say("2025-03-08", days(kit, "8.0", "2025-03-03"));
    const bool is_engine = thing == logbook::Thing(engine);
    removal = say("2025-03-05", removed(thing, {kit, is_engine ? "engine 1" : "hub", total}));
  }
  logbook::EntryId flight;
  logbook::EntryId removal;
};

}  // namespace

BOOST_AUTO_TEST_CASE(what_came_off_within_a_sheet_may_have_flown_all_of_it) {
  const Sheet record("");
  const Told told(record, "2025-03-10");
  BOOST_TEST(told.hours(part) == "8.0");
  BOOST_TEST(told.count(part, CounterKind::landings) == "8");
  BOOST_TEST(told.fitting(part) == "8.0");
  // Of a day before the sheet's last nothing is on record yet.
  BOOST_TEST(Told(record, "2025-03-07").hours(part) == "0.0");
}

BOOST_AUTO_TEST_CASE(a_stated_total_tells_how_much_of_a_sheet_was_flown_before) {
  const Sheet within("2003.0");
  const Told told(within, "2025-03-10");
  BOOST_TEST(told.hours(part) == "3.0");
  BOOST_TEST(told.count(part, CounterKind::landings) == "8");  // of these nobody can tell
  const Sheet at_its_start("2000.0");
  const Told none(at_its_start, "2025-03-10");
  BOOST_TEST(none.hours(part) == "0.0");
  BOOST_TEST(none.count(part, CounterKind::landings) == "0");
  const Sheet at_its_end("2008.0");
  BOOST_TEST(Told(at_its_end, "2025-03-10").hours(part) == "8.0");
}

BOOST_AUTO_TEST_CASE(a_total_outside_the_sheet_tells_nothing) {
  for (const std::string total : {"2009.0", "1999.0"}) {
    const Sheet record(total);
    BOOST_TEST(Told(record, "2025-03-10").hours(part) == "8.0");
  }
}

BOOST_AUTO_TEST_CASE(its_own_hours_tell_as_much_as_the_airframes) {
  for (const auto& [own, hours] : {std::pair{"3.0", "3.0"}, std::pair{"9.0", "8.0"}}) {
    Sheet record("");
    record.strike(record.removal);
    auto off = removed(part, {record.kit, "hub", ""});
    off.with = {had_hours(own)};
    record.say("2025-03-05", off);
    BOOST_TEST(Told(record, "2025-03-10").hours(part) == hours);
  }
}

BOOST_AUTO_TEST_CASE(the_hours_of_the_engine_aboard_tell_as_much) {
  for (const bool is_engine : {true, false}) {
    Sheet record("");
    record.strike(record.removal);
    const logbook::Thing thing = is_engine ? logbook::Thing(engine) : logbook::Thing(disc);
    auto off = is_engine ? removed(engine, {record.kit, "engine 1", ""})
                         : removed(disc, {engine, "disc", ""});
    off.engine = support::hours("3.0");
    CHECK_KINDS(record.kinds("2025-03-05", off));
    record.say("2025-03-05", off);
    BOOST_TEST(Told(record, "2025-03-10").hours(thing) == "3.0");
  }
  // What a fitted engine has is no word about the aircraft.
  Sheet record("2003.0", engine);
  auto on = fitted(engine, {record.kit, "engine 1", ""});
  on.engine = support::hours("3.0");
  record.say("2025-03-06", on);
  BOOST_TEST(Told(record, "2025-03-10").hours(engine) == "8.0");
}

BOOST_AUTO_TEST_CASE(an_engine_takes_what_is_inside_it_along) {
  const Sheet untold("", engine);
  const Told whole(untold, "2025-03-10");
  BOOST_TEST(whole.hours(engine) == "8.0");
  BOOST_TEST(whole.hours(disc) == "8.0");
  BOOST_TEST(whole.count(engine, CounterKind::starts) == "8");
  BOOST_TEST(whole.count(disc, CounterKind::starts) == "8");
  const Sheet stated("2003.0", engine);
  const Told split(stated, "2025-03-10");
  BOOST_TEST(split.hours(engine) == "3.0");
  BOOST_TEST(split.hours(disc) == "3.0");
  BOOST_TEST(split.count(disc, CounterKind::starts) == "8");
}

BOOST_AUTO_TEST_CASE(what_goes_on_within_a_sheet_has_the_rest_of_it_or_all) {
  for (const auto& [total, after] : {std::pair{"", "8.0"}, std::pair{"2003.0", "5.0"}}) {
    Sheet record(total);
    record.say("2025-03-05", fitted(spare, {record.kit, "hub", total}));
    BOOST_TEST(Told(record, "2025-03-10").hours(spare) == after);
    BOOST_TEST(Told(record, "2025-03-10").count(spare, CounterKind::landings) == "8");
  }
}

BOOST_AUTO_TEST_CASE(off_and_on_again_within_a_sheet_is_counted_once_at_most) {
  Sheet record("");
  record.say("2025-03-06", fitted(part, {record.kit, "hub", ""}));
  const Told told(record, "2025-03-10");
  BOOST_TEST(told.hours(part) == "8.0");
  BOOST_TEST(told.count(part, CounterKind::landings) == "8");
  Sheet split("2003.0");
  split.say("2025-03-06", fitted(part, {split.kit, "hub", "2005.0"}));
  BOOST_TEST(Told(split, "2025-03-10").hours(part) == "6.0");
}

BOOST_AUTO_TEST_CASE(on_and_off_within_a_sheet) {
  Sheet record("2003.0");
  record.say("2025-03-05", fitted(spare, {record.kit, "hub", "2003.0"}));
  record.say("2025-03-06", removed(spare, {record.kit, "hub", "2004.5"}));
  BOOST_TEST(Told(record, "2025-03-10").hours(spare) == "1.5");
  Sheet untold("");
  untold.say("2025-03-05", fitted(spare, {untold.kit, "hub", ""}));
  untold.say("2025-03-06", removed(spare, {untold.kit, "hub", ""}));
  BOOST_TEST(Told(untold, "2025-03-10").hours(spare) == "8.0");
}

BOOST_AUTO_TEST_CASE(before_the_first_flight_of_its_first_day_a_sheet_has_not_begun) {
  Sheet record("");
  record.strike(record.removal);
  auto early = removed(part, {record.kit, "hub", ""});
  early.before_the_first_flight = true;
  record.say("2025-03-03", early);
  BOOST_TEST(Told(record, "2025-03-10").hours(part) == "0.0");
}

BOOST_AUTO_TEST_CASE(hours_unaccounted_for_may_have_been_flown_since_the_use_before) {
  Record record;
  record.begin("2000.0", "");
  record.say("2025-03-01", fitted(part, {record.kit, "hub", "2000.0"}, {had_hours("0.0")}));
  record.say("2025-03-02", flew(record.kit, "1.0", {starts(1)}));
  record.say("2025-03-04", removed(part, {record.kit, "hub", ""}));
  record.say("2025-03-06", support::unaccounted(record.kit, "2.3"));
  BOOST_TEST(Told(record, "2025-03-10").hours(part) == "3.3");
  BOOST_TEST(Told(record, "2025-03-10").count(part, CounterKind::starts) == "at least 1");
}

BOOST_AUTO_TEST_CASE(a_total_before_all_missing_hours_leaves_nothing_open) {
  Record record;
  record.begin("2000.0", "");
  record.say("2025-03-01", fitted(part, {record.kit, "hub", "2000.0"}, {had_hours("0.0")}));
  record.say("2025-03-02", flew(record.kit, "1.0", {starts(1)}));
  record.say("2025-03-04", removed(part, {record.kit, "hub", "2001.0"}));
  record.say("2025-03-06", support::unaccounted(record.kit, "2.3"));
  BOOST_TEST(Told(record, "2025-03-10").hours(part) == "1.0");
  BOOST_TEST(Told(record, "2025-03-10").count(part, CounterKind::starts) == "1");
}

BOOST_AUTO_TEST_CASE(of_a_sheet_without_hours_a_total_tells_nothing) {
  Record record;
  record.begin("2000.0", "");
  record.say("2025-03-01", fitted(part, {record.kit, "hub", "2000.0"}, {had_hours("0.0")}));
  record.say("2025-03-08", days(record.kit, "0.0", "2025-03-03"));
  record.say("2025-03-05", removed(part, {record.kit, "hub", "2000.0"}));
  BOOST_TEST(Told(record, "2025-03-10").count(part, CounterKind::landings) == "8");
}

BOOST_AUTO_TEST_CASE(work_within_a_sheet_counts_from_what_was_flown_for_certain_before) {
  Sheet record("");
  record.say("2025-03-06", fitted(part, {record.kit, "hub", ""}));
  record.say(
      "2025-03-01",
      definitions::limit(part, {definitions::after(definitions::hours("20.0"), "2025-03-06")}));
  record.say("2025-03-01", definitions::task("swing", part, {definitions::hours("10.0")}));
  record.say("2025-03-07", support::done("swing", part));
  const definitions::AsOf asked(record, "2025-03-10");
  BOOST_TEST(definitions::left(life_item(asked, "limit:PN-4")) == "12.0");
  BOOST_TEST(definitions::left(due_item(asked, record.kit, "task:swing")) == "2.0");
}

BOOST_AUTO_TEST_CASE(moves_within_a_sheet_are_asked_about_unless_a_total_is_stated) {
  Record record;
  record.begin("2000.0", "");
  record.say("2025-03-01", fitted(part, {record.kit, "hub", "2000.0"}, {had_hours("0.0")}));
  const auto off = [&](const std::string& total) {
    return removed(part, {record.kit, "hub", total});
  };
  const auto flown = days(record.kit, "8.0", "2025-03-03");
  {
    Record before = record;
    const auto entry = before.say("2025-03-08", flown);
    CHECK_KINDS(before.kinds("2025-03-05", off("")), CheckKind::moved_within_a_use);
    BOOST_CHECK(before.only("2025-03-05", off("")).entries == std::vector{entry});
    CHECK_KINDS(before.kinds("2025-03-05", off("2003.0")));
    auto own = off("");
    own.with = {had_hours("3.0")};
    CHECK_KINDS(before.kinds("2025-03-05", own));
    own.with = {had_hours("8.5")};
    CHECK_KINDS(before.kinds("2025-03-05", own), CheckKind::had_differs);
    CHECK_KINDS(before.kinds("2025-03-05", off("2009.0")), CheckKind::stated_total_differs);
    CHECK_KINDS(before.kinds("2025-03-02", off("")));
    CHECK_KINDS(before.kinds("2025-03-08", off("")));
  }
  const auto entry = record.say("2025-03-05", off(""));
  CHECK_KINDS(record.kinds("2025-03-08", flown), CheckKind::moved_within_a_use);
  BOOST_CHECK(record.only("2025-03-08", flown).entries == std::vector{entry});
  CHECK_KINDS(record.kinds("2025-03-08", days(record.kit, "8.0", "2025-03-06")));
  const auto sheet_entry = record.say("2025-03-08", flown);  // written later, so told of it
  const auto found = reckon::check_record(record.entries(), record.today);
  BOOST_REQUIRE_EQUAL(found.size(), 1U);
  BOOST_CHECK(found[0].entry == sheet_entry);
}

BOOST_AUTO_TEST_CASE(a_total_within_a_sheet_is_met) {
  const Sheet record("2003.0");
  BOOST_CHECK(reckon::check_record(record.entries(), record.today).empty());
  BOOST_TEST(Told(record, "2025-03-10").statement(record.removal) == "2003.0");
}

BOOST_AUTO_TEST_CASE(of_rules_that_change_within_a_sheet_the_harsher_counts) {
  for (const auto& [first, second] : {std::pair{"1", "0.1"}, std::pair{"0.1", "1"}}) {
    Record record;
    record.begin("2000.0", "");
    const logbook::Model model{{"TS-40"}};
    record.say("2025-03-01", fitted(engine, {record.kit, "engine 1", ""}, {had_hours("0.0")}));
    const auto old = record.say("2025-03-01", support::rule(model, CounterKind::cycles,
                                                            {each(CountedEvent::start, first)}));
    record.say("2025-03-08", days(record.kit, "8.0", "2025-03-03"));
    auto rule = checking::said("2025-03-05", support::rule(model, CounterKind::cycles,
                                                           {each(CountedEvent::start, second)}));
    rule.instead_of = checking::name_of(old);
    record.say(rule);
    BOOST_TEST(Told(record, "2025-03-10").count(engine, CounterKind::cycles) == "8");
    // After it, only the new one holds.
    record.say("2025-03-09", flew(record.kit, "1.0", {starts(10)}));
    BOOST_TEST(Told(record, "2025-03-10").count(engine, CounterKind::cycles) ==
               (std::string(second) == "1" ? "18" : "9"));
  }
}

BOOST_AUTO_TEST_CASE(a_rule_that_begins_within_a_sheet_leaves_the_days_before_it_open) {
  Record record;
  record.begin("2000.0", "");
  record.say("2025-03-01", fitted(engine, {record.kit, "engine 1", ""}, {had_hours("0.0")}));
  record.say("2025-03-08", days(record.kit, "8.0", "2025-03-03"));
  record.say("2025-03-05", support::rule(logbook::Model{{"TS-40"}}, CounterKind::cycles,
                                         {each(CountedEvent::start, "1")}));
  BOOST_TEST(Told(record, "2025-03-10").count(engine, CounterKind::cycles) == "at least 8");
}

BOOST_AUTO_TEST_CASE(of_factors_that_change_within_a_sheet_the_larger_counts) {
  for (const auto& [first, second] : {std::pair{"1", "0.9"}, std::pair{"0.9", "1"}}) {
    Record record;
    record.begin("2000.0", "");
    record.say("2025-03-01", support::counts_from(record.kit, "collective", first));
    record.say("2025-03-05", support::counts_from(record.kit, "collective", second));
    record.say("2025-03-08", days(record.kit, "8.0", "2025-03-03"));
    auto work = support::done("inspection", record.kit, "2008.0");
    const auto entry = record.say("2025-03-09", work);
    const Told told(record, "2025-03-10");
    BOOST_TEST(told.hours(record.kit) == "2008.0");
    BOOST_TEST(told.statement(entry) == "2008.0");
  }
}

BOOST_AUTO_TEST_SUITE_END()
