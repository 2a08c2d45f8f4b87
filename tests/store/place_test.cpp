// Where a book lies, who else may write there, and what its files' rights are. Numbers of file
// systems: statfs(2). Rights: common practice (XDG base directories), no further source.
#include "store/place.h"

#include <sys/stat.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <fstream>

#include "store/desk.h"
#include "store/file.h"

namespace {

using desk::Folder;
using store::PlaceDoubt;
namespace files = std::filesystem;

unsigned rights(const std::string& path) {
  struct stat status {};
  return ::stat(path.c_str(), &status) == 0 ? status.st_mode & 07777 : 0;
}

// A mask for new files, put back at the end.
class Mask {
 public:
  explicit Mask(mode_t mask) : before_(::umask(mask)) {}
  ~Mask() { ::umask(before_); }
  Mask(const Mask&) = delete;
  Mask& operator=(const Mask&) = delete;

 private:
  mode_t before_;
};

bool has(const std::vector<PlaceDoubt>& doubts, PlaceDoubt doubt) {
  return std::find(doubts.begin(), doubts.end(), doubt) != doubts.end();
}

}  // namespace

BOOST_AUTO_TEST_SUITE(place)

BOOST_AUTO_TEST_CASE(a_book_is_its_owners_alone_whatever_the_mask) {
  for (const mode_t mask : {0000U, 0022U, 0077U}) {
    const Folder folder;
    const Mask set(mask);
    { desk::make(folder, "papers/2026/the.book"); }
    BOOST_TEST(rights(folder.path("papers")) == 0700U);
    BOOST_TEST(rights(folder.path("papers/2026")) == 0700U);
    BOOST_TEST(rights(folder.path("papers/2026/the.book")) == 0600U);
    BOOST_TEST(rights(folder.path("state")) == 0700U);
    for (const auto& file : files::directory_iterator(folder.path("state"))) {
      BOOST_TEST((rights(file.path()) & 0077U) == 0U, file.path());
    }
  }
}

BOOST_AUTO_TEST_CASE(rights_of_others_are_doubted) {
  const Folder folder;
  { desk::make(folder); }
  const auto path = folder.path("the.book");
  BOOST_TEST(store::doubts_of_place(path).empty());
  BOOST_REQUIRE(::chmod(path.c_str(), 0620) == 0);
  BOOST_TEST(has(store::doubts_of_place(path), PlaceDoubt::others_may_write_file));
  BOOST_REQUIRE(::chmod(path.c_str(), 0602) == 0);
  BOOST_TEST(has(store::doubts_of_place(path), PlaceDoubt::others_may_write_file));
  BOOST_REQUIRE(::chmod(path.c_str(), 0644) == 0);
  BOOST_TEST(store::doubts_of_place(path).empty());
  BOOST_REQUIRE(::chmod(folder.path("").c_str(), 0770) == 0);
  BOOST_TEST(has(store::doubts_of_place(path), PlaceDoubt::others_may_write_folder));
}

// Sticky: chmod(2). In such a folder nobody takes away or replaces another user's file.
BOOST_AUTO_TEST_CASE(a_folder_for_all_where_files_stay_their_owners_is_no_doubt) {
  const Folder folder;
  { desk::make(folder); }
  BOOST_REQUIRE(::chmod(folder.path("").c_str(), 01777) == 0);
  BOOST_TEST(store::doubts_of_place(folder.path("the.book")).empty());
}

BOOST_AUTO_TEST_CASE(the_place_is_where_links_lead) {
  const Folder folder;
  { desk::make(folder, "papers/the.book"); }
  files::create_symlink("papers/the.book", folder.path("link"));
  BOOST_TEST(store::doubts_of_place(folder.path("link")).empty());
  BOOST_REQUIRE(::chmod(folder.path("papers").c_str(), 0770) == 0);
  BOOST_TEST(has(store::doubts_of_place(folder.path("link")), PlaceDoubt::others_may_write_folder));
}

