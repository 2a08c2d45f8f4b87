// A bit that turns over anywhere in a book's file is told, or changes nothing: no answer is ever
// another one. And an entry that is taken out, put elsewhere or slipped in is told by name.
#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <iostream>
#include <random>

#include "faults/clerk.h"
#include "faults/deeds.h"
#include "faults/pages.h"
#include "quantity/expect.h"
#include "sentence/frame.h"
#include "store/book.h"
#include "words/words.h"

namespace {

using namespace faults;

constexpr int flights = 22;
// How many of the bits are turned in the short run: of pages that are never changed, of the rest.
constexpr std::size_t one_of_never_changed = 2000;
constexpr std::size_t one_of_the_rest = 4000;
constexpr int one_answer_of = 64;

// All that a book says about itself, short of what is reckoned from it.
struct Content {
  std::vector<logbook::UseRow> uses;
  std::vector<logbook::RunningTotal> totals;
  std::vector<std::string> lines;
  logbook::Horizon horizon;
  logbook::Horizon known;
  bool operator==(const Content&) const = default;
};

struct Flips {
  Clerk clerk;
  std::string content;
  Clerk::Files sound;
  std::string right;
  Content right_content;
  std::string writer;
  int told = 0;
  int without_effect = 0;

  Flips();
  store::Book open() const {
    return store::Book::open(clerk.book(), store::Access::prove,
                             {quantity::Instant(), clerk.folder() + "/state", {}, {}});
  }
  Content read() const;
  // True if the book is refused in a sentence, or the check finds something.
  bool is_told() const;
  void turn(std::size_t byte, int bit);
  void try_bit(std::size_t byte, int bit);
  void execute(const std::string& sql) const;
  // What the check says after the SQL, with the guards away.
  std::string found_after(const std::string& sql) const;
};

Flips::Flips() {
  BOOST_TEST_REQUIRE(clerk.type(new_book()).code == 0);
  const Told made = clerk.type({"read", "-"}, set_up_sheet() + work_sheet(flights));
  BOOST_TEST_REQUIRE(made.code == 0, made.err);
  sound = clerk.files();
  content = sound.at("the.book");
  right = answers(clerk);
  right_content = read();
  writer = writer_of(clerk);
}

Content Flips::read() const {
  const store::Book book = open();
  Content content_now;
  for (const logbook::Entry& entry : book.entries({})) {
    content_now.lines.push_back(sentence::say_line(entry.frame, entry.sentence));
  }
  content_now.uses = book.uses("ZZ-KIT");
  content_now.totals = book.running_totals("ZZ-KIT");
  content_now.horizon = book.horizon();
  content_now.known = book.known_on(*quantity::make_day({2026, 3, 5}));
  return content_now;
}

bool Flips::is_told() const {
  try {
    return !open().check().empty() || read() != right_content;
  } catch (const store::Trouble& trouble) {
    return words::trouble_text(trouble.what()).ends_with(")");
  }
}

void Flips::turn(std::size_t byte, int bit) {
  content[byte] = static_cast<char>(content[byte] ^ (1 << bit));
  const int file = ::open(clerk.book().c_str(), O_WRONLY | O_CLOEXEC);
  BOOST_REQUIRE(::pwrite(file, &content[byte], 1, static_cast<off_t>(byte)) == 1);
  ::close(file);
}

void Flips::try_bit(std::size_t byte, int bit) {
  const std::string what = "byte " + std::to_string(byte) + ", bit " + std::to_string(bit);
  turn(byte, bit);
  try {
    if (is_told()) {
      ++told;
      // The check command says so too, in a sentence and with its own code.
      if (told % one_answer_of == 0) {
        const Told check = clerk.type({"check"});
        BOOST_TEST((check.code == 1 || check.code == 66 || check.code == 74),
                   what << ": " << check.code << ' ' << check.out << check.err);
      }
    } else {
      ++without_effect;
      if (without_effect % one_answer_of == 0) BOOST_TEST((answers(clerk) == right), what);
    }
  } catch (const quantity::BrokenPromise& broken) {
    BOOST_ERROR(what + ": " + broken.promise());
  }
  turn(byte, bit);
}

void Flips::execute(const std::string& sql) const {
  sqlite3* database = nullptr;
  sqlite3_open(clerk.book().c_str(), &database);
  const int result = sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr);
  const std::string wrong = result == SQLITE_OK ? "" : sqlite3_errmsg(database);
  sqlite3_close(database);
  BOOST_TEST_REQUIRE(wrong == "", sql);
}

