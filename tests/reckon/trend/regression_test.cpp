// Least squares with several terms against certified figures and against a second way.
#include "reckon/trend/regression.h"

#include <array>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "quantity/expect.h"
#include "reckon/trend/second_way.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::line_of;
using trend_test::random_series;
using trend_test::seeded;

Regression fitted(const std::vector<TermColumn>& terms, const TermColumn& y,
                  Constant constant = Constant::fitted) {
  return std::get<Regression>(regress(terms, y, constant));
}

// NIST Statistical Reference Datasets, linear regression, set Longley (public domain).
const TermColumn longley_y{60323, 61122, 60171, 61187, 63221, 63639, 64989, 63761,
                           66019, 67857, 68169, 66513, 68655, 69564, 69331, 70551};
const std::vector<TermColumn> longley{
    {83, 88.5, 88.2, 89.5, 96.2, 98.1, 99, 100, 101.2, 104.6, 108.4, 110.8, 112.6, 114.2, 115.7,
     116.9},
    {234289, 259426, 258054, 284599, 328975, 346999, 365385, 363112, 397469, 419180, 442769, 444546,
     482704, 502601, 518173, 554894},
    {2356, 2325, 3682, 3351, 2099, 1932, 1870, 3578, 2904, 2822, 2936, 4681, 3813, 3931, 4806,
     4007},
    {1590, 1456, 1616, 1650, 3099, 3594, 3547, 3350, 3048, 2857, 2798, 2637, 2552, 2514, 2572,
     2827},
    {107608, 108632, 109773, 110929, 112075, 113270, 115094, 116219, 117388, 118734, 120445, 121950,
     123366, 125368, 127852, 130081},
    {1947, 1948, 1949, 1950, 1951, 1952, 1953, 1954, 1955, 1956, 1957, 1958, 1959, 1960, 1961,
     1962}};

BOOST_AUTO_TEST_SUITE(regression)

// Certified by NIST; to 1e-9 of themselves. Normal equations in double keep eight digits.
BOOST_AUTO_TEST_CASE(longley_is_met_to_nine_digits) {
  const Regression fit = fitted(longley, longley_y);
  const auto close = boost::test_tools::tolerance(1e-9);
  constexpr std::array coefficients{15.0618722713733,  -0.358191792925910E-01, -2.02022980381683,
                                    -1.03322686717359, -0.511041056535807E-01, 1829.15146461355};
  constexpr std::array errors{84.9149257747669,  0.334910077722432E-01, 0.488399681651699,
                              0.214274163161675, 0.226073200069370,     455.478499142212};
  BOOST_TEST(fit.intercept == -3482258.63459582, close);
  BOOST_TEST(fit.intercept_error == 890420.383607373, close);
  for (std::size_t term = 0; term < coefficients.size(); ++term) {
    BOOST_TEST(fit.coefficients[term] == coefficients.at(term), close);
    BOOST_TEST(fit.errors[term] == errors.at(term), close);
  }
  BOOST_TEST(fit.scatter == 304.854073561965, close);
  BOOST_TEST(fit.r2.value() == 0.995479004577296, close);
  BOOST_TEST(fit.degrees_of_freedom == 9u);
}

// NIST StRD, set NoInt1: x 60 to 70, y 130 to 140, no constant. All certified figures.
BOOST_AUTO_TEST_CASE(no_int_1_is_met_to_fourteen_digits) {
  TermColumn x;
  TermColumn y;
  for (int place = 0; place <= 10; ++place) {
    x.push_back(60.0 + place);
    y.push_back(130.0 + place);
  }
  const Regression fit = fitted({x}, y, Constant::none);
  const auto close = boost::test_tools::tolerance(1e-13);
  BOOST_TEST(fit.coefficients[0] == 2.07438016528926, close);
  BOOST_TEST(fit.errors[0] == 0.165289256198347E-01, close);
  BOOST_TEST(fit.scatter == 3.56753034006338, close);
  BOOST_TEST(fit.r2.value() == 0.999365492298663, close);
  BOOST_TEST(fit.residual_sum_of_squares == 127.272727272727, close);
  BOOST_TEST(fit.intercept == 0.0);
  BOOST_TEST(fit.degrees_of_freedom == 10u);
}

