// tests/reckon/trend/second_way.h: the same line by another road: Householder QR of the columns
// (1, x), uncentred, in long double. It shares no formula with the centred sums of the program.
#pragma once

#include <cmath>
#include <cstddef>
#include <vector>

#include "reckon/trend/line.h"

namespace trend_test {

struct QrLine {
  long double intercept;
  long double slope;
  long double residual_sum_of_squares;
  long double scatter;
  // The upper triangle R of (1, x) = Q R.
  long double r11;
  long double r12;
  long double r22;

  // The variance factor of a + b x: the squared length of the solution w of R' w = (1, x)'.
  long double variance_factor(long double constant, long double x) const {
    const long double first = constant / r11;
    const long double second = (x - r12 * first) / r22;
    return first * first + second * second;
  }
  long double slope_error() const { return scatter * std::sqrt(variance_factor(0.0L, 1.0L)); }
  long double intercept_error() const { return scatter * std::sqrt(variance_factor(1.0L, 0.0L)); }
};

using Column = std::vector<long double>;

// Reflects every column so that `pivot` becomes zero below place `from`.
inline void reflect(Column pivot, std::size_t from, std::vector<Column*> columns) {
  long double length = 0.0L;
  for (std::size_t row = from; row < pivot.size(); ++row) length += pivot[row] * pivot[row];
  length = std::sqrt(length);
  pivot[from] += pivot[from] < 0.0L ? -length : length;
  long double squared = 0.0L;
  for (std::size_t row = from; row < pivot.size(); ++row) squared += pivot[row] * pivot[row];
  for (Column* column : columns) {
    long double product = 0.0L;
    for (std::size_t row = from; row < pivot.size(); ++row) product += pivot[row] * (*column)[row];
    for (std::size_t row = from; row < pivot.size(); ++row) {
      (*column)[row] -= 2.0L * product / squared * pivot[row];
    }
  }
}

inline QrLine qr_line(const std::vector<reckon::trend::Point>& points) {
  Column ones;
  Column x;
  Column y;
  for (const auto& point : points) {
    ones.push_back(1.0L);
    x.push_back(static_cast<long double>(point.x));
    y.push_back(static_cast<long double>(point.y));
  }
  reflect(ones, 0, {&ones, &x, &y});
  reflect(x, 1, {&x, &y});
  QrLine line{};
  line.r11 = ones[0];
  line.r12 = x[0];
  line.r22 = x[1];
  line.slope = y[1] / line.r22;
  line.intercept = (y[0] - line.r12 * line.slope) / line.r11;
  for (std::size_t row = 2; row < y.size(); ++row) line.residual_sum_of_squares += y[row] * y[row];
  line.scatter =
      std::sqrt(line.residual_sum_of_squares / (static_cast<long double>(y.size()) - 2.0L));
  return line;
}

// The same road with any number of columns: y = sum of coefficient times column.
struct QrFit {
  std::vector<long double> coefficients;
  long double residual_sum_of_squares;
  std::vector<Column> r;  // r[column][row], upper triangle

  // The variance factor of a sum of coefficients: the squared length of the solution w of R' w = c.
  long double variance_factor(const std::vector<long double>& c) const {
    std::vector<long double> w;
    long double length = 0.0L;
    for (std::size_t place = 0; place < c.size(); ++place) {
      long double left = c[place];
      for (std::size_t row = 0; row < place; ++row) left -= r[place][row] * w[row];
      w.push_back(left / r[place][place]);
      length += w.back() * w.back();
    }
    return length;
  }
};

inline QrFit qr_fit(std::vector<Column> columns, Column y) {
  std::vector<Column*> all;
  for (Column& column : columns) all.push_back(&column);
  all.push_back(&y);
  for (std::size_t place = 0; place < columns.size(); ++place) {
    const std::vector<Column*> rest(all.begin() + static_cast<std::ptrdiff_t>(place), all.end());
    reflect(columns[place], place, rest);
  }
  QrFit fit{std::vector<long double>(columns.size()), 0.0L, columns};
  for (std::size_t place = columns.size(); place-- > 0;) {
    long double left = y[place];
    for (std::size_t later = place + 1; later < columns.size(); ++later) {
      left -= columns[later][place] * fit.coefficients[later];
    }
    fit.coefficients[place] = left / columns[place][place];
  }
  for (std::size_t row = columns.size(); row < y.size(); ++row) {
    fit.residual_sum_of_squares += y[row] * y[row];
  }
  return fit;
}

// One slope and a level for each group: a column of ones in each group, and x last.
inline QrFit qr_levels(const std::vector<std::vector<reckon::trend::Point>>& groups) {
  std::vector<Column> columns(groups.size() + 1);
  Column y;
  for (std::size_t group = 0; group < groups.size(); ++group) {
    for (const auto& point : groups[group]) {
      for (std::size_t place = 0; place < groups.size(); ++place) {
        columns[place].push_back(place == group ? 1.0L : 0.0L);
      }
      columns.back().push_back(static_cast<long double>(point.x));
      y.push_back(static_cast<long double>(point.y));
    }
  }
  return qr_fit(columns, y);
}

}  // namespace trend_test