BOOST_AUTO_TEST_CASE(what_passes_with_the_power_is_known_by_its_number) {
  for (const std::int64_t number : {0x01021994L, 0x858458F6L, 0x794C7630L}) {
    BOOST_TEST(store::is_passing(number), number);
  }
  // Where the field is signed and 32 bits wide: ramfs.
  BOOST_TEST(store::is_passing(-2054924042L));
  for (const std::int64_t number : {0xEF53L, 0x9123683EL, 0x58465342L, 0x4D44L}) {
    BOOST_TEST(!store::is_passing(number), number);
  }
}

BOOST_AUTO_TEST_CASE(one_file_has_many_names) {
  const Folder folder;
  { desk::make(folder); }
  files::create_symlink(folder.path("the.book"), folder.path("link"));
  std::ofstream(folder.path("letter"));
  BOOST_TEST(store::is_same_file(folder.path("the.book"), folder.path("./the.book")));
  BOOST_TEST(store::is_same_file(folder.path("the.book"), folder.path("link")));
  BOOST_TEST(!store::is_same_file(folder.path("the.book"), folder.path("letter")));
  BOOST_TEST(!store::is_same_file(folder.path("none"), folder.path("none")));
}

BOOST_AUTO_TEST_CASE(no_folder_is_made_where_something_else_stands) {
  const Folder folder;
  std::ofstream(folder.path("letter"));
  BOOST_TEST(desk::trouble_of([&] { store::make_folder(folder.path("letter")); }) ==
             "cannot_create");
  BOOST_TEST(desk::trouble_of([&] { store::make_folder(folder.path("letter/in")); }) ==
             "cannot_create");
  BOOST_TEST(desk::trouble_of([&] { store::make_folder(folder.path("a/b/c")); }) == "none");
  BOOST_TEST(desk::trouble_of([&] { store::make_folder(folder.path("a/b/c")); }) == "none");
}

BOOST_AUTO_TEST_CASE(a_page_replaces_a_file_and_is_for_all_to_read) {
  const Folder folder;
  const Mask set(0077U);
  const auto path = folder.path("sheet.html");
  std::ofstream(path) << "old";
  {
    store::NewFile file(path, store::NewFile::Kind::page);
    file.write("new page");
    file.flush();
    file.settle();
  }
  BOOST_TEST(rights(path) == 0644U);
  BOOST_TEST(files::file_size(path) == 8U);
  BOOST_TEST(desk::trouble_of([&] {
               store::NewFile(folder.path("none/sheet"), store::NewFile::Kind::page);
             }) == "cannot_create");
  BOOST_TEST(!files::exists(folder.path("none")));
  BOOST_TEST(desk::trouble_of([&] { const store::NewFile file(""); }) == "cannot_create");
}

BOOST_AUTO_TEST_CASE(file_systems_are_known_by_their_numbers) {
  for (const std::int64_t number : {0x6969L, 0xFF534D42L, 0x65735546L, 0x01021997L}) {
    BOOST_TEST(has(store::doubts_of_file_system(number), PlaceDoubt::network), number);
  }
  // The same number where the field is signed and 32 bits wide.
  BOOST_TEST(has(store::doubts_of_file_system(-11317950L), PlaceDoubt::network));
  for (const std::int64_t number : {0x4D44L, 0x2011BAB0L}) {
    BOOST_TEST(has(store::doubts_of_file_system(number), PlaceDoubt::stick), number);
  }
  // ext4, btrfs, xfs, tmpfs, overlay.
  for (const std::int64_t number : {0xEF53L, 0x9123683EL, 0x58465342L, 0x01021994L, 0x794C7630L}) {
    BOOST_TEST(store::doubts_of_file_system(number).empty(), number);
  }
}

