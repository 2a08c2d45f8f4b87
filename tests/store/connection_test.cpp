// What every connection asks for, so that a hostile file can do nothing but be read. Numbers and
// reasons: sqlite.org/security.html 1.1 and 1.2, sqlite.org/pragma.html.
#include <boost/test/unit_test.hpp>
#include <filesystem>
#include <fstream>

#include "store/desk.h"
#include "store/sqlite.h"

namespace {

using desk::Folder;
using store::Database;

struct Opened {
  Opened() {
    desk::run_sql(folder.path("a.db"), "CREATE TABLE t (a); INSERT INTO t VALUES (1)");
    desk::run_sql(folder.path("b.db"), "CREATE TABLE t (a)");
  }
  std::string running(Database& database, const std::string& sql) const {
    return desk::trouble_of([&] { database.run(sql); });
  }
  Folder folder;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(connection, Opened)

BOOST_AUTO_TEST_CASE(the_settings_stand_on_each_connection) {
  for (const auto mode : {Database::Mode::read, Database::Mode::write}) {
    Database database(folder.path("a.db"), mode);
    BOOST_TEST(database.number("PRAGMA trusted_schema") == 0);
    BOOST_TEST(database.number("PRAGMA cell_size_check") == 1);
    BOOST_TEST(database.number("PRAGMA mmap_size") == 0);
    BOOST_TEST(database.number("PRAGMA foreign_keys") == 1);
    BOOST_TEST(database.number("PRAGMA recursive_triggers") == 1);
    BOOST_TEST(database.number("PRAGMA synchronous") == 3);
    BOOST_TEST(database.number("PRAGMA query_only") == (mode == Database::Mode::read ? 1 : 0));
  }
}

// What is in memory has no journal, whatever lies in the folder where the program was started.
BOOST_AUTO_TEST_CASE(a_journal_of_that_name_is_none_of_what_is_in_memory) {
  const auto before = std::filesystem::current_path();
  std::filesystem::current_path(folder.path(""));
  std::ofstream(":memory:-journal") << std::string(1024, 'x');
  const auto trouble = desk::trouble_of([] {
    Database database(":memory:", Database::Mode::create);
    database.run("CREATE TABLE t (a)");
  });
  std::filesystem::current_path(before);
  BOOST_TEST(trouble == "none");
}

BOOST_AUTO_TEST_CASE(no_other_file_is_attached) {
  Database database(folder.path("a.db"), Database::Mode::write);
  BOOST_TEST(running(database, "ATTACH '" + folder.path("b.db") + "' AS b") != "none");
}

BOOST_AUTO_TEST_CASE(the_schema_is_not_written_behind_the_library) {
  Database database(folder.path("a.db"), Database::Mode::write);
  database.run("PRAGMA writable_schema = ON");
  BOOST_TEST(running(database, "DELETE FROM sqlite_schema") != "none");
  BOOST_TEST(desk::ask_sql(folder.path("a.db"), "SELECT count(*) FROM sqlite_schema") == "1");
}

BOOST_AUTO_TEST_CASE(no_code_is_loaded) {
  Database database(folder.path("a.db"), Database::Mode::read);
  BOOST_TEST(running(database, "SELECT load_extension('" + folder.path("b.db") + "')") != "none");
}

BOOST_AUTO_TEST_CASE(words_in_double_quotes_are_names_and_no_texts) {
  Database database(folder.path("a.db"), Database::Mode::write);
  BOOST_TEST(running(database, "SELECT \"no_such_column\" FROM t") != "none");
  BOOST_TEST(running(database, "CREATE INDEX i ON t (\"no_such_column\")") != "none");
}

BOOST_AUTO_TEST_CASE(what_a_file_may_ask_for_is_limited) {
  Database database(folder.path("a.db"), Database::Mode::read);
  BOOST_TEST(running(database, "SELECT zeroblob(5000000)") != "none");
  BOOST_TEST(running(database, "SELECT 1 /* " + std::string(200'000, 'x') + " */") != "none");
  BOOST_TEST(running(database, "SELECT 1 FROM t WHERE a LIKE '" + std::string(60, '%') + "'") !=
             "none");
  std::string deep = "1";
  for (int i = 0; i < 60; ++i) deep = "(1 + " + deep + ")";
  BOOST_TEST(running(database, "SELECT " + deep) != "none");
}

BOOST_AUTO_TEST_CASE(a_reader_changes_nothing) {
  Database database(folder.path("a.db"), Database::Mode::read);
  BOOST_TEST(running(database, "INSERT INTO t VALUES (2)") == "cannot_write");
}

BOOST_AUTO_TEST_CASE(a_log_of_another_program_becomes_a_rollback_journal_again) {
  desk::run_sql(folder.path("a.db"), "PRAGMA journal_mode = WAL; INSERT INTO t VALUES (2)");
  BOOST_REQUIRE(desk::ask_sql(folder.path("a.db"), "PRAGMA journal_mode") == "wal");
  { const Database database(folder.path("a.db"), Database::Mode::write); }
  BOOST_TEST(desk::ask_sql(folder.path("a.db"), "PRAGMA journal_mode") == "delete");
}

BOOST_AUTO_TEST_SUITE_END()
