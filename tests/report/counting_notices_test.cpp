// What the receipt tells of older work that an entry stops or starts counting. That unsigned work
// starts nothing anew is common practice, no source; who may sign: 14 CFR 43.7.
#include "report/counting_notices.h"

#include <boost/test/unit_test.hpp>

#include "support/entries.h"
#include "words/words.h"

namespace {

using logbook::SignedHow;
using support::Book;
using support::day;

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::PersonName quill{"B. Quill"};

using Notices = std::vector<std::string>;

// Work on paper counts from the first day on once it is signed.
struct Shop {
  Shop() {
    book.say("2026-01-01", logbook::PersonHolds{quill, "A-1234", "mechanic", {}});
    rule(logbook::WorkCounts::when_signed, "2026-01-01");
  }
  logbook::EntryId rule(logbook::WorkCounts when, const std::string& on) {
    return book.say(on, logbook::CountsWork{{"Marrow Point"}, when});
  }
  logbook::EntryId annual(const std::string& on) {
    return book.say(on, support::done("annual inspection", kit));
  }
  logbook::EntryId sign(const logbook::EntryId& entry, const std::string& on) {
    logbook::Signed paper;
    paper.how = SignedHow::on_paper;
    paper.by = quill;
    return book.refer(entry).say(on, paper);
  }
  // What the receipt of the newest entry tells.
  Notices told() {
    std::vector<logbook::Entry> entries = book.entries();
    report::Saved saved;
    saved.entries = {entries.back()};
    const std::vector<logbook::Entry> before(entries.begin(), entries.end() - 1);
    saved.counted_before = report::counted_work(reckon::standing(before, day("2026-12-31")));
    return report::counting_notices(reckon::standing(entries, day("2026-12-31")), saved);
  }
  Book book;
};

std::string name_of(const logbook::EntryId& id) {
  return "task \"annual inspection\" done on aircraft ZZ-KIT (" + words::entry_name(id) + ")";
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(counting_notices, Shop)

BOOST_AUTO_TEST_CASE(what_is_not_signed_yet_is_told_once) {
  const auto done = annual("2026-03-10");
  BOOST_TEST(told() ==
             Notices{"Not counted: " + name_of(done) + " is not signed. Sign it, and it counts."});
  annual("2026-03-11");
  BOOST_TEST(told().size() == 1);
}

BOOST_AUTO_TEST_CASE(a_signature_makes_older_work_count) {
  const auto done = annual("2026-03-10");
  sign(done, "2026-03-10");
  BOOST_TEST(told() == Notices{"This counts now: " + name_of(done) + "."});
}

BOOST_AUTO_TEST_CASE(a_struck_signature_makes_older_work_count_no_more) {
  const auto done = annual("2026-03-10");
  book.strike(sign(done, "2026-03-10"));
  BOOST_TEST(told() == Notices{"This does not count any more: " + name_of(done) + "."});
}

BOOST_AUTO_TEST_CASE(an_end_that_reaches_back_is_told_with_the_work_it_unsigns) {
  const auto first = annual("2026-03-10");
  sign(first, "2026-03-12");
  const auto second = annual("2026-03-11");
  sign(second, "2026-03-12");
  book.say("2026-03-11", logbook::PersonEnds{quill, std::nullopt});
  BOOST_TEST(told() == Notices{"This does not count any more: " + name_of(first) + " and " +
                               name_of(second) + "."});
}

BOOST_AUTO_TEST_CASE(a_correction_that_unsigns_work_says_why) {
  const auto done = annual("2026-03-10");
  sign(done, "2026-03-10");
  book.correct(done, "2026-03-11", support::done("annual inspection", kit, "4321.6"));
  const Notices notices = told();
  BOOST_REQUIRE(notices.size() == 1U);
  BOOST_TEST(notices.front().find("the entry was corrected since. Sign it again, and it counts.") !=
             std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_stricter_rule_tells_what_stops_and_a_milder_one_what_counts_again) {
  const auto done = annual("2026-03-10");
  sign(done, "2026-03-10");
  const auto stricter = rule(logbook::WorkCounts::when_signed_here, "2026-02-01");
  BOOST_TEST(told() == Notices{"This does not count any more: " + name_of(done) + "."});
  book.strike(stricter);
  BOOST_TEST(told() == Notices{"This counts now: " + name_of(done) + "."});
}

// Of many only the first are named.
BOOST_AUTO_TEST_CASE(of_many_only_five_are_named) {
  for (int i = 0; i < 7; ++i) annual("2026-03-10");
  rule(logbook::WorkCounts::when_recorded, "2026-01-02");
  const Notices notices = told();
  BOOST_REQUIRE(notices.size() == 1U);
  BOOST_TEST(notices.front().ends_with(" and 2 more."));
}

BOOST_AUTO_TEST_CASE(a_flight_tells_nothing_of_work) {
  annual("2026-03-10");
  book.say("2026-03-11", support::flew(kit, "1.0"));
  BOOST_TEST(told().empty());
}

BOOST_AUTO_TEST_SUITE_END()
