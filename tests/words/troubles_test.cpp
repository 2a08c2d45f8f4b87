#include <boost/test/unit_test.hpp>

#include "words/told.h"
#include "words/words.h"

namespace {

using logbook::Trouble;
using logbook::TroubleKind;

constexpr int last_kind = static_cast<int>(TroubleKind::not_confirmed);

}  // namespace

BOOST_AUTO_TEST_SUITE(troubles)

BOOST_AUTO_TEST_CASE(every_trouble_names_the_file_and_ends_with_the_systems_words) {
  for (int kind = 0; kind <= last_kind; ++kind) {
    const Trouble trouble{static_cast<TroubleKind>(kind), "fleet.book", "disk I/O error"};
    const std::string text = words::trouble_text(trouble);
    BOOST_TEST(text.find("fleet.book") != std::string::npos, text);
    BOOST_TEST(text.ends_with(" (disk I/O error)"), text);
    words_test::check_told(words::trouble_text({trouble.kind, "fleet.book", ""}));
  }
}

BOOST_AUTO_TEST_CASE(exit_codes_are_those_of_the_design) {
  const auto code = [](TroubleKind kind) { return words::trouble_exit_code({kind, "", ""}); };
  BOOST_TEST(code(TroubleKind::no_such_book) == 66);
  BOOST_TEST(code(TroubleKind::not_a_book) == 66);
  BOOST_TEST(code(TroubleKind::newer_book) == 77);
  BOOST_TEST(code(TroubleKind::already_there) == 73);
  BOOST_TEST(code(TroubleKind::cannot_create) == 73);
  BOOST_TEST(code(TroubleKind::cannot_read) == 74);
  BOOST_TEST(code(TroubleKind::cannot_write) == 74);
  BOOST_TEST(code(TroubleKind::not_confirmed) == 74);
  BOOST_TEST(code(TroubleKind::in_use) == 75);
  BOOST_TEST(code(TroubleKind::not_allowed) == 77);
  BOOST_TEST(code(TroubleKind::damaged) == 74);
  BOOST_TEST(code(TroubleKind::no_place_for_mark) == 78);
}

BOOST_AUTO_TEST_SUITE_END()
