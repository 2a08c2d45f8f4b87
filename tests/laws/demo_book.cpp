#include "laws/demo_book.h"

#include <sqlite3.h>

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <filesystem>
#include <sstream>

#include "command/command_line.h"
#include "command/the_book.h"
#include "sentence/frame.h"

namespace laws {

namespace {

command::World world_of(const std::string& folder) {
  command::World world;
  world.now = quantity::read_instant("2026-03-05T08:00:00Z").value();
  world.today = quantity::utc_day(world.now);
  world.book_path = folder + "/demo.book";
  world.state_folder = folder + "/state";
  world.config_folder = folder + "/config";
  return world;
}

store::Book opened(const std::string& folder, store::Access access) {
  const command::World world = world_of(folder);
  return store::Book::open(world.book_path, access, command::surroundings(world));
}

void check_execute(sqlite3* database, const std::string& sql) {
  char* wrong = nullptr;
  const int code = sqlite3_exec(database, sql.c_str(), nullptr, nullptr, &wrong);
  BOOST_TEST_REQUIRE(code == SQLITE_OK, (wrong == nullptr ? "" : wrong));
}

}  // namespace

DemoBook::DemoBook() {
  std::string name = (std::filesystem::temp_directory_path() / "timeworn-XXXXXX").string();
  folder_ = ::mkdtemp(name.data());
  const Answer made =
      run({"new", "Marrow Point", "--for-tests", "--clock", "2026-03-05T08:00:00Z", "--seed", "7"});
  BOOST_TEST_REQUIRE(made.code == 0, made.err);
  const Answer read = run({"read", TIMEWORN_TREE "/demo_db/fleet.record"});
  BOOST_TEST_REQUIRE(read.code == 0, read.err);
}

DemoBook::~DemoBook() { std::filesystem::remove_all(folder_); }

Answer DemoBook::run(const std::vector<std::string>& words, const std::string& input) const {
  command::World world = world_of(folder_);
  std::istringstream in(input);
  std::ostringstream out;
  std::ostringstream err;
  world.in = &in;
  world.out = &out;
  world.err = &err;
  const int code = command::run(words, world);
  return {code, out.str(), err.str()};
}

std::vector<logbook::Entry> DemoBook::entries() const {
  return opened(folder_, store::Access::read).entries(std::nullopt);
}

void DemoBook::append(const logbook::Said& said) const {
  store::Book book = opened(folder_, store::Access::write);
  store::Pen pen(book);
  BOOST_TEST_REQUIRE(std::holds_alternative<logbook::Entry>(pen.append(said)));
  pen.commit();
}

int DemoBook::strike(const std::function<bool(const logbook::Entry&)>& picks) const {
  int number = 0;
  for (const logbook::Entry& entry : entries()) {
    if (!entry.said || !picks(entry)) continue;
    logbook::Said said;
    said.day = *quantity::make_day({2026, 3, 5});
    said.fact = logbook::Struck{{sentence::short_writer(entry.id.writer), entry.id.number},
                                "taken away by the test"};
    append(said);
    ++number;
  }
  return number;
}

void DemoBook::put_line_of_another_base(const std::string& about, const std::string& sentence,
                                        std::int64_t language) const {
  sqlite3* database = nullptr;
  BOOST_TEST_REQUIRE(sqlite3_open((folder_ + "/demo.book").c_str(), &database) == SQLITE_OK);
  check_execute(database,
                "INSERT INTO entry VALUES ('M2ABC00000000000000000000G', 1, randomblob(32), "
                "zeroblob(32), 1772000000, " +
                    std::to_string(language) + ", '" + about + "', '-', '-', '-', '" + sentence +
                    "')");
  sqlite3_close(database);
}

}  // namespace laws
