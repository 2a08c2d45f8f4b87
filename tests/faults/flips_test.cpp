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

constexpr const char* sheet =
    "2026-03-01 aircraft ZZ-KIT brings forward airframe 4321.6 h, 5608 landings.\n"
    "2026-03-01 inspection \"annual inspection\" on aircraft ZZ-KIT every 12 calendar months, "
    "source \"14 CFR 91.409\".\n"
    "2026-03-01 inspection \"oil change\" on aircraft ZZ-KIT every 50.0 h, source \"manual "
    "5-20\".\n"
    "2026-03-02 inspection \"oil change\" done on aircraft ZZ-KIT, airframe 4321.6 h, by "
    "\"B. Quill\".\n"
    "2026-03-03 aircraft ZZ-KIT flew 0.5 h, 1 start, 1 landing.\n"
    "2026-03-04 aircraft ZZ-KIT flew 1.3 h, 1 start, 2 landings.\n";

// In the short run one of so many bits is turned: of the pages that are never changed, of the rest.
// Under the sanitizers, which take twenty times as long, fewer.
#ifdef __SANITIZE_ADDRESS__
constexpr std::size_t one_of_never_changed = 100;
constexpr std::size_t one_of_the_rest = 200;
#else
constexpr std::size_t one_of_never_changed = 1;
constexpr std::size_t one_of_the_rest = 16;
#endif
// Of the bits that change nothing by the database's own account, and of those that are told, so
// many are tried through the commands as well.
constexpr int one_answer_of = 256;
constexpr std::size_t first_page_header = 100;  // sqlite.org/fileformat2.html, 1.3

// All that a book says about itself, short of what is reckoned from it.
struct Content {
  std::vector<logbook::UseRow> uses;
  std::vector<logbook::RunningTotal> totals;
  std::vector<std::string> lines;
  logbook::Horizon horizon;
  std::vector<logbook::Horizon> known;  // on the day before, on the day, on the day after
  bool operator==(const Content&) const = default;
};

struct Flips {
  Clerk clerk;
  std::string content;
  Clerk::Files sound;
  std::string rows;
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
  void try_bytes_from(std::size_t first);
  void expect_same_answers(const std::string& what, bool has_same_rows);
  void expect_told(const std::string& what);
  void execute(const std::string& sql) const;
  // What the check says after the SQL, with the guards away.
  std::string found_after(const std::string& sql) const;
};

Flips::Flips() {
  BOOST_TEST_REQUIRE(clerk.type(new_book()).code == 0);
  const Told made = clerk.type({"read", "-"}, sheet);
  BOOST_TEST_REQUIRE(made.code == 0, made.err);
  put_into_small_pages(clerk.book());
  sound = clerk.files();
  content = sound.at("the.book");
  rows = rows_of(clerk.book());
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
  for (const unsigned day : {4U, 5U, 6U}) {
    content_now.known.push_back(book.known_on(*quantity::make_day({2026, 3, day})));
  }
  return content_now;
}

bool Flips::is_told() const {
  try {
    const store::Book book = open();
    // The quick check is a part of the whole one.
    return book.is_of_newer_version() || !book.check(store::Depth::quick).empty() ||
           !book.check().empty() || clerk.type({"check"}).code != 0;
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

void Flips::expect_same_answers(const std::string& what, bool has_same_rows) {
  ++without_effect;
  if (has_same_rows && without_effect % one_answer_of != 0) return;
  BOOST_TEST((read() == right_content), what);
  BOOST_TEST((answers(clerk) == right), what);
}

// The check command says so too, in a sentence and with its own code.
void Flips::expect_told(const std::string& what) {
  ++told;
  if (told % one_answer_of != 0) return;
  const Told check = clerk.type({"check"});
  BOOST_TEST((check.code == 1 || check.code == 66 || check.code == 74),
             what << ": " << check.code << ' ' << check.out << check.err);
}

void Flips::try_bit(std::size_t byte, int bit) {
  const std::string what = "byte " + std::to_string(byte) + ", bit " + std::to_string(bit);
  turn(byte, bit);
  try {
    // The same rows and schema in a sound structure give the same answers; what the first page says
    // besides is looked at in every case.
    const bool is_same = byte >= first_page_header && rows_of(clerk.book()) == rows;
    if (!is_same && is_told()) {
      expect_told(what);
    } else {
      expect_same_answers(what, is_same);
    }
  } catch (const quantity::BrokenPromise& broken) {
    BOOST_ERROR(what + ": " + broken.promise());
  }
  turn(byte, bit);
}

// Every second byte, so that the two halves can be tried side by side.
void Flips::try_bytes_from(std::size_t first) {
  std::mt19937_64 random(seed_of("flips"));
  const std::size_t page_size = page_size_of(content);
  const auto never_changed = pages_never_changed(clerk.book());
  BOOST_TEST(never_changed.size() > 20U);
  BOOST_TEST(content.size() / page_size > never_changed.size());
  int turned = 0;
  for (std::size_t byte = first; byte < content.size(); byte += 2) {
    const bool is_never_changed = never_changed.contains(byte / page_size);
    const std::size_t one_of = is_long()          ? 1
                               : is_never_changed ? one_of_never_changed
                                                  : one_of_the_rest;
    for (int bit = 0; bit < 8; ++bit) {
      if (random() % one_of != 0) continue;
      try_bit(byte, bit);
      ++turned;
    }
  }
  std::cout << "flips: " << turned << " bits turned, " << told << " told, " << without_effect
            << " without effect" << std::endl;
  BOOST_TEST(told > turned / 8);
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

BOOST_AUTO_TEST_CASE(every_turned_bit_of_an_even_byte_is_told_or_changes_nothing) {
  try_bytes_from(0);
}

BOOST_AUTO_TEST_CASE(every_turned_bit_of_an_odd_byte_is_told_or_changes_nothing) {
  try_bytes_from(1);
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
