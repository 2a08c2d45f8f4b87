// Student's t against the printed tables. Source: NIST/SEMATECH e-Handbook 1.3.6.7.2.
#include "reckon/trend/student.h"

#include <array>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include "quantity/expect.h"
#include "reckon/trend/test_points.h"

namespace {

using reckon::trend::one_sided_p;
using reckon::trend::one_sided_t;
using reckon::trend::two_sided_p;
using reckon::trend::two_sided_t;
using trend_test::is_printed_as;

struct Printed {
  double degrees_of_freedom;
  double t;
};

using Table = std::vector<Printed>;

BOOST_AUTO_TEST_SUITE(student)

BOOST_AUTO_TEST_CASE(the_two_sided_95_table_is_met_to_its_printed_decimals) {
  constexpr std::array printed{12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306,
                               2.262,  2.228, 2.201, 2.179, 2.160, 2.145, 2.131, 2.120,
                               2.110,  2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064,
                               2.060,  2.056, 2.052, 2.048, 2.045, 2.042};
  double degrees_of_freedom = 0.0;
  for (double const t : printed) {
    degrees_of_freedom += 1.0;
    BOOST_TEST_CONTEXT("df " << degrees_of_freedom) {
      BOOST_TEST(is_printed_as(two_sided_t(0.95, degrees_of_freedom), t, 3));
      BOOST_TEST(is_printed_as(one_sided_t(0.975, degrees_of_freedom), t, 3));
    }
  }
  for (const Printed& row : Table{{40, 2.021}, {60, 2.000}, {120, 1.980}}) {
    BOOST_TEST(is_printed_as(two_sided_t(0.95, row.degrees_of_freedom), row.t, 3));
  }
}

BOOST_AUTO_TEST_CASE(the_one_sided_95_table_is_met_to_its_printed_decimals) {
  for (const Printed& row : Table{{1, 6.314},
                                  {2, 2.920},
                                  {3, 2.353},
                                  {4, 2.132},
                                  {5, 2.015},
                                  {6, 1.943},
                                  {8, 1.860},
                                  {10, 1.812},
                                  {15, 1.753},
                                  {20, 1.725},
                                  {30, 1.697}}) {
    BOOST_TEST_CONTEXT("df " << row.degrees_of_freedom) {
      BOOST_TEST(is_printed_as(one_sided_t(0.95, row.degrees_of_freedom), row.t, 3));
      BOOST_TEST(is_printed_as(two_sided_t(0.90, row.degrees_of_freedom), row.t, 3));
    }
  }
}

BOOST_AUTO_TEST_CASE(the_one_sided_995_table_is_met_to_its_printed_decimals) {
  for (const Printed& row : Table{{1, 63.657},
                                  {2, 9.925},
                                  {3, 5.841},
                                  {4, 4.604},
                                  {5, 4.032},
                                  {6, 3.707},
                                  {8, 3.355},
                                  {10, 3.169},
                                  {20, 2.845},
                                  {30, 2.750}}) {
    BOOST_TEST_CONTEXT("df " << row.degrees_of_freedom) {
      BOOST_TEST(is_printed_as(one_sided_t(0.995, row.degrees_of_freedom), row.t, 3));
    }
  }
}

// With one and two degrees of freedom the law has a closed form: a second way to each figure.
BOOST_AUTO_TEST_CASE(one_and_two_degrees_of_freedom_agree_with_the_closed_forms) {
  for (double const confidence : {0.5, 0.8, 0.9, 0.95, 0.99, 0.995, 0.999}) {
    const double one = std::tan(std::numbers::pi * confidence / 2.0);
    const double two = confidence * std::sqrt(2.0 / (1.0 - confidence * confidence));
    BOOST_TEST(two_sided_t(confidence, 1.0) == one, boost::test_tools::tolerance(1e-11));
    BOOST_TEST(two_sided_t(confidence, 2.0) == two, boost::test_tools::tolerance(1e-11));
    BOOST_TEST(two_sided_p(one, 1.0) == 1.0 - confidence, boost::test_tools::tolerance(1e-11));
    BOOST_TEST(two_sided_p(two, 2.0) == 1.0 - confidence, boost::test_tools::tolerance(1e-11));
  }
}

BOOST_AUTO_TEST_CASE(the_p_value_undoes_the_quantile_at_any_degrees_of_freedom) {
  for (double const degrees_of_freedom : {0.7, 1.0, 3.5, 8.0, 29.3, 400.0, 1e6}) {
    for (double const confidence : {0.01, 0.5, 0.95, 0.995, 0.999999}) {
      const double two_sided = two_sided_t(confidence, degrees_of_freedom);
      const double one_sided = one_sided_t(confidence, degrees_of_freedom);
      const auto close = boost::test_tools::tolerance(1e-9);
      BOOST_TEST(two_sided_p(two_sided, degrees_of_freedom) == 1.0 - confidence, close);
      BOOST_TEST(two_sided_p(-two_sided, degrees_of_freedom) == 1.0 - confidence, close);
      BOOST_TEST(one_sided_p(one_sided, degrees_of_freedom) == 1.0 - confidence, close);
      BOOST_TEST(one_sided_p(-one_sided, degrees_of_freedom) == confidence, close);
    }
  }
}

BOOST_AUTO_TEST_CASE(an_endless_t_is_no_accident_and_a_t_of_zero_always_is) {
  constexpr double endless = std::numeric_limits<double>::infinity();
  BOOST_TEST(two_sided_p(endless, 5.0) == 0.0);
  BOOST_TEST(two_sided_p(-endless, 5.0) == 0.0);
  BOOST_TEST(one_sided_p(-endless, 5.0) == 1.0);
  BOOST_TEST(two_sided_p(0.0, 5.0) == 1.0);
}

BOOST_AUTO_TEST_CASE(a_confidence_that_is_none_breaks_a_promise) {
  for (double const confidence : {0.0, 1.0, -0.5, 95.0, std::nan("")}) {
    BOOST_CHECK_THROW(two_sided_t(confidence, 5.0), quantity::BrokenPromise);
    BOOST_CHECK_THROW(one_sided_t(confidence, 5.0), quantity::BrokenPromise);
  }
  BOOST_CHECK_THROW(two_sided_t(0.95, 0.0), quantity::BrokenPromise);
  BOOST_CHECK_THROW(two_sided_p(std::nan(""), 5.0), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
