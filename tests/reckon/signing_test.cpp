// Which signatures count, and which work counts only once it is signed. 14 CFR 43.9(a)(4) and
// 91.417(a)(1)(iii): signature and certificate number of who approved the work; that a lost key
// ends is common practice, no source.
#include "reckon/signing.h"

#include <boost/test/unit_test.hpp>

#include "reckon/standing.h"
#include "support/entries.h"

namespace {

using logbook::SignedHow;
using reckon::SignState;
using reckon::Unsigned;
using support::Book;
using support::day;

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::PersonName quill{"B. Quill"};
const logbook::PublicKey key{std::string(64, 'a')};
const logbook::PublicKey other_key{std::string(64, 'b')};

logbook::PersonHolds holds(const std::string& certificate = "A-1234",
                           const logbook::PublicKey& with = key) {
  return {quill, certificate, "mechanic", {with}};
}

logbook::Signed signing(SignedHow how = SignedHow::with_key) {
  logbook::Signed fact;
  fact.how = how;
  fact.by = quill;
  fact.certificate = "A-1234";
  fact.kind = "mechanic";
  return fact;
}

// A book with a person and work; what is signed has its proof as the book would tell it.
struct Shop {
  Shop() { book.say("2026-01-01", holds()); }
  logbook::EntryId sign(const logbook::EntryId& entry, const std::string& on = "2026-03-10",
                        std::optional<logbook::PublicKey> proof = key) {
    const logbook::EntryId id = book.refer(entry).say(on, signing());
    if (proof) proofs.emplace(id, *proof);
    return id;
  }
  reckon::StandingFact work(const std::string& as_of = "2026-12-31") {
    entries = book.entries();
    for (logbook::Entry& one : entries) {
      if (const auto found = proofs.find(one.id); found != proofs.end()) {
        one.proved_with = found->second;
      }
    }
    standing = reckon::standing(entries, day(as_of));
    for (const reckon::StandingFact& fact : standing.facts) {
      if (reckon::is_work_that_resets(fact.said->fact)) return fact;
    }
    BOOST_FAIL("there is no work");
    return {};
  }
  Unsigned why_not() {
    const reckon::StandingFact fact = work();
    BOOST_REQUIRE(!fact.signatures.empty());
    BOOST_TEST((fact.sign_state == SignState::signed_here) ==
               (fact.signatures.front().why_not == Unsigned::nothing));
    return fact.signatures.front().why_not;
  }
  Book book;
  std::map<logbook::EntryId, logbook::PublicKey> proofs;
  std::vector<logbook::Entry> entries;
  reckon::Standing standing;
};

const logbook::Done annual = support::done("annual inspection", kit);

}  // namespace

BOOST_FIXTURE_TEST_SUITE(signatures, Shop)

BOOST_AUTO_TEST_CASE(work_is_recorded_until_it_is_signed) {
  const auto done = book.say("2026-03-10", annual);
  BOOST_CHECK(work().sign_state == SignState::recorded);
  const auto signature = sign(done, "2026-03-12");
  BOOST_CHECK(why_not() == Unsigned::nothing);
  BOOST_CHECK(work().signatures.front().entry == signature);
  BOOST_CHECK(work("2026-03-11").sign_state == SignState::recorded);
}

BOOST_AUTO_TEST_CASE(a_signature_that_no_key_proves_does_not_count) {
  sign(book.say("2026-03-10", annual), "2026-03-10", std::nullopt);
  BOOST_CHECK(why_not() == Unsigned::not_proved);
}

BOOST_AUTO_TEST_CASE(a_key_of_another_certificate_does_not_count) {
  book.say("2026-01-02", holds("B-9", other_key));
  sign(book.say("2026-03-10", annual), "2026-03-10", other_key);
  BOOST_CHECK(why_not() == Unsigned::not_on_record);
}

