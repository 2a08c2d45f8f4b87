// G2.10: whatever character of what was signed, of who signed or of the signature is changed by
// someone who can work out every digest anew but has not the key, the entry does not count as
// signed, or the check says so.
#include <sqlite3.h>

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <filesystem>

#include "reckon/standing.h"
#include "sentence/frame.h"
#include "sentence/sentence.h"
#include "store/book.h"
#include "store/chain.h"

namespace {

using logbook::Entry;

const std::string alphabet = "0123456789abcdefABCDEF-\".,: zZ";

class Forge {
 public:
  Forge() {
    std::string name = (std::filesystem::temp_directory_path() / "timeworn-XXXXXX").string();
    folder_ = ::mkdtemp(name.data());
    store::Book book = store::Book::create(
        path(),
        *sentence::read("2026-01-01 record \"Marrow Point\" begins, language 1, for tests, "
                        "clock 2026-04-01T08:00:00Z, seed 7.",
                        {})
             .said,
        {quantity::Instant::of(0), folder_ + "/state", {}, {}});
    const seal::SecretKey key = book.new_key("B. Quill", 1);
    const std::string writer = sentence::short_writer(book.writer());
    const std::string keys = sentence::say_digest(key.public_key());
    store::Pen pen(book);
    write(pen, "2026-01-02 person \"B. Quill\" holds certificate \"A-1234\", key " + keys + ".");
    write(pen,
          "2026-03-10 inspection \"annual\" done on aircraft ZZ-KIT, airframe 4323.3 h, "
          "by \"B. Quill\".");
    write(pen,
          "2026-03-10 entry " + writer +
              "-3 signed, by \"B. Quill\", certificate \"A-1234\", statement \"as asked\".",
          &key);
    pen.commit();
    entries_ = book.entries({});
    record_ = book.record();
    guards_ = guards();
  }
  ~Forge() { std::filesystem::remove_all(folder_); }
  Forge(const Forge&) = delete;
  Forge& operator=(const Forge&) = delete;

  const std::vector<Entry>& entries() const { return entries_; }

  // Puts these in place of the record's lines, with all digests right, and the lists and guards
  // anew; what the signature refers to is made to fit if wished.
  void put(std::vector<Entry> forged, bool follows) const {
    logbook::Digest previous{};
    std::string sql =
        "PRAGMA synchronous = OFF; BEGIN; DROP TRIGGER IF EXISTS entry_is_never_removed; "
        "DROP TRIGGER IF EXISTS arrived_is_never_removed; "
        "DROP TRIGGER IF EXISTS own_entry_follows_the_newest; DELETE FROM proof; "
        "DELETE FROM mention; DELETE FROM arrival_digest; DELETE FROM arrived; "
        "DELETE FROM entry;";
    for (Entry& entry : forged) {
      const auto read = sentence::read(entry.sentence, {});
      if (read.said) entry.frame.about = sentence::about(*read.said);
      if (follows && entry.id.number == 4) entry.frame.refers = {forged[2].id};
      const auto digest = store::entry_digest(entry.frame, {record_, previous, entry.sentence});
      entry.id.digest = digest;
      sql += insert(entry, previous);
      previous = digest;
    }
    run(sql + guards_ + "COMMIT;");
  }
  // Signed here, and nothing found; a book that is refused as a whole is not taken either.
  bool is_taken() const {
    try {
      return is_signed_and_sound();
    } catch (const store::Trouble&) {
      return false;
    }
  }

