// Copies as a person makes and keeps them: which are removed, which never, and what is said. Common
// practice, no source, except where one stands beside the test.
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <fstream>

#include "command/heads.h"
#include "command/world.h"
#include "sentence/frame.h"
#include "store/book.h"
#include "store/desk.h"

namespace {

namespace files = std::filesystem;

struct Keeping {
  Keeping() {
    world.type({"new", "Marrow", "Point"});
    say("2026-03-04 aircraft ZZ-KIT is model \"Larkwing 5\".");
    files::create_directory(world.path("kept"));
  }
  void say(const std::string& sentence, const std::string& book = "the.book") const {
    const auto answer = world.type({"say", sentence, "--book", world.path(book)});
    BOOST_REQUIRE_MESSAGE(answer.code == 0, answer.err);
  }
  desk::Answer backup(const std::vector<std::string>& more) {
    world.turn_clock(60);
    std::vector<std::string> words = {"backup", world.path("kept")};
    words.insert(words.end(), more.begin(), more.end());
    return world.type(words);
  }
  std::vector<std::string> kept() const {
    std::vector<std::string> names;
    for (const auto& file : files::directory_iterator(world.path("kept"))) {
      names.push_back(file.path().string());
    }
    return names;
  }
  desk::World world;
};

// The foot of a sheet with one head, and what check says to it.
struct Sheet : Keeping {
  Sheet() {
    const auto book = store::Book::open(world.path("the.book"), store::Access::read,
                                        {world.now(), world.path("state"), {}, {}});
    const auto entries = book.entries(std::nullopt);
    head = command::head_texts(entries).front();
  }
  int against(const std::string& text) const {
    return world.type({"check", "--quick", "--against", text}).code;
  }
  std::string head;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(keeping_copies, Keeping)

BOOST_AUTO_TEST_CASE(only_the_newest_copies_are_left) {
  for (int i = 0; i < 3; ++i) BOOST_TEST(backup({}).code == 0);
  const auto answer = backup({"--keep", "2"});
  BOOST_TEST(answer.out.find("Removed 2 older copies.") != std::string::npos, answer.out);
  BOOST_TEST(kept().size() == 2U);
}

BOOST_AUTO_TEST_CASE(a_copy_that_cannot_be_read_takes_no_place_of_a_good_one) {
  BOOST_REQUIRE(backup({}).code == 0);
  const auto good = kept().front();
  BOOST_REQUIRE(backup({}).code == 0);
  auto bad = kept();
  bad.erase(std::find(bad.begin(), bad.end(), good));
  std::fstream(bad.front(), std::ios::in | std::ios::out | std::ios::binary)
      << std::string(4000, 'x');
  const auto answer = backup({"--keep", "2"});
  BOOST_TEST(files::exists(good), answer.out);
  BOOST_TEST(files::exists(bad.front()));
  BOOST_TEST(answer.out.find("or cannot be read") != std::string::npos, answer.out);
  BOOST_TEST(answer.out.find("Removed") == std::string::npos, answer.out);
}

// Somebody works on with a copy where it lies.
BOOST_AUTO_TEST_CASE(the_book_itself_is_never_removed_whatever_its_name) {
  BOOST_REQUIRE(backup({}).code == 0);
  const auto live = kept().front();
  files::rename(world.path("the.book"), live);
  const auto answer = backup({"--keep", "1", "--book", live});
  BOOST_TEST(answer.code == 0, answer.err);
  BOOST_TEST(files::exists(live), answer.out);
  BOOST_TEST(kept().size() == 2U);
  BOOST_TEST(backup({"--keep", "1", "--book", live}).code == 0);
  BOOST_TEST(files::exists(live));
  BOOST_TEST(kept().size() == 2U);
}

BOOST_AUTO_TEST_CASE(a_copy_of_another_base_is_neither_counted_nor_removed) {
  BOOST_REQUIRE(world.type({"backup", world.path("other.book")}).code == 0);
  say("2026-03-04 aircraft ZZ-KIT has required place engine 1.");
  // A writer of its own, and no entry that the book lacks.
  BOOST_REQUIRE(world.type({"rebuild", "--book", world.path("other.book")}).code == 0);
  BOOST_REQUIRE(backup({"--book", world.path("other.book")}).code == 0);
  const auto others = kept().front();
  for (int i = 0; i < 3; ++i) BOOST_TEST(backup({"--keep", "1"}).code == 0);
  BOOST_TEST(files::exists(others));
  BOOST_TEST(kept().size() == 2U);
}

BOOST_AUTO_TEST_CASE(an_empty_name_is_no_place) {
  const auto answer = world.type({"backup", ""});
  BOOST_TEST(answer.code == 73);
  BOOST_TEST(answer.err ==
             "The place for the copy is empty. Name a folder or a file. Nothing was copied.\n");
}

BOOST_AUTO_TEST_CASE(what_was_not_made_is_named) {
  std::ofstream(world.path("kept/copy.db-journal")) << "left by a crash";
  const auto copied = world.type({"backup", world.path("kept/copy.db")});
  BOOST_TEST(copied.code == 73);
  BOOST_TEST(copied.err.find("copy.db-journal is there already") != std::string::npos, copied.err);
  BOOST_TEST(kept().size() == 1U);
  desk::run_sql(world.path("the.book"), "DROP TRIGGER entry_is_never_changed");
  const auto damaged = world.type({"backup", world.path("kept")});
  BOOST_TEST(damaged.code == 74);
  BOOST_TEST(damaged.err.find("is damaged, so no copy was made.") != std::string::npos,
             damaged.err);
}

// sqlite.org/howtocorrupt.html 1.4.
BOOST_AUTO_TEST_CASE(nothing_is_restored_beside_a_journal) {
  BOOST_REQUIRE(world.type({"backup", world.path("copy.db")}).code == 0);
  files::remove(world.path("the.book"));
  std::ofstream(world.path("the.book-journal")) << "left by a crash";
  const auto answer = world.type({"restore", world.path("copy.db")});
  BOOST_TEST(answer.code == 73);
  BOOST_TEST(answer.err.find("the.book-journal is there already") != std::string::npos, answer.err);
  BOOST_TEST(!files::exists(world.path("the.book")));
  files::rename(world.path("the.book-journal"), world.path("away"));
  BOOST_TEST(world.type({"restore", world.path("copy.db")}).code == 0);
}

BOOST_AUTO_TEST_CASE(an_older_file_put_back_is_told_every_day_and_found) {
  const auto says = [&](const std::vector<std::string>& words, const char* note) {
    return world.type(words).out.find(note) != std::string::npos;
  };
  BOOST_REQUIRE(world.type({"backup", world.path("copy.db")}).code == 0);
  say("2026-03-04 aircraft ZZ-KIT has required place engine 1.");
  BOOST_TEST(!says({"due", "ZZ-KIT"}, "This machine wrote"));
  const int due = world.type({"due", "ZZ-KIT", "--book", world.path("copy.db")}).code;
  files::rename(world.path("copy.db"), world.path("the.book"));
  BOOST_TEST(says({"due", "ZZ-KIT"}, "This machine wrote"));
  BOOST_TEST(says({"ready", "ZZ-KIT"}, "This machine wrote"));
  BOOST_TEST(says({"check"}, "Fault in mark, "));
  BOOST_TEST(world.type({"check", "--quick"}).code == 1);
  BOOST_TEST(world.type({"due", "ZZ-KIT"}).code == due);
  BOOST_TEST(!says({"history", "ZZ-KIT"}, "This machine wrote"));
}

BOOST_AUTO_TEST_CASE(what_was_not_compared_is_not_fully_proved) {
  BOOST_TEST(world.type({"check", "--quick"}).code == 0);
  desk::run_sql(world.path("the.book"), "DROP TABLE use");
  const auto form = world.type({"check", "--quick"});
  BOOST_TEST(form.code == 1);
  BOOST_TEST(form.out.find("Fault in form: ") != std::string::npos, form.out);
  BOOST_TEST(world.type({"rebuild"}).code == 0);
  BOOST_TEST(world.type({"check", "--quick"}).code == 0);
  desk::run_sql(world.path("the.book"), "PRAGMA user_version = 2");
  const auto newer = world.type({"check", "--quick"});
  BOOST_TEST(newer.code == 1);
  BOOST_TEST(newer.out.find("Fault in version: ") != std::string::npos, newer.out);
}

// The superuser may read everything, so this is done as somebody who may not.
BOOST_AUTO_TEST_CASE(a_page_never_replaces_a_file_that_cannot_be_read) {
  constexpr uid_t nobody = 65534;
  const auto path = world.path("sheet.html");
  std::ofstream(path) << "who knows";
  BOOST_REQUIRE(::chmod(path.c_str(), 0200) == 0);
  const bool is_superuser = ::geteuid() == 0;
  if (is_superuser) {
    const std::string folder = world.path("");
    for (const auto& file : files::recursive_directory_iterator(folder)) {
      BOOST_REQUIRE(::chown(file.path().c_str(), nobody, nobody) == 0);
    }
    BOOST_REQUIRE(::chown(folder.c_str(), nobody, nobody) == 0);
    BOOST_REQUIRE(::seteuid(nobody) == 0);
  }
  const int code = world.type({"print", "fleet", "-o", path}).code;
  if (is_superuser) BOOST_REQUIRE(::seteuid(0) == 0);
  BOOST_TEST(code == 73);
  BOOST_TEST(files::file_size(path) == 9U);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_FIXTURE_TEST_SUITE(sheets, Sheet)

BOOST_AUTO_TEST_CASE(a_sheet_is_read_as_people_type_it) {
  const auto space = head.find(' ');
  const std::string name = head.substr(0, space);
  const std::string digits = head.substr(space + 1);
  BOOST_TEST(against(head) == 0);
  BOOST_TEST(against(head + ".") == 0);
  BOOST_TEST(against(head + ", " + head + " and " + head + ".") == 0);
  BOOST_TEST(against("Newest entry of each base, for timeworn check --against: " + head + ".") ==
             0);
  BOOST_TEST(against("Newest entry of each base, for keeping apart: " + head + ".") == 0);
  std::string loud = head;
  std::string quiet = head;
  for (char& c : loud) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
  for (char& c : quiet) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  BOOST_TEST(against(loud) == 0);
  BOOST_TEST(against(quiet) == 0);
  std::string mistaken = head;
  for (char& c : mistaken) {
    if (c == '0') c = 'O';
    if (c == '1') c = 'l';
  }
  BOOST_TEST(against(mistaken) == 0, mistaken);
  BOOST_TEST(against(name + "\n" + digits.substr(0, 8) + " " + digits.substr(8)) == 0);
}

BOOST_AUTO_TEST_CASE(another_digest_is_a_fault_and_what_is_no_sheet_is_refused) {
  const auto space = head.find(' ');
  std::string other = head;
  other.back() = other.back() == '0' ? '1' : '0';
  BOOST_TEST(against(other) == 1);
  BOOST_TEST(against(head + " and " + other) == 1);
  BOOST_TEST(against("") == 2);
  BOOST_TEST(against("and") == 2);
  BOOST_TEST(against(head.substr(0, space)) == 2);
  BOOST_TEST(against(head.substr(space + 1)) == 2);
  BOOST_TEST(against(head.substr(0, head.size() - 1)) == 2);
  BOOST_TEST(against(head + " g") == 2);
}

BOOST_AUTO_TEST_SUITE_END()
