// What is signed, and what comes of a signature when the book is changed behind our back. Record
// page: what a signature is over; RFC 8032 for the signature itself.
#include <boost/test/unit_test.hpp>

#include "seal/signing.h"
#include "sentence/frame.h"
#include "store/desk.h"

namespace {

using desk::Folder;

seal::SecretKey secret(std::uint8_t byte) { return seal::SecretKey(seal::Seed{byte}); }
logbook::PublicKey key(std::uint8_t byte) {
  return {sentence::say_digest(secret(byte).public_key())};
}

logbook::Said holds(const std::string& name, std::vector<logbook::PublicKey> keys) {
  return desk::said(logbook::PersonHolds{{name}, "A-1234", "mechanic", std::move(keys)});
}

// The record, a person with a key, another one, three flights, a signature of the three.
struct Signed {
  Signed() {
    auto book = desk::make(folder);
    writer = sentence::short_writer(book.writer());
    desk::write(book, holds("B. Quill", {key(1)}));
    desk::write(book, holds("M. Tansley", {key(2)}));
    for (const std::int64_t minutes : {60, 66, 72}) desk::write(book, desk::flew(minutes));
    sign(book, 1);
  }
  logbook::Said signing() const {
    logbook::Signed fact;
    fact.entry = {writer, 4};
    fact.through = logbook::EntryName{writer, 6};
    fact.by = {"B. Quill"};
    fact.certificate = "A-1234";
    fact.kind = "mechanic";
    return desk::said(fact);
  }
  logbook::Entry sign(store::Book& book, std::uint8_t byte) const {
    store::Pen pen(book);
    const auto with = secret(byte);
    auto entry = std::get<logbook::Entry>(pen.append(signing(), {}, &with));
    pen.commit();
    return entry;
  }
  // What is found after the deed; the guard that is taken away for it is put back.
  std::string after(const std::string& deed) const {
    const auto path = folder.path("the.book");
    const auto guard =
        desk::ask_sql(path, "SELECT sql FROM sqlite_schema WHERE name = 'entry_is_never_changed'");
    BOOST_REQUIRE(
        desk::run_sql(path, "DROP TRIGGER entry_is_never_changed;" + deed + ";" + guard) == "");
    return desk::found_in(folder, "the.book");
  }
  Folder folder;
  std::string writer;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(signatures, Signed)

BOOST_AUTO_TEST_CASE(a_range_is_signed_with_every_digest_in_it) {
  const auto book = desk::open(folder, "the.book", store::Access::read);
  const auto entries = book.entries({});
  const auto& entry = entries.back();
  BOOST_REQUIRE(entry.frame.refers.size() == 3U);
  for (std::size_t i = 0; i < 3; ++i) BOOST_CHECK(entry.frame.refers[i] == entries[3 + i].id);
  BOOST_TEST(entry.frame.signature.size() == 86U);  // 64 bytes in base64url
  BOOST_CHECK(entry.proved_with == key(1));
  BOOST_TEST(!entries.front().proved_with);
  BOOST_TEST(after("") == "whole");
}

BOOST_AUTO_TEST_CASE(the_same_key_gives_the_same_signature) {
  const auto book = desk::open(folder, "the.book", store::Access::read);
  const auto entry = book.entries({}).back();
  const auto body = sentence::read_digest(
      desk::shell("printf '%s\\n' '" + sentence::say_about(entry.frame.about) + "' '" +
                  entry.sentence + "' | sha256sum | cut -c 1-64")
          .substr(0, 64));
  BOOST_REQUIRE(body);
  const auto text = sentence::signature_preimage(entry.frame, book.record(), *body);
  BOOST_TEST(sentence::say_signature(secret(1).sign(text)) == entry.frame.signature);
}

BOOST_AUTO_TEST_CASE(a_key_of_another_person_proves_nothing) {
  auto book = desk::open(folder);
  BOOST_TEST(!sign(book, 2).proved_with);
  BOOST_TEST(after("") == "signature 8");
}

BOOST_AUTO_TEST_CASE(a_key_that_comes_later_proves_what_waited_for_it) {
  auto book = desk::open(folder);
  BOOST_TEST(!sign(book, 3).proved_with);
  desk::write(book, holds("B. Quill", {key(3)}));
  BOOST_CHECK(book.entries({})[7].proved_with == key(3));
  BOOST_TEST(after("") == "whole");
}

BOOST_AUTO_TEST_CASE(the_proofs_are_made_anew_with_the_other_lists) {
  BOOST_TEST(after("DELETE FROM proof") == "derived");
  auto book = desk::open(folder);
  BOOST_TEST(!book.entries({}).back().proved_with);
  store::Pen pen(book);
  pen.clear_derived();
  pen.commit();
  BOOST_CHECK(book.entries({}).back().proved_with == key(1));
  BOOST_TEST(after("") == "whole");
}

BOOST_AUTO_TEST_CASE(a_book_from_before_there_were_signatures_is_read_and_signed) {
  Folder older;
  {
    auto book = desk::make(older);
    desk::write(book, desk::flew(60));
  }
  BOOST_TEST(desk::run_sql(older.path("the.book"), "DROP TABLE proof") == "");
  auto book = desk::open(older);
  const auto found = book.check();
  BOOST_REQUIRE(found.size() == 1U);
  BOOST_TEST(found.front().what == "form");
  desk::write(book, holds("B. Quill", {key(1)}));
  logbook::Signed fact;
  fact.entry = {sentence::short_writer(book.writer()), 2};
  fact.by = {"B. Quill"};
  store::Pen pen(book);
  const auto with = secret(1);
  BOOST_CHECK(std::get<logbook::Entry>(pen.append(desk::said(fact), {}, &with)).proved_with);
  pen.commit();
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_CASE(a_signature_that_was_taken_away_is_missed) {
  BOOST_TEST(after("UPDATE entry SET signature = '-' WHERE number = 7").find("signature 7") !=
             std::string::npos);
}

// A table of another form keeps the lists of worked-out figures from being compared, and nothing
// else: the list of proofs is of our form and is compared.
BOOST_AUTO_TEST_CASE(a_changed_signature_is_found_whatever_the_form_of_the_lists) {
  BOOST_TEST(after("UPDATE entry SET signature = 'A' || substr(signature, 2) WHERE number = 7; "
                   "DROP TABLE running_total") == "chain 7, derived, form, signature 7");
}

BOOST_AUTO_TEST_CASE(a_signature_on_another_kind_is_found) {
  BOOST_TEST(after("UPDATE entry SET signature = (SELECT signature FROM entry WHERE number = 7) "
                   "WHERE number = 4")
                 .find("signature 4") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_signature_used_again_is_found) {
  auto book = desk::open(folder);
  sign(book, 1);
  BOOST_TEST(after("UPDATE entry SET signature = (SELECT signature FROM entry WHERE number = 7) "
                   "WHERE number = 8")
                 .find("signature 8") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_range_with_a_hole_or_of_two_writers_is_not_written) {
  auto book = desk::open(folder);
  auto said = signing();
  std::get<logbook::Signed>(said.fact).through = logbook::EntryName{writer, 40};
  store::Pen pen(book);
  const auto with = secret(1);
  BOOST_CHECK(std::holds_alternative<std::vector<store::UnclearName>>(pen.append(said, {}, &with)));
}

// Who names another key in the list, in whatever form the other tables are, names it in vain.
BOOST_AUTO_TEST_CASE(a_book_from_elsewhere_does_not_say_by_which_key_it_was_signed) {
  const auto path = folder.path("the.book");
  auto elsewhere = folder.surroundings();
  elsewhere.state_folder = folder.path("another machine");
  const auto proved_with = [&] {
    const auto book = store::Book::open(path, store::Access::read, elsewhere);
    return book.entries({}).back().proved_with;
  };
  BOOST_TEST_REQUIRE((proved_with() == key(1)));
  BOOST_REQUIRE(desk::run_sql(path, "UPDATE proof SET key = '" + key(2).text + "'") == "");
  BOOST_TEST((proved_with() == key(1)));
  BOOST_REQUIRE(desk::run_sql(path, "DROP TABLE arrival_digest") == "");
  BOOST_TEST((proved_with() == key(1)));
  BOOST_REQUIRE(desk::run_sql(path, "DROP TABLE proof") == "");
  BOOST_TEST((proved_with() == key(1)));
  auto book = store::Book::open(path, store::Access::write, elsewhere);
  store::Pen(book).commit();
  BOOST_TEST(desk::ask_sql(path, "SELECT key FROM proof") == key(1).text);
  BOOST_TEST((book.entries({}).back().proved_with == key(1)));
}

BOOST_AUTO_TEST_SUITE_END()
