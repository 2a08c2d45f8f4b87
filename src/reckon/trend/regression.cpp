#include "reckon/trend/regression.h"

#include <cmath>
#include <numeric>

#include "quantity/expect.h"

namespace reckon::trend {

namespace {

// What is left of a column of length 1 once the terms before are taken out of it. Below this it is
// rounding, of the sums and of figures as typed.
constexpr double least_left = 1e-10;

double dot(std::span<const double> one, std::span<const double> other) {
  return std::inner_product(one.begin(), one.end(), other.begin(), 0.0);
}

// The mean from the first figure on, so that figures all alike have exactly themselves as mean.
double mean_of_column(std::span<const double> column) {
  double sum = 0.0;
  for (const double figure : column) sum += figure - column.front();
  return column.front() + sum / static_cast<double>(column.size());
}

TermColumn less(std::span<const double> column, double mean) {
  TermColumn result(column.begin(), column.end());
  for (double& figure : result) figure -= mean;
  return result;
}

struct Prepared {
  std::vector<double> means;        // 0 without a constant
  std::vector<TermColumn> columns;  // less their means
  std::vector<double> lengths;      // of these columns
  TermColumn y;                     // less its mean
  double y_mean = 0.0;
};

Prepared prepare(std::span<const TermColumn> terms, std::span<const double> y, Constant constant) {
  const auto middle = [&](std::span<const double> column) {
    return constant == Constant::fitted ? mean_of_column(column) : 0.0;
  };
  Prepared prepared;
  for (const TermColumn& term : terms) {
    prepared.means.push_back(middle(term));
    prepared.columns.push_back(less(term, prepared.means.back()));
    const TermColumn& column = prepared.columns.back();
    prepared.lengths.push_back(std::sqrt(dot(column, column)));
  }
  prepared.y_mean = middle(y);
  prepared.y = less(y, prepared.y_mean);
  return prepared;
}

// Reflects the columns so that the first of them becomes zero below place `from`.
void reflect(std::span<TermColumn> columns, std::size_t from) {
  const TermColumn& first = columns.front();
  TermColumn direction(first.begin() + static_cast<std::ptrdiff_t>(from), first.end());
  const double length = std::sqrt(dot(direction, direction));
  direction.front() += direction.front() < 0.0 ? -length : length;
  const double squared = dot(direction, direction);
  for (TermColumn& column : columns) {
    const std::span<double> part = std::span(column).subspan(from);
    const double turn = 2.0 * dot(direction, part) / squared;
    for (std::size_t row = 0; row < part.size(); ++row) part[row] -= turn * direction[row];
  }
}

// The columns, each of length 1, turned into an upper triangle; y turned with them, as the last.
struct Triangle {
  std::vector<TermColumn> columns;
  std::vector<std::size_t> lost;
};

Triangle triangle_of(const Prepared& prepared) {
  Triangle triangle;
  for (std::size_t place = 0; place < prepared.columns.size(); ++place) {
    triangle.columns.push_back(prepared.columns[place]);
    const double length = prepared.lengths[place];
    if (length == 0.0) continue;
    for (double& figure : triangle.columns.back()) figure /= length;
  }
  triangle.columns.push_back(prepared.y);
  std::size_t row = 0;
  for (std::size_t place = 0; place < prepared.columns.size(); ++place) {
    const std::span<double> left = std::span(triangle.columns[place]).subspan(row);
    if (std::sqrt(dot(left, left)) <= least_left) {
      triangle.lost.push_back(place);
      continue;
    }
    reflect(std::span(triangle.columns).subspan(place), row);
    ++row;
  }
  return triangle;
}

// The solution b of R b = right, from the last to the first.
std::vector<double> solved(const Triangle& triangle, std::span<const double> right) {
  const std::size_t size = triangle.columns.size() - 1;
  std::vector<double> solution(size);
  for (std::size_t place = size; place-- > 0;) {
    double left = right[place];
    for (std::size_t later = place + 1; later < size; ++later) {
      left -= triangle.columns[later][place] * solution[later];
    }
    solution[place] = left / triangle.columns[place][place];
  }
  return solution;
}

// The inverse of the products of the centred terms: of R'R, with the scaling undone.
std::vector<TermColumn> inverse_of(const Triangle& triangle, const std::vector<double>& lengths) {
  const std::size_t size = lengths.size();
  std::vector<TermColumn> of_r;  // column by column of R's own inverse
  for (std::size_t place = 0; place < size; ++place) {
    std::vector<double> unit(size);
    unit[place] = 1.0;
    of_r.push_back(solved(triangle, unit));
  }
  std::vector<TermColumn> inverse(size, TermColumn(size));
  for (std::size_t one = 0; one < size; ++one) {
    for (std::size_t other = 0; other < size; ++other) {
      double sum = 0.0;
      for (const TermColumn& column : of_r) sum += column[one] * column[other];
      inverse[one][other] = sum / lengths[one] / lengths[other];
    }
  }
  return inverse;
}

double residual_sum(const Prepared& prepared, const std::vector<double>& coefficients) {
  TermColumn residuals = prepared.y;
  for (std::size_t term = 0; term < coefficients.size(); ++term) {
    const TermColumn& column = prepared.columns[term];
    for (std::size_t row = 0; row < residuals.size(); ++row) {
      residuals[row] -= coefficients[term] * column[row];
    }
  }
  return dot(residuals, residuals);
}

// Errors, intercept and the share taken up, once coefficients and residuals are known.
void complete(Regression& fit, const Prepared& prepared) {
  fit.scatter =
      std::sqrt(fit.residual_sum_of_squares / static_cast<double>(fit.degrees_of_freedom));
  for (std::size_t term = 0; term < fit.coefficients.size(); ++term) {
    fit.errors.push_back(fit.scatter * std::sqrt(fit.inverse[term][term]));
  }
  if (fit.constant == Constant::fitted) {
    fit.intercept = prepared.y_mean - dot(fit.coefficients, fit.means);
    const std::vector<double> nothing(fit.coefficients.size());
    fit.intercept_error = fit.scatter * std::sqrt(leverage(fit, nothing));
  }
  const double total = dot(prepared.y, prepared.y);
  if (total > 0.0) fit.r2 = 1.0 - fit.residual_sum_of_squares / total;
}

void expect_sound(std::span<const TermColumn> terms, std::span<const double> y) {
  EXPECT(!terms.empty());
  for (const TermColumn& term : terms) {
    EXPECT(term.size() == y.size());
    for (const double figure : term) EXPECT(std::isfinite(figure));
  }
  for (const double figure : y) EXPECT(std::isfinite(figure));
}

}  // namespace

Regressed regress(std::span<const TermColumn> terms, std::span<const double> y, Constant constant) {
  expect_sound(terms, y);
  const std::size_t unknown = terms.size() + (constant == Constant::fitted ? 1 : 0);
  if (y.size() <= unknown) return TooFewReadings{unknown + 1};
  const Prepared prepared = prepare(terms, y, constant);
  const Triangle triangle = triangle_of(prepared);
  if (!triangle.lost.empty()) return RankLoss{triangle.lost};
  Regression fit{};
  fit.n = y.size();
  fit.constant = constant;
  fit.means = prepared.means;
  fit.degrees_of_freedom = fit.n - unknown;
  fit.coefficients = solved(triangle, triangle.columns.back());
  for (std::size_t term = 0; term < terms.size(); ++term) {
    fit.coefficients[term] /= prepared.lengths[term];
  }
  fit.inverse = inverse_of(triangle, prepared.lengths);
  fit.residual_sum_of_squares = residual_sum(prepared, fit.coefficients);
  complete(fit, prepared);
  return fit;
}

double predicted(const Regression& fit, std::span<const double> terms) {
  EXPECT(terms.size() == fit.coefficients.size());
  return fit.intercept + dot(fit.coefficients, terms);
}

double leverage(const Regression& fit, std::span<const double> terms) {
  EXPECT(terms.size() == fit.means.size());
  double share = fit.constant == Constant::fitted ? 1.0 / static_cast<double>(fit.n) : 0.0;
  for (std::size_t one = 0; one < terms.size(); ++one) {
    for (std::size_t other = 0; other < terms.size(); ++other) {
      share += (terms[one] - fit.means[one]) * fit.inverse[one][other] *
               (terms[other] - fit.means[other]);
    }
  }
  return share;
}

}  // namespace reckon::trend