// NIST StRD, sets NumAcc: 1001 values whose spread is 0.1 about 1.2 and about 1,000,000.2. Sums in
// one pass would make 0.107 of the second.
BOOST_AUTO_TEST_CASE(num_acc_keeps_its_spread_about_a_million) {
  for (const double base : {1.0, 1e6}) {
    std::vector<Point> points{{0.0, base + 0.2}};
    while (points.size() < 1001) {
      const double x = static_cast<double>(points.size());
      points.push_back({x, base + (points.size() % 2 == 1 ? 0.1 : 0.3)});
    }
    const Line line = line_of(points);
    BOOST_TEST(line.y_mean == base + 0.2, boost::test_tools::tolerance(1e-15));
    const double deviation = std::sqrt(line.syy / 1000.0);
    BOOST_TEST(std::abs(deviation - 0.1) < (base == 1.0 ? 1e-14 : 1e-10));
  }
}

BOOST_AUTO_TEST_CASE(one_term_is_the_plain_line) {
  std::mt19937_64 random = seeded("one term");
  for (int round = 0; round < 200; ++round) {
    const std::vector<Point> points = random_series(random);
    TermColumn x;
    TermColumn y;
    for (const Point& point : points) {
      x.push_back(point.x);
      y.push_back(point.y);
    }
    const Line line = line_of(points);
    const Regression fit = fitted({x}, y);
    const auto close = boost::test_tools::tolerance(1e-9);
    BOOST_TEST(std::abs(fit.coefficients[0] - line.slope) < 1e-9 * line.slope_error);
    BOOST_TEST(fit.errors[0] == line.slope_error, close);
    BOOST_TEST(std::abs(fit.intercept - line.intercept) < 1e-9 * line.intercept_error);
    BOOST_TEST(fit.intercept_error == line.intercept_error, close);
    BOOST_TEST(fit.scatter == line.scatter, close);
    const std::vector<double> ahead{points.back().x + 100.0};
    BOOST_TEST(leverage(fit, ahead) == leverage(line, ahead[0]), close);
    BOOST_TEST(predicted(fit, ahead) == value_at(line, ahead[0]), close);
  }
}

struct Sample {
  std::vector<TermColumn> terms;
  TermColumn y;
};

// Terms of a start: volts, air and count, the last two growing together as the year does.
Sample random_sample(std::mt19937_64& random) {
  std::normal_distribution<double> normal(0.0, 1.0);
  Sample sample{std::vector<TermColumn>(3), {}};
  const int n = 6 + static_cast<int>(random() % 30);
  for (int place = 0; place < n; ++place) {
    const double volts = 22.0 + normal(random);
    const double outside = 15.0 + 0.3 * place + 2.0 * normal(random);
    sample.terms[0].push_back(volts);
    sample.terms[1].push_back(outside);
    sample.terms[2].push_back(4100.0 + place);
    sample.y.push_back(700.0 - 9.0 * volts + 1.1 * outside + 0.2 * place + 8.0 * normal(random));
  }
  return sample;
}

trend_test::Column wide(const TermColumn& column) { return {column.begin(), column.end()}; }

bool is_near(double figure, long double expected, double size) {
  return std::abs(static_cast<long double>(figure) - expected) <= 1e-9L * size;
}