BOOST_AUTO_TEST_CASE(a_key_put_on_record_afterwards_does_not_count) {
  sign(book.say("2026-03-10", annual), "2026-03-10", other_key);
  book.say("2026-01-01", holds("A-1234", other_key));
  BOOST_CHECK(why_not() == Unsigned::not_on_record);
}

BOOST_AUTO_TEST_CASE(a_key_of_a_second_machine_counts) {
  book.say("2026-02-01", holds("A-1234", other_key));
  sign(book.say("2026-03-10", annual), "2026-03-10", other_key);
  BOOST_CHECK(why_not() == Unsigned::nothing);
}

BOOST_AUTO_TEST_CASE(corrected_work_is_unsigned_until_it_is_signed_again) {
  const auto done = book.say("2026-03-10", annual);
  sign(done);
  const auto corrected = book.correct(done, "2026-03-11", annual);
  BOOST_CHECK(why_not() == Unsigned::changed_since);
  sign(corrected, "2026-03-12");
  BOOST_CHECK(work().sign_state == SignState::signed_here);
}

BOOST_AUTO_TEST_CASE(a_correction_that_is_struck_brings_the_signature_back) {
  const auto done = book.say("2026-03-10", annual);
  sign(done);
  book.strike(book.correct(done, "2026-03-11", annual));
  BOOST_CHECK(work().sign_state == SignState::signed_here);
}

BOOST_AUTO_TEST_CASE(a_struck_signature_is_none) {
  const auto done = book.say("2026-03-10", annual);
  book.strike(sign(done));
  BOOST_TEST(work().signatures.empty());
}

BOOST_AUTO_TEST_CASE(what_was_signed_before_an_end_stays_signed) {
  sign(book.say("2026-03-10", annual));
  book.say("2026-05-01", logbook::KeyEnds{quill, key, "laptop lost"});
  book.say("2026-06-01", logbook::PersonEnds{quill, std::nullopt});
  BOOST_CHECK(why_not() == Unsigned::nothing);
}

BOOST_AUTO_TEST_CASE(an_ended_key_signs_nothing_whatever_day_is_written) {
  const auto done = book.say("2026-03-10", annual);
  book.say("2026-05-01", logbook::KeyEnds{quill, key, std::nullopt});
  sign(done, "2026-03-10");  // known to have ended
  BOOST_CHECK(why_not() == Unsigned::key_ended);
  BOOST_CHECK(work("2026-03-31").sign_state == SignState::recorded);
}

BOOST_AUTO_TEST_CASE(an_end_said_later_reaches_back_to_its_day) {
  sign(book.say("2026-03-10", annual), "2026-03-12");
  book.say("2026-03-11", logbook::KeyEnds{quill, key, "stolen that day"});
  BOOST_CHECK(why_not() == Unsigned::key_ended);
}

// On the day of the end itself only what the end's writer had seen is older.
BOOST_AUTO_TEST_CASE(on_the_day_of_the_end_knowledge_decides) {
  const auto done = book.say("2026-03-10", annual);
  sign(done, "2026-03-10");
  book.say("2026-03-10", logbook::KeyEnds{quill, key, std::nullopt});
  BOOST_CHECK(why_not() == Unsigned::nothing);
}

BOOST_AUTO_TEST_CASE(a_base_that_had_not_heard_of_the_end_is_judged_by_days) {
  const auto done = book.say("2026-03-10", annual);
  book.say("2026-03-20", logbook::KeyEnds{quill, key, std::nullopt});
  book.write_as('M');
  book.hear();
  sign(done, "2026-03-10");
  BOOST_CHECK(why_not() == Unsigned::key_ended);  // it had heard
}

// Two bases each say an end: the earlier day is that of an end which the signing base did not know.
BOOST_AUTO_TEST_CASE(each_of_several_ends_stands_against_what_was_signed) {
  const auto done = book.say("2026-03-10", annual);
  book.write_as('M');
  book.hear();
  book.say("2026-05-20", logbook::KeyEnds{quill, key, "lost"});
  sign(done, "2026-03-10");
  BOOST_CHECK(why_not() == Unsigned::key_ended);
  book.write_as('K');
  book.say("2026-05-10", logbook::KeyEnds{quill, key, "lost"});
  BOOST_CHECK(why_not() == Unsigned::key_ended);
}

