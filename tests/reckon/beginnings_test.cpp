// What a thing had when it came on record, and what is said of that later: a life that was used is
// never given back (derived from design 4 and 5: a stated figure is a statement, the larger
// counts).
#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"
#include "told.h"

using checking::CheckKind;
using checking::Record;
using logbook::Basis;
using logbook::CounterKind;
using support::fitted;
using support::flew;
using support::forward;
using support::had;
using support::had_hours;
using support::landings;
using support::removed;
using support::starts;
using told::Told;

BOOST_AUTO_TEST_SUITE(beginnings)

namespace {

const logbook::Part part = support::part("ZZ-9", "X-1");

// ZZ-KIT with the part, fitted with 900.0 h on 2 March, and 9.0 h flown on 3 March.
struct Aboard : Record {
  Aboard() {
    begin("4300.0", "");
    fitting = say("2025-03-02", fitted(part, {kit, "a", ""}, {had_hours("900.0")}));
    say("2025-03-03", flew(kit, "9.0", {landings(3)}));
  }
  std::string hours_after(const std::string& day, const logbook::Fact& fact) const {
    support::Book book = *this;
    book.say(day, fact);
    return Told(book, "2025-03-10").hours(part);
  }
  logbook::EntryId fitting;
};

}  // namespace

BOOST_AUTO_TEST_CASE(less_brought_forward_after_a_fitting_gives_no_life_back) {
  const Aboard record;
  const auto slip = forward(part, {had_hours("50.0")});
  // On the day of the fitting, before it, and long after it.
  for (const std::string day : {"2025-03-02", "2025-02-20", "2025-03-05"}) {
    BOOST_TEST_CONTEXT(day) {
      BOOST_TEST(record.hours_after(day, slip) == "909.0");
      CHECK_KINDS(record.kinds(day, slip), CheckKind::had_differs);
    }
  }
  const auto asked = record.only("2025-03-05", slip);
  BOOST_CHECK(asked.severity == checking::Severity::doubtful);
  BOOST_CHECK(asked.stated == checking::hours("50.0"));
  BOOST_CHECK(asked.reckoned == checking::hours("909.0"));
  BOOST_CHECK(asked.slot == "had");
  BOOST_CHECK(asked.names == std::vector<std::string>{"part ZZ-9 X-1"});
}

BOOST_AUTO_TEST_CASE(more_brought_forward_later_counts_and_is_asked_about) {
  const Aboard record;
  const auto more = forward(part, {had_hours("962.3")});
  BOOST_TEST(record.hours_after("2025-03-05", more) == "962.3");
  CHECK_KINDS(record.kinds("2025-03-05", more), CheckKind::had_differs);
  BOOST_TEST(record.hours_after("2025-03-03", more) == "971.3");
  CHECK_KINDS(record.kinds("2025-03-03", more), CheckKind::had_differs);
}

BOOST_AUTO_TEST_CASE(what_the_record_has_already_may_be_brought_forward) {
  const Aboard record;
  const auto same = forward(part, {had_hours("909.0")});
  CHECK_KINDS(record.kinds("2025-03-05", same));
  BOOST_TEST(record.hours_after("2025-03-05", same) == "909.0");
  const auto before = forward(part, {had_hours("900.0")});
  CHECK_KINDS(record.kinds("2025-02-20", before));
  BOOST_TEST(record.hours_after("2025-02-20", before) == "909.0");
}

BOOST_AUTO_TEST_CASE(of_two_brought_forward_the_larger_counts) {
  for (const auto& [first, second] : {std::pair{"900.0", "50.0"}, std::pair{"50.0", "900.0"}}) {
    Record record;
    record.say("2025-03-01", forward(part, {had_hours(first)}));
    CHECK_KINDS(record.kinds("2025-03-01", forward(part, {had_hours(second)})),
                CheckKind::had_differs);
    const auto again = record.say("2025-03-01", forward(part, {had_hours(second)}));
    const Told told(record, "2025-03-10");
    BOOST_TEST(told.hours(part) == "900.0");
    BOOST_TEST(told.statement(again) == std::string(second) + " against " + first);
  }
}

BOOST_AUTO_TEST_CASE(an_airframe_brought_forward_again_gives_no_life_back) {
  Record record;
  record.begin("4300.0", "");
  CHECK_KINDS(record.kinds("2024-03-01", forward(record.kit, "100.0")),
              CheckKind::stated_total_differs);
  CHECK_KINDS(record.kinds("2025-03-05", forward(record.kit, "4300.0")));
  record.say("2024-03-01", forward(record.kit, "100.0"));
  record.say("2025-03-05", flew(record.kit, "2.0"));
  auto work = support::done("inspection", record.kit, "4302.0");
  const auto entry = record.say("2025-03-06", work);
  const Told told(record, "2025-03-10");
  BOOST_TEST(told.hours(record.kit) == "4302.0");
  BOOST_TEST(told.statement(entry) == "4302.0");
}

