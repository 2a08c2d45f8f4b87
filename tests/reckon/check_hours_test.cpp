// When two ways to the same hours agree.

#include "reckon/check_hours.h"

#include <boost/test/unit_test.hpp>

#include "support/entries.h"

using support::hours;

BOOST_AUTO_TEST_SUITE(check_hours)

BOOST_AUTO_TEST_CASE(figures_of_one_fineness_must_be_equal_on_a_meter) {
  const auto tenths = support::run("collective", "100.0", "101.4");
  BOOST_CHECK(reckon::agree_with_meter(hours("1.4"), tenths));
  BOOST_CHECK(!reckon::agree_with_meter(hours("1.5"), tenths));
  BOOST_CHECK(reckon::agree_with_meter(hours("1:20"), tenths));
  BOOST_CHECK(!reckon::agree_with_meter(hours("1:18"), tenths));
  BOOST_CHECK(!reckon::agree_with_meter(hours("1:31"), tenths));
  const auto hundredths = support::run("collective", "100.00", "101.42");
  BOOST_CHECK(reckon::agree_with_meter(hours("1.42"), hundredths));
  BOOST_CHECK(!reckon::agree_with_meter(hours("1.41"), hundredths));
  BOOST_CHECK(reckon::agree_with_meter(hours("1:25"), hundredths));
  BOOST_CHECK(!reckon::agree_with_meter(hours("1:27"), hundredths));
}

// Both published tables put 3 minutes (0.05 h) on either side of a tenth.
BOOST_AUTO_TEST_CASE(tenths_agree_with_the_minutes_of_either_table) {
  for (const auto& [typed, clock, agree] :
       std::vector<std::tuple<std::string, std::string, bool>>{{"0.8", "0:45", true},
                                                               {"0.7", "0:45", true},
                                                               {"0.7", "0:46", false},
                                                               {"0.8", "0:51", true},
                                                               {"0.8", "0:52", false},
                                                               {"0.78", "0:47", true},
                                                               {"0.77", "0:47", false},
                                                               {"0:47", "0:47", true},
                                                               {"0:46", "0:47", false}}) {
    BOOST_TEST_INFO(typed << " beside " << clock);
    BOOST_CHECK_EQUAL(reckon::agree_with_clock(hours(typed), hours(clock)), agree);
  }
}

BOOST_AUTO_TEST_CASE(decimals_that_may_be_minutes) {
  BOOST_CHECK(reckon::read_as_minutes(hours("1.30")) == hours("1:30"));
  BOOST_CHECK(reckon::read_as_minutes(hours("1.05")) == hours("1:05"));
  BOOST_CHECK(!reckon::read_as_minutes(hours("1.0")));
  BOOST_CHECK(!reckon::read_as_minutes(hours("1.75")));
  BOOST_CHECK(!reckon::read_as_minutes(hours("1:17")));
}

BOOST_AUTO_TEST_SUITE_END()
