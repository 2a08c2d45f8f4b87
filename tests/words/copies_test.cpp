// When a copy elsewhere is missed, by a clock that the test turns. 24 hours: AMC 21.B.55(a) and
// AMC1 ML.A.305(e).
#include "words/copies.h"

#include <boost/test/unit_test.hpp>

namespace {

constexpr std::int64_t hour = 3600;
const quantity::Instant start = quantity::Instant::of(1'772'700'000);

quantity::Instant after(std::int64_t seconds) {
  return quantity::Instant::of(start.count() + seconds);
}

std::string told(const words::NotCopied& not_copied, std::int64_t seconds) {
  return words::not_copied_text(not_copied, after(seconds));
}

}  // namespace

BOOST_AUTO_TEST_SUITE(copies)

BOOST_AUTO_TEST_CASE(within_24_hours_of_an_entry_nothing_is_said) {
  const words::NotCopied never{3, start, {}};
  BOOST_TEST(told(never, 0) == "");
  BOOST_TEST(told(never, 24 * hour) == "");
  BOOST_TEST(
      told(never, 24 * hour + 1) ==
      "No copy of this book lies elsewhere; it holds 3 entries. Say timeworn backup FOLDER.");
}

BOOST_AUTO_TEST_CASE(the_age_is_that_of_the_copy_and_the_24_hours_run_from_the_entry) {
  const words::NotCopied late{1, after(100 * hour), start};
  BOOST_TEST(told(late, 124 * hour) == "");
  BOOST_TEST(told(late, 124 * hour + 1) ==
             "The newest copy elsewhere is 5 days old and lacks 1 entry. Say timeworn backup.");
  const words::NotCopied soon{2, after(1 * hour), start};
  BOOST_TEST(told(soon, 47 * hour) ==
             "The newest copy elsewhere is 47 hours old and lacks 2 entries. Say timeworn backup.");
}

// A clock that was set back says nothing rather than something wrong.
BOOST_AUTO_TEST_CASE(an_entry_from_the_future_is_not_late) {
  BOOST_TEST(told({1, after(50 * hour), {}}, 0) == "");
}

BOOST_AUTO_TEST_SUITE_END()
