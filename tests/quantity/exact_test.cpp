#include "quantity/exact.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <string>

#include "quantity/amount.h"
#include "quantity/hours.h"

using namespace quantity;

namespace {

constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t smallest = std::numeric_limits<std::int64_t>::min();

}  // namespace

BOOST_AUTO_TEST_SUITE(exact)

BOOST_AUTO_TEST_CASE(a_sum_that_would_overflow_is_a_broken_promise) {
  BOOST_CHECK_THROW(Hours::of(largest) + Hours::of(1), BrokenPromise);
  BOOST_CHECK_THROW(Hours::of(smallest) - Hours::of(1), BrokenPromise);
  BOOST_CHECK_THROW(-Hours::of(smallest), BrokenPromise);
  BOOST_CHECK_THROW(Hours::of(largest) * 2, BrokenPromise);
  BOOST_CHECK_THROW(HourMeter::of(largest) + Hours::of(1), BrokenPromise);
  BOOST_CHECK_THROW(HourMeter::of(largest) - HourMeter::of(-1), BrokenPromise);
  BOOST_TEST((Hours::of(largest - 1) + Hours::of(1)).count() == largest);
}

BOOST_AUTO_TEST_CASE(a_broken_promise_names_what_was_promised_and_where) {
  try {
    EXPECT(1 + 1 == 3);
    BOOST_FAIL("the promise was kept");
  } catch (const BrokenPromise& broken) {
    BOOST_TEST(std::string(broken.promise()) == "1 + 1 == 3");
    BOOST_TEST(std::string(broken.file()).ends_with("exact_test.cpp"));
    BOOST_TEST(broken.line() > 0);
  }
}

// Second way: the floor and ceiling of floating point, exact for numbers this small.
BOOST_AUTO_TEST_CASE(floor_and_ceiling_division_agree_with_floating_point) {
  for (std::int64_t a = -200; a <= 200; ++a) {
    for (std::int64_t b = 1; b <= 40; ++b) {
      const double quotient = static_cast<double>(a) / static_cast<double>(b);
      BOOST_REQUIRE_EQUAL(static_cast<double>(floor_divide(a, b)), std::floor(quotient));
      BOOST_REQUIRE_EQUAL(static_cast<double>(ceiling_divide(a, b)), std::ceil(quotient));
    }
  }
}

BOOST_AUTO_TEST_CASE(a_sum_is_as_sure_as_its_worst_term) {
  const Known<Hours> flown{Hours::of(360), Sureness::exact};
  const Known<Hours> brought{Hours::of(720), Sureness::at_least};
  const Known<Hours> missing{Hours::of(0), Sureness::unknown};
  const Known<Hours> stated{Hours::of(36), Sureness::by_default};
  BOOST_TEST(((flown + brought) == Known<Hours>{Hours::of(1080), Sureness::at_least}));
  BOOST_TEST((flown + stated + brought + missing).is_unknown());
  BOOST_TEST(((flown + stated).sureness == Sureness::by_default));
  BOOST_TEST(((brought + stated).sureness == Sureness::at_least));
  BOOST_TEST(((brought - flown) == Known<Hours>{Hours::of(360), Sureness::at_least}));
}

BOOST_AUTO_TEST_SUITE_END()