BOOST_AUTO_TEST_CASE(what_a_new_part_is_later_said_to_have_is_not_hidden_by_its_nothing) {
  Record record;
  record.begin("4300.0", "");
  record.say("2025-03-02", fitted(part, {record.kit, "hook", ""}, {had_hours("0.0")}));
  const auto lifts = support::count(CounterKind::lifts, "500");
  record.say("2025-03-05", forward(part, {had(lifts)}));
  BOOST_TEST(Told(record, "2025-03-10").count(part, CounterKind::lifts) == "500");
}

BOOST_AUTO_TEST_CASE(what_was_only_at_least_is_made_good_by_what_is_brought_forward) {
  Record record;
  record.begin("4300.0", "");
  auto some = had(starts(20));
  some.grade = logbook::Grade::at_least;
  record.say("2025-03-02", forward(part, {some}));
  CHECK_KINDS(record.kinds("2025-03-05", forward(part, {had(starts(25))})));
  CHECK_KINDS(record.kinds("2025-03-05", forward(part, {had(starts(15))})), CheckKind::had_differs);
  record.say("2025-03-05", forward(part, {had(starts(25))}));
  BOOST_TEST(Told(record, "2025-03-10").count(part, CounterKind::starts) == "25");
  record.say("2025-03-06", forward(part, {had(starts(15))}));
  BOOST_TEST(Told(record, "2025-03-10").count(part, CounterKind::starts) == "25");
}

BOOST_AUTO_TEST_CASE(what_is_said_to_be_unknown_later_leaves_at_least_what_it_had) {
  Aboard record;
  logbook::BringsForward unknown = forward(part, {});
  unknown.unknown = {logbook::Unknown{}};
  record.say("2025-03-05", unknown);
  BOOST_TEST(Told(record, "2025-03-10").hours(part) == "at least 909.0");
}

BOOST_AUTO_TEST_CASE(a_second_fitting_in_the_same_place_gives_no_life_back) {
  Aboard record;
  // Only another base can have written it: it did not know of the fitting of 2 March.
  record.write_as('M');
  record.say("2025-03-01", fitted(part, {record.kit, "a", ""}, {had_hours("50.0")}));
  BOOST_TEST(Told(record, "2025-03-10").hours(part) == "909.0");
}

BOOST_AUTO_TEST_CASE(less_since_overhaul_brought_forward_later_gives_no_life_back) {
  Record record;
  record.begin("4300.0", "");
  const auto since = had_hours("600.0", Basis::overhaul);
  record.say("2025-03-01", forward(part, {had_hours("900.0"), since}));
  record.say("2025-03-02", fitted(part, {record.kit, "a", ""}));
  record.say("2025-03-03", flew(record.kit, "9.0"));
  const auto slip = forward(part, {had_hours("10.0", Basis::overhaul)});
  CHECK_KINDS(record.kinds("2025-03-05", slip), CheckKind::had_differs);
  record.say("2025-03-05", slip);
  BOOST_TEST(Told(record, "2025-03-10").overhaul(part) == "609.0");
}

BOOST_AUTO_TEST_CASE(since_an_overhaul_before_the_record_nothing_is_known) {
  Record record;
  record.say("2020-02-14", support::overhauled(part, {had_hours("900.0")}));
  const auto first = forward(part, {had_hours("1500.0"), had_hours("600.0", Basis::overhaul)});
  CHECK_KINDS(record.kinds("2025-03-01", first));
  record.say("2025-03-01", first);
  BOOST_CHECK(reckon::check_record(record.entries(), record.today).empty());
  BOOST_TEST(Told(record, "2025-03-10").overhaul(part) == "600.0");
}

BOOST_AUTO_TEST_CASE(the_whole_record_is_told_of_what_was_brought_forward_again) {
  Aboard record;
  const auto slip = record.say("2025-03-05", forward(part, {had_hours("50.0")}));
  const auto found = reckon::check_record(record.entries(), record.today);
  BOOST_REQUIRE_EQUAL(found.size(), 1U);
  BOOST_CHECK(found[0].entry == slip);
  BOOST_CHECK(found[0].objection.kind == CheckKind::had_differs);
}

BOOST_AUTO_TEST_CASE(it_is_told_at_what_was_written_later) {
  Aboard record;
  const auto slip = record.say("2025-02-20", forward(part, {had_hours("50.0")}));
  const auto found = reckon::check_record(record.entries(), record.today);
  BOOST_REQUIRE_EQUAL(found.size(), 1U);
  BOOST_CHECK(found[0].entry == slip);
  BOOST_CHECK(found[0].objection.reckoned == checking::hours("900.0"));
}

BOOST_AUTO_TEST_CASE(a_first_fitting_that_states_more_than_was_brought_forward_counts) {
  Record record;
  record.begin("4300.0", "");
  record.say("2025-03-01", forward(part, {had_hours("900.0")}));
  const auto fitting = fitted(part, {record.kit, "a", ""}, {had_hours("962.3")});
  CHECK_KINDS(record.kinds("2025-03-02", fitting), CheckKind::had_differs);
  const auto entry = record.say("2025-03-02", fitting);
  BOOST_TEST(Told(record, "2025-03-10").hours(part) == "962.3");
  const auto found = reckon::check_record(record.entries(), record.today);
  BOOST_REQUIRE_EQUAL(found.size(), 1U);
  BOOST_CHECK(found[0].entry == entry);
}

BOOST_AUTO_TEST_SUITE_END()