BOOST_AUTO_TEST_CASE(own_links_are_followed) {
  const Folder folder;
  { desk::make(folder); }
  files::create_symlink(folder.path("the.book"), folder.path("link"));
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "link"); }) == "none");
}

// Only the superuser can make a link that belongs to somebody else.
BOOST_AUTO_TEST_CASE(links_of_another_user_are_refused,
                     *boost::unit_test::precondition([](boost::unit_test::test_unit_id) {
                       return boost::test_tools::assertion_result(::geteuid() == 0);
                     })) {
  const Folder folder;
  { desk::make(folder, "papers/the.book"); }
  files::create_symlink(folder.path("papers/the.book"), folder.path("link"));
  files::create_symlink(folder.path("papers"), folder.path("drawer"));
  for (const std::string link : {"link", "drawer"}) {
    BOOST_REQUIRE(::lchown(folder.path(link).c_str(), 65534, 65534) == 0);
  }
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "link"); }) == "not_allowed");
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "drawer/the.book"); }) == "not_allowed");
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "papers/the.book"); }) == "none");
}

// path_resolution(7): what a link leads to is walked like what was typed.
BOOST_AUTO_TEST_CASE(links_behind_links_are_walked,
                     *boost::unit_test::precondition([](boost::unit_test::test_unit_id) {
                       return boost::test_tools::assertion_result(::geteuid() == 0);
                     })) {
  const Folder folder;
  { desk::make(folder, "papers/2026/the.book"); }
  files::create_directory(folder.path("desk"));
  files::create_symlink("../papers/2026", folder.path("desk/theirs"));
  files::create_symlink("desk/./theirs/the.book", folder.path("mine"));
  files::create_symlink("desk/../papers/2026/the.book", folder.path("sound"));
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "mine"); }) == "none");
  BOOST_REQUIRE(::lchown(folder.path("desk/theirs").c_str(), 65534, 65534) == 0);
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "mine"); }) == "not_allowed");
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "sound"); }) == "none");
}

// Two dots lead above the folder of the one who types, however they are reached.
BOOST_AUTO_TEST_CASE(links_above_are_met_on_every_way,
                     *boost::unit_test::precondition([](boost::unit_test::test_unit_id) {
                       return boost::test_tools::assertion_result(::geteuid() == 0);
                     })) {
  const Folder folder;
  files::create_directories(folder.path("in/deep/a"));
  files::create_symlink("in", folder.path("theirs"));
  BOOST_REQUIRE(::lchown(folder.path("theirs").c_str(), 65534, 65534) == 0);
  const auto before = files::current_path();
  files::current_path(folder.path("in/deep"));
  for (const std::string path : {"../../theirs/x", "a/../../../theirs/x", "./../../theirs/x",
                                 "a/../a/.././../../theirs/x"}) {
    BOOST_TEST(desk::trouble_of([&] { store::expect_own_links(path); }) == "not_allowed", path);
  }
  for (const std::string path : {"../../in/x", "a/../../../in/x"}) {
    BOOST_TEST(desk::trouble_of([&] { store::expect_own_links(path); }) == "none", path);
  }
  files::current_path(before);
}

BOOST_AUTO_TEST_CASE(links_in_a_circle_lead_nowhere) {
  const Folder folder;
  files::create_symlink("b", folder.path("a"));
  files::create_symlink("a", folder.path("b"));
  BOOST_TEST(desk::trouble_of([&] { desk::open(folder, "a"); }) == "no_such_book");
}

BOOST_AUTO_TEST_CASE(devices_are_compared) {
  const Folder folder;
  { desk::make(folder); }
  BOOST_TEST(store::is_on_same_device(folder.path("the.book"), folder.path("")));
  BOOST_TEST(!store::is_on_same_device(folder.path("the.book"), "/proc/version"));
  BOOST_TEST(store::is_on_same_device(folder.path("the.book"), folder.path("none")));
}

BOOST_AUTO_TEST_SUITE_END()
