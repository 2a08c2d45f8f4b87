// Every way that plain SQL offers to breach the rule that a record is only added to is tried from
// the sqlite3 program: each is refused by the file, or found by check, or stated as beyond what one
// book alone can tell (and then the newest entry's printed name and a second copy tell it).
#include <array>
#include <boost/test/unit_test.hpp>
#include <cstdio>
#include <fstream>

#include "breach/breaches.h"
#include "command/the_book.h"
#include "faults/clerk.h"
#include "sentence/frame.h"
#include "store/chain.h"

namespace {

using breach::Breach;
using breach::Guards;
using breach::Outcome;

struct Shelled {
  int code = 0;
  std::string words;
};

// The SQL is given to the sqlite3 program as a person would type it.
struct Shell {
  faults::Clerk clerk;
  faults::Clerk::Files sound;
  std::string answers;
  std::string writer;

  Shell();
  Shelled sql(const std::string& script) const;
  // Drops every guard, does it, and makes the guards again as they were.
  std::string without_guards(std::string_view deed) const;
  Shelled attempt(const Breach& each) const {
    return sql(each.guards == Guards::stand ? std::string(each.sql) : without_guards(each.sql));
  }
  // K-19 becomes the name of that entry.
  std::string named(std::string_view words) const;
  std::string check() const {
    const faults::Told told = clerk.type({"check"});
    return std::to_string(told.code) + '\n' + told.out + told.err;
  }
  void hold(const Breach& each, const Shelled& done) const;
};

Shell::Shell() {
  BOOST_TEST_REQUIRE(clerk.type(faults::new_book()).code == 0);
  const auto read = clerk.type({"read", "-"}, faults::set_up_sheet() + faults::work_sheet(4));
  BOOST_TEST_REQUIRE(read.code == 0, read.err);
  writer = faults::writer_of(clerk);
  answers = faults::answers(clerk);
  sound = clerk.files();
}

Shelled Shell::sql(const std::string& script) const {
  std::ofstream(clerk.folder() + "/script.sql") << script;
  const std::string line =
      "cd '" + clerk.folder() + "' && sqlite3 -batch -bail the.book < script.sql 2>&1";
  Shelled shelled;
  std::FILE* const pipe = ::popen(line.c_str(), "r");
  for (int c = std::fgetc(pipe); c != EOF; c = std::fgetc(pipe)) {
    shelled.words += static_cast<char>(c);
  }
  shelled.code = ::pclose(pipe);
  return shelled;
}

std::string Shell::without_guards(std::string_view deed) const {
  const std::string drop =
      sql("SELECT 'DROP TRIGGER ' || name || ';' FROM sqlite_schema WHERE type = 'trigger';").words;
  const std::string make =
      sql("SELECT sql || ';' FROM sqlite_schema WHERE type = 'trigger';").words;
  return drop + std::string(deed) + '\n' + make;
}

std::string Shell::named(std::string_view words) const {
  return words.starts_with("K-") ? writer + std::string(words.substr(1)) : std::string(words);
}

void Shell::hold(const Breach& each, const Shelled& done) const {
  const std::string words = named(each.words);
  const std::string now = faults::answers(clerk);
  if (each.outcome == Outcome::refused) {
    BOOST_TEST(done.words.find(words) != std::string::npos, each.name << ": " << done.words);
    BOOST_TEST((now == answers), each.name << " was refused, and yet the answers are others");
    return;
  }
  BOOST_TEST(done.code == 0, each.name << ": " << done.words);
  if (each.outcome == Outcome::found) {
    const std::string found = check();
    BOOST_TEST(!found.starts_with("0\n"), each.name);
    BOOST_TEST(found.find(words) != std::string::npos, each.name << ": " << found);
    return;
  }
  BOOST_TEST((now == answers), each.name << ": " << now);
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(breaches, Shell)

BOOST_AUTO_TEST_CASE(every_breach_is_refused_or_found_or_harmless) {
  for (const Breach& each : breach::breaches()) {
    clerk.put_back(sound);
    hold(each, attempt(each));
  }
}

// With the guards only taken away and put back, nothing has happened; so what is found above is the
// deed itself.
BOOST_AUTO_TEST_CASE(guards_put_back_as_they_were_are_no_finding) {
  const Shelled done = sql(without_guards(""));
  BOOST_TEST(done.code == 0, done.words);
  BOOST_TEST((faults::answers(clerk) == answers));
}

// What one book alone cannot tell (RFC 6962, 7.3 and 5.4: a log that shows each side another view
// is found only by comparing heads): the newest entries cut off with all that was made of them, and
// a chain worked out anew. The newest entry's name and digest, printed or in another copy, tell it.
BOOST_AUTO_TEST_CASE(a_tail_cut_off_cleanly_is_told_by_the_head_and_not_alone) {
  const std::string before = check();
  const Shelled cut = sql(without_guards(
      "PRAGMA foreign_keys = OFF; DELETE FROM arrived WHERE number = 22; "
      "DELETE FROM arrival_digest WHERE entry = 22; "
      "DELETE FROM entry WHERE number = 22; DELETE FROM use; DELETE FROM running_total; "
      "DELETE FROM series; DELETE FROM mention WHERE entry = 22;"));
  BOOST_TEST(cut.code == 0, cut.words);
  // Only the machine that wrote it has a mark that is ahead.
  BOOST_TEST(check().find("Fault in mark, " + writer + "-22") != std::string::npos);
  const faults::Told rebuilt = clerk.type({"rebuild"});
  BOOST_TEST(rebuilt.code == 0, rebuilt.err);
  BOOST_TEST(before.find(writer + "-22 ") != std::string::npos);
  const std::string after = check();
  BOOST_TEST(after.find(writer + "-22") == std::string::npos, after);
  BOOST_TEST(after.find(writer + "-21 ") != std::string::npos, after);
  // On the machine that wrote it the mark tells too: what was written next is by a new writer.
  BOOST_TEST(rebuilt.out.find("This book is a copy or was restored") != std::string::npos,
             rebuilt.out);
}

BOOST_AUTO_TEST_CASE(a_chain_worked_out_anew_is_told_by_the_head_and_not_alone) {
  const std::string before = check();
  auto book = store::Book::open(clerk.book(), store::Access::read,
                                {quantity::Instant(), clerk.folder() + "/state", {}, {}});
  auto entries = book.entries({});
  logbook::Entry& last = entries.back();
  const auto at = last.sentence.find("1 landing");
  BOOST_TEST_REQUIRE(at != std::string::npos, last.sentence);
  last.sentence.replace(at, 9, "9 landings");
  const auto digest = store::entry_digest(
      last.frame, {book.record(), entries[entries.size() - 2].id.digest, last.sentence});
  const std::string hex = "x'" + sentence::say_digest(digest) + "'";
  const Shelled done =
      sql(without_guards("UPDATE entry SET sentence = '" + last.sentence + "', digest = " + hex +
                         " WHERE number = 22; UPDATE "
                         "arrived SET digest = " +
                         hex + " WHERE number = 22;"));
  BOOST_TEST(done.code == 0, done.words);
  BOOST_TEST(clerk.type({"rebuild"}).code == 0);
  const std::string after = check();
  BOOST_TEST(after.find("no fault") != std::string::npos, after);
  BOOST_TEST(after.find(sentence::say_digest(digest).substr(0, 16)) != std::string::npos, after);
  BOOST_TEST(before.find(sentence::say_digest(digest).substr(0, 16)) == std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()
