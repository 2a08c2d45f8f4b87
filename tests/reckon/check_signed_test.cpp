// What is asked of a signature before it is taken, and of the people and keys it hangs on. Derived
// from practice 2 and record-language (signed): what is signed stands, is the newest of its chain
// and is older than the signature; who signs is on record and has not ended. 14 CFR 43.9(a)(4):
// signature and certificate number of who approved the work.
#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;
using logbook::SignedHow;

namespace {

const logbook::PersonName quill{"B. Quill"};
const logbook::PublicKey key{std::string(64, 'a')};
const logbook::PublicKey other_key{std::string(64, 'b')};

logbook::PersonHolds holds(const logbook::PersonName& name, const std::string& certificate,
                           std::vector<logbook::PublicKey> keys = {}) {
  return {name, certificate, "mechanic", std::move(keys)};
}

logbook::Signed on_paper(const logbook::EntryId& entry) {
  logbook::Signed fact;
  fact.entry = name_of(entry);
  fact.how = SignedHow::on_paper;
  fact.page = "12";
  fact.by = quill;
  return fact;
}

// ZZ-KIT with work of 3 March, and B. Quill with a certificate and a key.
struct Shop : Record {
  Shop() {
    begin("4300.0", "");
    person = say("2025-03-01", holds(quill, "A-1234", {key}));
    work = say("2025-03-03", support::done("annual inspection", kit));
  }
  logbook::EntryId person;
  logbook::EntryId work;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(check_signed, Shop)

BOOST_AUTO_TEST_CASE(work_on_record_is_signed_on_paper_from_its_day_on) {
  CHECK_KINDS(kinds("2025-03-03", on_paper(work)));
  const auto early = only("2025-03-02", on_paper(work));
  BOOST_CHECK(early.kind == CheckKind::looked_before);
  BOOST_CHECK(early.severity == Severity::impossible);
  BOOST_CHECK(early.entries == std::vector{work});
  BOOST_CHECK(early.day == support::day("2025-03-03"));
}

BOOST_AUTO_TEST_CASE(a_signature_that_was_typed_has_no_key) {
  auto typed = on_paper(work);
  typed.how = SignedHow::with_key;
  CHECK_KINDS(kinds("2025-03-04", typed), CheckKind::signature_needs_key);
  // Nobody of this name: with a key that is one more reason, on paper it is none.
  typed.by = {"M. Tansley"};
  CHECK_KINDS(kinds("2025-03-04", typed), CheckKind::signature_needs_key,
              CheckKind::signer_unknown);
  typed.how = SignedHow::on_paper;
  CHECK_KINDS(kinds("2025-03-04", typed));
}

BOOST_AUTO_TEST_CASE(a_certificate_that_is_stated_is_one_on_record) {
  auto paper = on_paper(work);
  paper.certificate = "A-1234";
  CHECK_KINDS(kinds("2025-03-04", paper));
  paper.certificate = "B-9";
  CHECK_KINDS(kinds("2025-03-04", paper), CheckKind::signer_unknown);
  BOOST_CHECK(only("2025-03-04", paper).names == std::vector<std::string>{"B. Quill"});
  say("2025-03-02", holds(quill, "B-9"));
  CHECK_KINDS(kinds("2025-03-04", paper));
}

BOOST_AUTO_TEST_CASE(nobody_signs_after_the_end) {
  const auto end = say("2025-03-04", logbook::PersonEnds{quill, "moved away"});
  const auto asked = only("2025-03-05", on_paper(work));
  BOOST_CHECK(asked.kind == CheckKind::signer_ended);
  BOOST_CHECK(asked.entries == std::vector{end});
  BOOST_CHECK(asked.day == support::day("2025-03-04"));
}

BOOST_AUTO_TEST_CASE(what_is_signed_stands_and_is_no_signature) {
  const auto signature = say("2025-03-04", on_paper(work));
  CHECK_KINDS(kinds("2025-03-04", on_paper(signature)), CheckKind::nothing_to_sign);
  auto unknown = on_paper(work);
  unknown.entry = {"ZZZZZ", 77};
  const auto nothing = only("2025-03-04", unknown);
  BOOST_CHECK(nothing.kind == CheckKind::entry_unknown);
  BOOST_CHECK(nothing.names == std::vector<std::string>{"ZZZZZ-77"});
  const auto strike_of_it = strike(work);
  CHECK_KINDS(kinds("2025-03-04", on_paper(work)), CheckKind::struck_to_sign);
  CHECK_KINDS(kinds("2025-03-04", on_paper(strike_of_it)), CheckKind::nothing_to_sign);
}

BOOST_AUTO_TEST_CASE(what_is_signed_is_the_newest_of_its_chain) {
  const auto corrected_work =
      correct(work, "2025-03-03", support::done("annual inspection", kit, "4300.0"));
  CHECK_KINDS(kinds("2025-03-04", on_paper(corrected_work)));
  const auto asked = only("2025-03-04", on_paper(work));
  BOOST_CHECK(asked.kind == CheckKind::signed_older_entry);
  BOOST_CHECK((asked.entries == std::vector{work, corrected_work}));
}

BOOST_AUTO_TEST_CASE(each_entry_of_a_range_is_looked_at) {
  const auto next = say("2025-03-05", support::done("100-hour inspection", kit));
  auto range = on_paper(person);
  range.through = name_of(next);
  range.also = {name_of(work)};
  // The person and the work may be signed on that day, the work of 5 March may not.
  CHECK_KINDS(kinds("2025-03-04", range), CheckKind::looked_before);
  CHECK_KINDS(kinds("2025-03-05", range));
  range.through = name_of(person);
  const auto asked = only("2025-03-05", range);
  BOOST_CHECK(asked.kind == CheckKind::no_range);
  BOOST_CHECK(asked.names == std::vector{name_of(person).writer + "-2"});
}

BOOST_AUTO_TEST_CASE(a_key_belongs_to_one_person_and_ends_for_good) {
  CHECK_KINDS(kinds("2025-03-05", holds({"M. Tansley"}, "C-1", {other_key})));
  const auto taken = only("2025-03-05", holds({"M. Tansley"}, "C-1", {key}));
  BOOST_CHECK(taken.kind == CheckKind::key_of_another);
  BOOST_CHECK(taken.names == std::vector<std::string>{"B. Quill"});
  BOOST_CHECK(taken.entries == std::vector{person});
  // The same person may take up another certificate with the same key.
  CHECK_KINDS(kinds("2025-03-05", holds(quill, "B-9", {key})));
  const auto end = say("2025-03-04", logbook::KeyEnds{quill, key, "laptop lost"});
  const auto ended = only("2025-03-05", holds(quill, "A-1234", {key}));
  BOOST_CHECK(ended.kind == CheckKind::key_has_ended);
  BOOST_CHECK(ended.entries == std::vector{end});
}

BOOST_AUTO_TEST_CASE(only_what_is_on_record_ends) {
  say("2025-03-02", holds({"B. Quail"}, "Q-7"));
  CHECK_KINDS(kinds("2025-03-05", logbook::KeyEnds{quill, key, std::nullopt}));
  CHECK_KINDS(kinds("2025-03-05", logbook::KeyEnds{quill, other_key, std::nullopt}),
              CheckKind::no_such_key);
  CHECK_KINDS(kinds("2025-03-05", logbook::KeyEnds{{"B. Quail"}, key, std::nullopt}),
              CheckKind::no_such_key);
  CHECK_KINDS(kinds("2025-03-05", logbook::PersonEnds{{"B. Quail"}, std::nullopt}));
  const auto nobody = only("2025-03-05", logbook::PersonEnds{{"B. Quil"}, std::nullopt});
  BOOST_CHECK(nobody.kind == CheckKind::no_such_thing);
  BOOST_CHECK((nobody.names == std::vector<std::string>{"B. Quil", "B. Quail", "B. Quill"}));
}

BOOST_AUTO_TEST_CASE(a_rule_on_work_names_the_record_of_this_book) {
  const logbook::CountsWork rule{{"Marrow Point"}, logbook::WorkCounts::when_signed};
  CHECK_KINDS(kinds("2025-03-05", rule));  // a record without a first sentence contradicts nothing
  logbook::RecordBegins begins;
  begins.name = {"Marrow Point"};
  say("2025-03-01", begins);
  CHECK_KINDS(kinds("2025-03-05", rule));
  const auto other = only("2025-03-05", logbook::CountsWork{{"Marrow Bay"}, rule.when});
  BOOST_CHECK(other.kind == CheckKind::no_such_thing);
  BOOST_CHECK((other.names == std::vector<std::string>{"Marrow Bay", "Marrow Point"}));
}

BOOST_AUTO_TEST_CASE(who_may_sign_is_never_reworded) {
  const auto without_key = say("2025-03-02", holds({"M. Tansley"}, "C-1"));
  const auto key_end = say("2025-03-04", logbook::KeyEnds{quill, key, std::nullopt});
  const auto person_end = say("2025-03-04", logbook::PersonEnds{{"M. Tansley"}, std::nullopt});
  const auto signature = say("2025-03-03", on_paper(work));
  const auto reworded = [&](const logbook::EntryId& entry, const logbook::Fact& fact) {
    return kinds(corrected(entry, checking::said("2025-03-04", fact)));
  };
  CHECK_KINDS(reworded(person, holds(quill, "A-1235", {key})), CheckKind::signing_corrected);
  CHECK_KINDS(reworded(key_end, logbook::KeyEnds{quill, key, "lost"}),
              CheckKind::signing_corrected);
  CHECK_KINDS(reworded(person_end, logbook::PersonEnds{{"M. Tansley"}, "moved"}),
              CheckKind::signing_corrected);
  auto other_page = on_paper(work);
  other_page.page = "13";
  CHECK_KINDS(reworded(signature, other_page), CheckKind::signing_corrected);
  // A certificate without a key may be mended, but not by giving it a key.
  CHECK_KINDS(reworded(without_key, holds({"M. Tansley"}, "C-2")));
  CHECK_KINDS(reworded(without_key, holds({"M. Tansley"}, "C-1", {other_key})),
              CheckKind::signing_corrected);
}

BOOST_AUTO_TEST_SUITE_END()
