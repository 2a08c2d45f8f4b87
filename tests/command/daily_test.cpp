// The note about copies in the answers that are looked at every day, by a clock that the test
// turns. 24 hours: AMC 21.B.55(a) and AMC1 ML.A.305(e).
#include <boost/test/unit_test.hpp>
#include <fstream>

#include "command/world.h"
#include "store/book.h"

namespace {

constexpr std::int64_t hour = 3600;
constexpr const char* none = "No copy of this book lies elsewhere";
constexpr const char* old = "The newest copy elsewhere is";

struct Daily {
  Daily() {
    world.type({"new", "Marrow", "Point"});
    world.type({"say", "2026-03-04 aircraft ZZ-KIT is model \"Larkwing 5\"."});
  }
  bool says(const char* note, const std::vector<std::string>& words) const {
    const auto answer = world.type(words);
    return answer.out.find(note) != std::string::npos;
  }
  // As if a copy had gone to another disk.
  void copy_elsewhere(const std::string& name) const {
    const auto book = store::Book::open(world.path("the.book"), store::Access::read,
                                        {world.now(), world.path("state"), {}, {}});
    auto copied = book.copy_to(world.path(name));
    copied.is_elsewhere = true;
    book.remember_copy(copied, world.now());
  }
  desk::World world;
};

}  // namespace

BOOST_FIXTURE_TEST_SUITE(daily, Daily)

BOOST_AUTO_TEST_CASE(a_day_without_a_copy_elsewhere_is_told) {
  world.turn_clock(24 * hour);
  BOOST_TEST(!says(none, {"ready", "ZZ-KIT"}));
  BOOST_TEST(!says(none, {"due", "ZZ-KIT"}));
  world.turn_clock(1);
  BOOST_TEST(says(none, {"ready", "ZZ-KIT"}));
  BOOST_TEST(says(none, {"due", "ZZ-KIT"}));
  BOOST_TEST(says(none, {"due", "ZZ-KIT", "--json"}));
  BOOST_TEST(!says(none, {"history", "ZZ-KIT"}));
}

BOOST_AUTO_TEST_CASE(the_note_is_no_part_of_the_answer) {
  const int before = world.type({"ready", "ZZ-KIT"}).code;
  const int due_before = world.type({"due", "ZZ-KIT"}).code;
  world.turn_clock(48 * hour);
  BOOST_TEST(world.type({"ready", "ZZ-KIT"}).code == before);
  BOOST_TEST(world.type({"due", "ZZ-KIT"}).code == due_before);
}

BOOST_AUTO_TEST_CASE(a_copy_on_the_same_disk_is_none_elsewhere) {
  BOOST_TEST(world.type({"backup", world.path("copy.db")}).code == 0);
  world.turn_clock(25 * hour);
  BOOST_TEST(says(none, {"due", "ZZ-KIT"}));
}

BOOST_AUTO_TEST_CASE(a_copy_elsewhere_counts_until_a_day_after_the_next_entry) {
  copy_elsewhere("copy.db");
  world.turn_clock(1000 * hour);
  BOOST_TEST(!says(old, {"due", "ZZ-KIT"}));
  world.type({"say", "2026-03-04 aircraft ZZ-KIT has required place engine 1."});
  world.turn_clock(24 * hour);
  BOOST_TEST(!says(old, {"due", "ZZ-KIT"}));
  world.turn_clock(1);
  BOOST_TEST(says(old, {"due", "ZZ-KIT"}));
  copy_elsewhere("second.db");
  BOOST_TEST(!says(old, {"due", "ZZ-KIT"}));
}

BOOST_AUTO_TEST_CASE(a_copy_that_cannot_be_remembered_is_made_and_not_counted) {
  const auto state = world.path("state");
  std::filesystem::rename(state, world.path("before"));
  std::ofstream(state) << "no folder";
  const auto answer = world.type({"backup", world.path("copy.db")});
  BOOST_TEST(answer.code == 78);
  BOOST_TEST(answer.err.starts_with("The copy stands, but this machine cannot remember it"));
  BOOST_TEST(std::filesystem::exists(world.path("copy.db")));
}

BOOST_AUTO_TEST_CASE(a_copy_that_could_not_be_made_counts_nothing) {
  BOOST_TEST(world.type({"backup", world.path("the.book")}).code == 73);
  world.turn_clock(25 * hour);
  BOOST_TEST(says(none, {"due", "ZZ-KIT"}));
}

BOOST_AUTO_TEST_SUITE_END()