std::string Flips::found_after(const std::string& sql) const {
  clerk.put_back(sound);
  execute(
      "DROP TRIGGER entry_is_never_changed; DROP TRIGGER entry_is_never_removed; "
      "DROP TRIGGER own_entry_follows_the_newest; DROP TRIGGER arrived_is_never_removed;" +
      sql);
  std::string found;
  for (const store::Finding& finding : open().check()) {
    if (finding.entry) found += finding.what + " " + std::to_string(finding.entry->number) + ", ";
  }
  return found;
}

std::string number(std::size_t value) { return std::to_string(value); }

}  // namespace

BOOST_FIXTURE_TEST_SUITE(flips, Flips)

BOOST_AUTO_TEST_CASE(every_turned_bit_is_told_or_changes_nothing) {
  std::mt19937_64 random(seed_of("flips"));
  const auto never_changed = pages_never_changed(clerk.book(), content);
  BOOST_TEST(never_changed.size() > 6U);
  BOOST_TEST(content.size() / page_size > never_changed.size());
  int turned = 0;
  for (std::size_t bit = 0; bit < 8 * content.size(); ++bit) {
    const bool is_never_changed = never_changed.contains(bit / 8 / page_size);
    const std::size_t one_of = is_long()          ? 1
                               : is_never_changed ? one_of_never_changed
                                                  : one_of_the_rest;
    if (random() % one_of != 0) continue;
    try_bit(bit / 8, static_cast<int>(bit % 8));
    ++turned;
  }
  std::cout << "flips: " << turned << " bits turned, " << told << " told, " << without_effect
            << " without effect" << std::endl;
  BOOST_TEST(told > turned / 8);
}

BOOST_AUTO_TEST_CASE(every_entry_taken_out_is_named) {
  const std::size_t last = right_content.lines.size();
  for (std::size_t i = 1; i <= last; ++i) {
    const std::string of = " WHERE number = " + number(i) + ";";
    const std::string found = found_after("DELETE FROM entry" + of);
    BOOST_TEST(found.find("arrived " + number(i) + ",") != std::string::npos, found);
    if (i == last) continue;
    // With its arrival too, it is the entry behind it that tells.
    const std::string quiet = found_after("DELETE FROM entry" + of + "DELETE FROM arrived" + of);
    BOOST_TEST(quiet.find("gap " + number(i + 1) + ",") != std::string::npos, quiet);
  }
}

BOOST_AUTO_TEST_CASE(every_two_entries_that_changed_places_are_named) {
  const std::size_t last = right_content.lines.size();
  for (std::size_t i = 1; i < last; ++i) {
    for (std::size_t j = i + 1; j <= (is_long() ? last : i + 1); ++j) {
      const std::string a = number(i);
      const std::string b = number(j);
      // The first entry's previous digest must be zero, so the digest goes along with its sentence.
      const std::string found = found_after(
          "PRAGMA ignore_check_constraints = ON;"
          "UPDATE entry SET number = 999 WHERE number = " +
          a +
          ";"
          "UPDATE entry SET number = " +
          a + " WHERE number = " + b +
          ";"
          "UPDATE entry SET number = " +
          b + " WHERE number = 999;");
      BOOST_TEST(found.find("chain " + a + ",") != std::string::npos, found);
      BOOST_TEST(found.find("chain " + b + ",") != std::string::npos, found);
    }
  }
}

BOOST_AUTO_TEST_CASE(every_entry_slipped_in_is_named) {
  const std::size_t last = right_content.lines.size();
  for (std::size_t i = 1; i <= last; ++i) {
    const std::string n = number(i);
    // All that follow move up, and a copy with a digest of its own takes the place.
    const std::string found = found_after(
        "PRAGMA ignore_check_constraints = ON;"
        "UPDATE entry SET number = number + 1000 WHERE number >= " +
        n +
        ";"
        "UPDATE entry SET number = number - 999 WHERE number >= 1000;"
        "INSERT INTO entry SELECT writer, " +
        n +
        ", randomblob(32), previous, written, language, "
        "about, knows, refers, signature, sentence FROM entry WHERE number = " +
        number(i + 1));
    BOOST_TEST(found.find("chain " + n + ",") != std::string::npos, found);
    BOOST_TEST(found.find("chain " + number(i + 1) + ",") != std::string::npos, found);
  }
}

BOOST_AUTO_TEST_SUITE_END()
