// Work that does not count because it is not signed is told only while signing it would change
// something. 14 CFR 91.409(b): what was flown past is taken from the next interval; that unsigned
// work starts nothing anew is common practice, no source.
#include "reckon/waiting.h"

#include <boost/test/unit_test.hpp>

#include "reckon/definitions.h"
#include "reckon/trend/segments.h"

namespace {

using namespace definitions;
using logbook::SignedHow;
using support::Book;

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Engine engine = support::engine("TS-40", "E-1001");

// Everything from 2026-01-01 on counts once it is signed.
struct Shop {
  Shop() {
    book.say("2026-01-01", support::forward(kit, "1000.0"));
    book.say("2026-01-01", support::forward(engine, {support::had_hours("1000.0")}));
    book.say("2026-01-01", support::fitted(engine, {kit, "engine 1", "1000.0"}));
    book.say("2026-01-01", logbook::CountsWork{{"Marrow Point"}, logbook::WorkCounts::when_signed});
  }
  void sign(const logbook::EntryId& entry) {
    logbook::Signed paper;
    paper.how = SignedHow::on_paper;
    paper.by = {"B. Quill"};
    book.refer(entry).say("2026-06-30", paper);
  }
  static logbook::NextDue next_due(const std::string& name, const std::string& airframe) {
    logbook::NextDue stated;
    stated.name = {name};
    stated.thing = kit;
    stated.points.emplace_back(logbook::AtAirframe{support::hours(airframe)});
    return stated;
  }
  logbook::EntryId hundred_hour(const std::string& on) {
    return book.say(on, support::done("100-hour", kit, "1000.0"));
  }
  reckon::Item item(const std::string& beginning) const {
    return due_item(AsOf(book, "2026-06-30"), kit, beginning);
  }
  Book book;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(waiting_work, Shop)

BOOST_AUTO_TEST_CASE(work_newer_than_what_counts_waits) {
  book.say("2026-01-01", task("100-hour", kit, {hours("100.0")}));
  sign(hundred_hour("2026-02-01"));
  const auto newer = hundred_hour("2026-03-01");
  BOOST_TEST((item("task:100-hour").not_counted == std::vector{newer}));
}

BOOST_AUTO_TEST_CASE(work_older_than_what_counts_waits_for_nothing) {
  book.say("2026-01-01", task("100-hour", kit, {hours("100.0")}));
  hundred_hour("2026-02-01");
  sign(hundred_hour("2026-03-01"));
  BOOST_TEST(item("task:100-hour").not_counted.empty());
}

// A due point from a sheet may be of one side only; the others still count from what was done.
BOOST_AUTO_TEST_CASE(a_stated_due_point_waits_until_newer_work_counts_and_replaces_none) {
  book.say("2026-01-01", task("100-hour", kit, {hours("100.0")}));
  const auto done_before = hundred_hour("2026-02-01");
  const auto stated = book.say("2026-03-01", next_due("100-hour", "1500.0"));
  BOOST_TEST((item("task:100-hour").not_counted == std::vector{done_before, stated}));
  sign(stated);
  BOOST_TEST((item("task:100-hour").not_counted == std::vector{done_before}));
  sign(hundred_hour("2026-04-01"));
  BOOST_TEST(item("task:100-hour").not_counted.empty());
}

// Without the older work the newer one was done far past its due point, and its excess counts.
BOOST_AUTO_TEST_CASE(where_excess_counts_older_work_moves_the_due_point_too) {
  logbook::Task inspection = task("100-hour", kit, {hours("100.0")});
  inspection.excess_counts = true;
  book.say("2026-01-01", inspection);
  const auto older = hundred_hour("2026-02-01");
  sign(hundred_hour("2026-03-01"));
  BOOST_TEST((item("task:100-hour").not_counted == std::vector{older}));
}

BOOST_AUTO_TEST_CASE(a_limit_since_overhaul_waits_for_the_overhaul) {
  book.say("2026-01-01", limit(engine, {hours("3500.0", Basis::overhaul)}));
  const auto first = book.say("2026-02-01", support::overhauled(engine));
  BOOST_TEST((item("limit:").not_counted == std::vector{first}));
  sign(book.say("2026-03-01", support::overhauled(engine)));
  BOOST_TEST(item("limit:").not_counted.empty());
}

BOOST_AUTO_TEST_CASE(a_directive_that_counts_since_overhaul_waits_for_the_overhaul) {
  logbook::Task directive = task("D-1", engine, {hours("500.0", Basis::overhaul)});
  directive.class_ = logbook::TaskClass::directive;
  book.say("2026-01-01", directive);
  const auto overhaul = book.say("2026-02-01", support::overhauled(engine));
  BOOST_TEST((item("directive:D-1").not_counted == std::vector{overhaul}));
}

BOOST_AUTO_TEST_CASE(an_overhaul_moves_no_item_that_does_not_count_since_overhaul) {
  book.say("2026-01-01", task("100-hour", engine, {hours("100.0")}));
  book.say("2026-02-01", support::overhauled(engine));
  BOOST_TEST(item("task:100-hour").not_counted.empty());
}

BOOST_AUTO_TEST_CASE(an_overhaul_begins_no_trend_until_it_counts) {
  const auto overhaul = book.say("2026-02-01", support::overhauled(engine));
  const auto begun = [&] {
    const AsOf asked(book, "2026-06-30");
    const auto events = reckon::trend::events_of(asked.histories, asked.standing, engine);
    return std::any_of(events.begin(), events.end(),
                       [&](const auto& event) { return event.entry == overhaul; });
  };
  BOOST_TEST(!begun());
  sign(overhaul);
  BOOST_TEST(begun());
}

BOOST_AUTO_TEST_SUITE_END()
