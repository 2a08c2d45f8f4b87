// The book defends itself against every program that opens it, not only against ours.
#include <boost/test/unit_test.hpp>

#include "sentence/frame.h"
#include "store/desk.h"

namespace {

using desk::Folder;

// A book of one record entry and two flights, and SQL tried on it by another program.
struct Tried {
  Tried() {
    auto book = desk::make(folder);
    desk::write(book, desk::flew(60));
    desk::write(book, desk::flew(66));
    writer = sentence::say_writer(book.writer());
  }
  std::string run(const std::string& sql) const {
    return desk::run_sql(folder.path("the.book"), sql);
  }
  std::string ask(const std::string& sql) const {
    return desk::ask_sql(folder.path("the.book"), sql);
  }
  // Columns of an entry as SQL, from the number on.
  std::string row(std::int64_t number, const std::string& digest,
                  const std::string& previous) const {
    return "('" + writer + "', " + std::to_string(number) + ", " + digest + ", " + previous +
           ", 0, 1, '-', '-', '-', '-', 'Words.')";
  }
  std::string newest() const { return "(SELECT digest FROM entry WHERE number = 3)"; }
  Folder folder;
  std::string writer;
};

constexpr const char* some_digest = "randomblob(32)";

}  // namespace

BOOST_FIXTURE_TEST_SUITE(schema, Tried)

BOOST_AUTO_TEST_CASE(no_program_changes_an_entry) {
  BOOST_TEST(run("UPDATE entry SET sentence = 'Words.' WHERE number = 2") ==
             "an entry is never changed; a correction is a new entry");
  BOOST_TEST(run("UPDATE entry SET number = 9 WHERE number = 3") ==
             "an entry is never changed; a correction is a new entry");
}

BOOST_AUTO_TEST_CASE(no_program_removes_an_entry) {
  BOOST_TEST(run("DELETE FROM entry WHERE number = 3") ==
             "an entry is never removed; a strike is a new entry");
  BOOST_TEST(run("DELETE FROM entry") == "an entry is never removed; a strike is a new entry");
}

BOOST_AUTO_TEST_CASE(no_program_replaces_an_entry) {
  writer = "M2ABC7Z5XQ9WT4KD8NVE3HR6J0";
  BOOST_REQUIRE(run("INSERT INTO entry VALUES " + row(4, some_digest, some_digest)) == "");
  const std::string columns =
      " SELECT writer, number, digest, previous, written, language, about, "
      "knows, refers, signature, 'Others.' FROM entry WHERE number = ";
  for (const std::string number : {"2", "4"}) {
    for (const std::string verb : {"INSERT OR REPLACE INTO entry", "REPLACE INTO entry"}) {
      BOOST_TEST(run(verb + columns + number) != "");
    }
    BOOST_TEST(run("INSERT INTO entry" + columns + number +
                   " ON CONFLICT DO UPDATE SET sentence = 'Others.'") != "");
  }
  BOOST_TEST(run("REPLACE INTO entry" + columns + "4") == "the entry is there already");
  BOOST_TEST(ask("SELECT count(*) FROM entry WHERE sentence = 'Others.'") == "0");
  BOOST_TEST(ask("SELECT count(*) FROM entry") == "4");
}

BOOST_AUTO_TEST_CASE(the_own_writer_skips_no_number_and_forks_nowhere) {
  const std::string insert = "INSERT INTO entry VALUES ";
  const std::string refused = "an own entry follows the newest own entry";
  BOOST_TEST(run(insert + row(5, some_digest, newest())) == refused);
  BOOST_TEST(run(insert + row(3, some_digest, newest())) == refused);
  BOOST_TEST(run(insert + row(4, some_digest, some_digest)) == refused);
  BOOST_TEST(run(insert + row(4, some_digest, newest())) == "");
}

BOOST_AUTO_TEST_CASE(entries_of_other_writers_come_in_any_order_and_with_forks) {
  writer = "M2ABC7Z5XQ9WT4KD8NVE3HR6J0";
  const std::string insert = "INSERT INTO entry VALUES ";
  BOOST_TEST(run(insert + row(7, some_digest, some_digest)) == "");
  BOOST_TEST(run(insert + row(7, some_digest, some_digest)) == "");
  BOOST_TEST(run(insert + row(2, some_digest, some_digest)) == "");
}

BOOST_AUTO_TEST_CASE(columns_hold_only_what_belongs_there) {
  writer = "M2ABC7Z5XQ9WT4KD8NVE3HR6J0";
  const std::string insert = "INSERT INTO entry VALUES ";
  BOOST_TEST(run(insert + row(0, some_digest, some_digest)) != "");
  BOOST_TEST(run(insert + row(1, some_digest, some_digest)) != "");
  BOOST_TEST(run(insert + row(2, "'text'", some_digest)) != "");
  BOOST_TEST(run(insert + row(2, "randomblob(31)", some_digest)) != "");
}

BOOST_AUTO_TEST_CASE(the_record_and_what_is_local_are_append_only_too) {
  BOOST_TEST(run("UPDATE record SET id = id") == "the record of a book is never changed");
  BOOST_TEST(run("DELETE FROM record") == "the record of a book is never removed");
  BOOST_TEST(run("REPLACE INTO record VALUES (1, 'M2ABC7Z5XQ9WT4KD8NVE3HR6J0')") ==
             "a book belongs to one record");
  BOOST_TEST(run("INSERT INTO printed VALUES (1, 0, 'due', '-', 0, ''); "
                 "INSERT INTO quarantine VALUES (1, 0, x'00', 'digest')") == "");
  for (const std::string table : {"own_writer", "arrived", "printed", "quarantine"}) {
    const std::string key = table == "own_writer" ? "ordinal" : "place";
    BOOST_TEST(run("UPDATE " + table + " SET " + key + " = 77").find("never changed") !=
               std::string::npos);
    BOOST_TEST(run("DELETE FROM " + table).find("never removed") != std::string::npos);
    const auto again = run("REPLACE INTO " + table + " SELECT * FROM " + table);
    BOOST_TEST((again.find("there already") != again.npos || again == "a writer is begun once"));
  }
}

BOOST_AUTO_TEST_CASE(the_file_says_what_it_is_and_how_it_is_kept) {
  BOOST_TEST(ask("PRAGMA application_id") == "1415008846");
  BOOST_TEST(ask("PRAGMA user_version") == "1");
  BOOST_TEST(ask("PRAGMA journal_mode") == "delete");
}

BOOST_AUTO_TEST_CASE(the_lines_can_be_read_without_our_program) {
  const auto book = desk::open(folder, "the.book", store::Access::read);
  const auto entry = book.entries({})[1];
  BOOST_TEST(ask("SELECT line FROM record_line WHERE number = 2") ==
             sentence::say_line(entry.frame, entry.sentence));
}

BOOST_AUTO_TEST_SUITE_END()