BOOST_AUTO_TEST_CASE(a_second_way_gives_the_same_terms_errors_and_leverage) {
  std::mt19937_64 random = seeded("terms by a second way");
  for (int round = 0; round < 200; ++round) {
    const Sample sample = random_sample(random);
    const Regression fit = fitted(sample.terms, sample.y);
    std::vector<trend_test::Column> columns{trend_test::Column(sample.y.size(), 1.0L)};
    for (const TermColumn& term : sample.terms) columns.push_back(wide(term));
    const trend_test::QrFit second = trend_test::qr_fit(columns, wide(sample.y));
    const auto freedom = static_cast<long double>(sample.y.size() - 4);
    const long double scatter = std::sqrt(second.residual_sum_of_squares / freedom);
    BOOST_TEST(is_near(fit.scatter, scatter, fit.scatter));
    BOOST_TEST(is_near(fit.intercept, second.coefficients[0], fit.intercept_error));
    for (std::size_t term = 0; term < 3; ++term) {
      std::vector<long double> of(4, 0.0L);
      of[term + 1] = 1.0L;
      const long double error = scatter * std::sqrt(second.variance_factor(of));
      BOOST_TEST(is_near(fit.coefficients[term], second.coefficients[term + 1], fit.errors[term]));
      BOOST_TEST(is_near(fit.errors[term], error, fit.errors[term]));
    }
    const std::vector<double> ahead{20.0, 5.0, 4200.0};
    const long double share = second.variance_factor({1.0L, 20.0L, 5.0L, 4200.0L});
    BOOST_TEST(is_near(leverage(fit, ahead), share, leverage(fit, ahead)));
  }
}

// The order of terms and of readings does not matter, and a scaled term scales its coefficient.
BOOST_AUTO_TEST_CASE(the_fit_goes_along_when_terms_change_places_and_units) {
  std::mt19937_64 random = seeded("terms moved");
  for (int round = 0; round < 100; ++round) {
    const Sample sample = random_sample(random);
    const Regression fit = fitted(sample.terms, sample.y);
    std::vector<TermColumn> other{sample.terms[2], sample.terms[0], sample.terms[1]};
    for (double& figure : other[2]) figure = 1.8 * figure + 32.0;
    const Regression moved = fitted(other, sample.y);
    BOOST_TEST(is_near(moved.coefficients[0], fit.coefficients[2], fit.errors[2]));
    BOOST_TEST(is_near(moved.coefficients[1], fit.coefficients[0], fit.errors[0]));
    BOOST_TEST(is_near(moved.coefficients[2] * 1.8, fit.coefficients[1], fit.errors[1]));
    BOOST_TEST(is_near(moved.scatter, fit.scatter, fit.scatter));
  }
}

BOOST_AUTO_TEST_CASE(terms_that_moved_together_are_named_and_not_guessed) {
  std::mt19937_64 random = seeded("rank loss");
  Sample sample = random_sample(random);
  while (sample.y.size() < 8) sample = random_sample(random);
  std::vector<TermColumn> terms = sample.terms;
  terms.push_back(terms[1]);
  for (double& figure : terms[3]) figure = 1.8 * figure + 32.0;
  terms.push_back(TermColumn(sample.y.size(), 4.7));
  const auto loss = std::get<RankLoss>(regress(terms, sample.y, Constant::fitted));
  BOOST_TEST(loss.terms == (std::vector<std::size_t>{3, 4}));
  // Without a constant the same two are terms like any other.
  BOOST_TEST(std::get<RankLoss>(regress(std::vector{terms[0], terms[0]}, sample.y, Constant::none))
                 .terms == std::vector<std::size_t>{1});
  BOOST_TEST(std::holds_alternative<Regression>(
      regress(std::vector{terms[0], terms[4]}, sample.y, Constant::none)));
}

BOOST_AUTO_TEST_CASE(as_many_readings_as_coefficients_are_too_few) {
  const std::vector<TermColumn> terms{{1, 2, 4}, {1, 4, 9}};
  const TermColumn y{1, 2, 3};
  BOOST_TEST(std::get<TooFewReadings>(regress(terms, y, Constant::fitted)).needed == 4u);
  BOOST_TEST(std::holds_alternative<Regression>(regress(terms, y, Constant::none)));
  BOOST_CHECK_THROW(regress({}, y, Constant::fitted), quantity::BrokenPromise);
  const std::vector<TermColumn> bad{{1, 2, std::nan("")}};
  BOOST_CHECK_THROW(regress(bad, y, Constant::fitted), quantity::BrokenPromise);
  const std::vector<TermColumn> uneven{{1, 2}};
  BOOST_CHECK_THROW(regress(uneven, y, Constant::fitted), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
