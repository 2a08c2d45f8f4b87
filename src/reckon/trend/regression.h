// reckon/trend/regression.h: least squares with several terms, such as a start's peak on volts, air
// and count, or a baseline on power. Columns are centred and scaled, then taken apart by
// Householder reflections: normal equations would lose half the digits. Terms that cannot be told
// apart are named, not guessed. Certified figures to hold it against: NIST StRD, sets Longley and
// NoInt1.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace reckon::trend {

using TermColumn = std::vector<double>;  // one figure a reading

enum class Constant { fitted, none };

struct Regression {
  std::size_t n;
  Constant constant;
  double intercept;                  // 0 without a constant
  double intercept_error;            // standard errors are not widened
  std::vector<double> coefficients;  // in the order of the terms
  std::vector<double> errors;
  std::size_t degrees_of_freedom;  // one or more
  double residual_sum_of_squares;
  double scatter;            // one standard deviation of a reading about the fit
  std::optional<double> r2;  // about the mean, or about 0 without a constant; none if y is all that
  // For predictions: the means the terms were taken from, and the inverse of their products.
  std::vector<double> means;
  std::vector<TermColumn> inverse;
};

struct TooFewReadings {
  std::size_t needed;  // one more than there are coefficients
};

// Terms, by place, that follow from the constant and the terms before them: they all moved
// together, and no data like this can tell them apart.
struct RankLoss {
  std::vector<std::size_t> terms;
};

using Regressed = std::variant<Regression, TooFewReadings, RankLoss>;

// y on the terms. Every column is as long as y, there is at least one, and all figures are finite.
Regressed regress(std::span<const TermColumn> terms, std::span<const double> y, Constant constant);

// What the fit says where the terms have these values, one for each term.
double predicted(const Regression& fit, std::span<const double> terms);

// The variance of that value as a share of the scatter squared; a new reading has 1 more.
double leverage(const Regression& fit, std::span<const double> terms);

}  // namespace reckon::trend