 private:
  bool is_signed_and_sound() const {
    auto book = store::Book::open(path(), store::Access::write, surroundings());
    {
      store::Pen pen(book);
      pen.clear_derived();
      pen.commit();
    }
    bool is_signed = false;
    const auto standing = reckon::standing(book.entries({}), *quantity::make_day({2026, 12, 31}));
    for (const auto& fact : standing.facts) {
      is_signed = is_signed || fact.sign_state == reckon::SignState::signed_here;
    }
    return is_signed && book.check().empty();
  }
  static void write(store::Pen& pen, const std::string& text,
                    const seal::SecretKey* key = nullptr) {
    const auto read = sentence::read(text, {});
    BOOST_TEST_REQUIRE(read.said.has_value(), text);
    BOOST_REQUIRE(std::holds_alternative<Entry>(pen.append(*read.said, {}, key)));
  }
  std::string path() const { return folder_ + "/the.book"; }
  store::Surroundings surroundings() const {
    return {quantity::Instant::of(0), folder_ + "/state", {}, {}};
  }
  static std::string quoted(const std::string& text) {
    std::string result = "'";
    for (const char c : text) result += c == '\'' ? std::string("''") : std::string(1, c);
    return result + "'";
  }
  static std::string insert(const Entry& entry, const logbook::Digest& previous) {
    const std::string writer = sentence::say_writer(entry.id.writer);
    const std::string number = std::to_string(entry.id.number);
    const std::string digest = "x'" + sentence::say_digest(entry.id.digest) + "'";
    const auto& frame = entry.frame;
    return "INSERT INTO entry VALUES ('" + writer + "', " + number + ", " + digest + ", x'" +
           sentence::say_digest(previous) + "', " + std::to_string(frame.written.count()) +
           ", 1, " + quoted(sentence::say_about(frame.about)) + ", '" +
           sentence::say_knows(frame.knows) + "', '" + sentence::say_refers(frame.refers) + "', '" +
           (frame.signature.empty() ? "-" : frame.signature) + "', " + quoted(entry.sentence) +
           ");" + "INSERT INTO arrived VALUES (" + number + ", " + number + ", 0, 0, '" + writer +
           "', " + number + ", " + digest + ");";
  }
  void run(const std::string& sql) const {
    sqlite3* handle = nullptr;
    sqlite3_open(path().c_str(), &handle);
    char* wrong = nullptr;
    const int code = sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, &wrong);
    BOOST_TEST_REQUIRE(code == SQLITE_OK, (wrong == nullptr ? "" : wrong));
    sqlite3_close(handle);
  }

  // What makes the guards again that were dropped.
  std::string guards() const {
    sqlite3* handle = nullptr;
    sqlite3_open(path().c_str(), &handle);
    sqlite3_stmt* statement = nullptr;
    sqlite3_prepare_v2(handle,
                       "SELECT group_concat(sql, ';') || ';' FROM sqlite_schema WHERE name IN "
                       "('entry_is_never_removed', 'arrived_is_never_removed', "
                       "'own_entry_follows_the_newest')",
                       -1, &statement, nullptr);
    BOOST_REQUIRE(sqlite3_step(statement) == SQLITE_ROW);
    const std::string made = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
    sqlite3_finalize(statement);
    sqlite3_close(handle);
    return made;
  }

  std::string folder_;
  std::string guards_;
  std::vector<Entry> entries_;
  logbook::RecordId record_{};
};

// The text with one character changed to each of two others, the character's place moving on.
std::vector<std::string> changed(const std::string& text) {
  std::vector<std::string> all;
  for (std::size_t i = 0; i < text.size(); ++i) {
    std::string one = text;
    one[i] = alphabet[(i * 7 + 1) % alphabet.size()];
    if (one == text) one[i] = '5';
    all.push_back(one);
  }
  return all;
}

}  // namespace

BOOST_FIXTURE_TEST_SUITE(forged_signatures, Forge)

BOOST_AUTO_TEST_CASE(untouched_it_is_taken) {
  put(entries(), true);
  BOOST_TEST(is_taken());
}

// The sentence about the person, the work, and what says that it was signed.
BOOST_AUTO_TEST_CASE(no_changed_character_of_a_sentence_is_taken) {
  for (const std::size_t at : {1U, 2U, 3U}) {
    const auto sentences = changed(entries()[at].sentence);
    // The day on which a person was put on record is no part of what was signed.
    for (std::size_t i = at == 1 ? std::size_t{11} : 0; i < sentences.size(); ++i) {
      std::vector<Entry> forged = entries();
      forged[at].sentence = sentences[i];
      put(forged, i % 2 == 0);
      BOOST_TEST(!is_taken(), sentences[i]);
    }
  }
}

BOOST_AUTO_TEST_CASE(no_changed_character_of_the_signature_or_the_digest_is_taken) {
  for (const std::string& signature : changed(entries()[3].frame.signature)) {
    if (!sentence::read_signature(signature)) continue;
    std::vector<Entry> forged = entries();
    forged[3].frame.signature = signature;
    put(forged, true);
    BOOST_TEST(!is_taken(), signature);
  }
  for (std::size_t byte = 0; byte < 32; ++byte) {
    std::vector<Entry> forged = entries();
    forged[3].frame.refers.front().digest[byte] ^= 1;
    put(forged, false);
    BOOST_TEST(!is_taken(), byte);
  }
}

BOOST_AUTO_TEST_CASE(no_changed_frame_is_taken) {
  std::vector<Entry> forged = entries();
  forged[3].frame.written = quantity::Instant::of(forged[3].frame.written.count() + 1);
  put(forged, true);
  BOOST_TEST(!is_taken());
}

BOOST_AUTO_TEST_SUITE_END()