BOOST_AUTO_TEST_CASE(each_of_several_ends_of_a_person_stands_against_paper_too) {
  const auto done = book.say("2026-03-10", annual);
  book.write_as('M');
  book.hear();
  book.say("2026-05-20", logbook::PersonEnds{quill, std::nullopt});
  book.refer(done).say("2026-03-10", signing(SignedHow::on_paper));
  book.write_as('K');
  book.say("2026-05-10", logbook::PersonEnds{quill, std::nullopt});
  BOOST_CHECK(work().signatures.front().why_not == Unsigned::person_ended);
}

BOOST_AUTO_TEST_CASE(an_ended_person_signs_nothing_until_put_on_record_again) {
  const auto done = book.say("2026-03-10", annual);
  book.say("2026-03-01", logbook::PersonEnds{quill, std::nullopt});
  sign(done);
  BOOST_CHECK(why_not() == Unsigned::person_ended);
  book.say("2026-03-11", holds());
  sign(done, "2026-03-12");
  BOOST_CHECK(work().sign_state == SignState::signed_here);
}

BOOST_AUTO_TEST_CASE(paper_is_signed_by_anyone_but_not_after_the_end) {
  const auto done = book.say("2026-03-10", annual);
  logbook::Signed paper = signing(SignedHow::on_paper);
  paper.by = {"Shop of Somewhere"};
  paper.page = "12";
  book.refer(done).say("2026-03-10", paper);
  BOOST_CHECK(work().sign_state == SignState::signed_on_paper);
}

BOOST_AUTO_TEST_CASE(nobody_signs_where_nothing_says_so) {
  Book plain;
  plain.say("2026-03-10", annual);
  plain.say("2026-01-01", logbook::PersonHolds{quill, "A-1234", std::nullopt, {}});
  const auto facts = reckon::standing(plain.entries(), day("2026-12-31"));
  BOOST_TEST(!facts.has_signing);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_FIXTURE_TEST_SUITE(work_that_must_be_signed, Shop)

BOOST_AUTO_TEST_CASE(it_counts_from_when_it_is_signed_as_the_record_asks) {
  struct Row {
    logbook::WorkCounts rule;
    bool recorded, paper, here;
  };
  for (const Row& row : {Row{logbook::WorkCounts::when_recorded, true, true, true},
                         Row{logbook::WorkCounts::when_signed, false, true, true},
                         Row{logbook::WorkCounts::when_signed_here, false, false, true}}) {
    Shop shop;
    shop.book.say("2026-01-01", logbook::CountsWork{{"Marrow Point"}, row.rule});
    const auto done = shop.book.say("2026-03-10", annual);
    BOOST_TEST(shop.work().is_counted == row.recorded);
    shop.book.refer(done).say("2026-03-10", signing(SignedHow::on_paper));
    BOOST_TEST(shop.work().is_counted == row.paper);
    shop.sign(done);
    BOOST_TEST(shop.work().is_counted == row.here);
  }
}

BOOST_AUTO_TEST_CASE(the_rule_holds_from_its_day_and_the_stricter_of_one_day) {
  book.say("2026-03-01", logbook::CountsWork{{"Marrow Point"}, logbook::WorkCounts::when_signed});
  book.say("2026-03-01", logbook::CountsWork{{"Marrow Point"}, logbook::WorkCounts::when_recorded});
  const auto done = book.say("2026-02-28", annual);
  BOOST_TEST(work().is_counted);
  book.correct(done, "2026-03-01", annual);
  BOOST_TEST(!work().is_counted);
}

BOOST_AUTO_TEST_SUITE_END()
