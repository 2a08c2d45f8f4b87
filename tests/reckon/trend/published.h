// tests/reckon/trend/published.h: series that others have published, for several tests.
#pragma once

#include <vector>

#include "reckon/trend/test_points.h"

namespace trend_test {

// Sen 1968, the paper's own example. Its printed list of slopes has mistakes; the answers stand.
inline std::vector<Point> sen() {
  return series({1, 2, 3, 4, 10, 12, 18}, {9, 15, 19, 20, 45, 55, 78});
}

// EPA Unified Guidance 2009, example 17-6. The x are year and month as 89.8 for August 1989: real
// dates would change the slope.
inline std::vector<Point> epa_17_6() {
  return series({89.6, 89.8, 90.1, 90.3, 90.6, 90.8, 91.1, 91.3, 91.6, 91.8, 92.1, 92.6,
                 93.1, 93.6, 94.1, 94.6, 95.1, 95.6, 95.8, 96.1, 96.3, 96.6, 96.8},
                {480, 450, 490, 520, 485, 510, 510, 530, 510, 560, 560, 540,
                 590, 550, 600, 700, 570, 610, 650, 620, 830, 720, 590});
}

// Practice case F9, derived.
inline std::vector<Point> uneven_margins() {
  return series({1204.3, 1212.8, 1221.1, 1230.6, 1238.9, 1247.2, 1256.4, 1265.0, 1273.7, 1282.1,
                 1291.5, 1300.2},
                {41, 43, 40, 42, 39, 41, 40, 38, 40, 37, 39, 38});
}

// Anscombe 1973 (R `anscombe`), sets 1 to 4.
inline std::vector<Point> anscombe(int set) {
  const std::vector<double> x{10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
  if (set == 1)
    return series(x, {8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68});
  if (set == 2)
    return series(x, {9.14, 8.14, 8.74, 8.77, 9.26, 8.10, 6.13, 3.10, 9.13, 7.26, 4.74});
  if (set == 3)
    return series(x, {7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73});
  return series({8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8},
                {6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.50, 5.56, 7.91, 6.89});
}

// Practice case S62, derived: ten readings each 20 h, a wash after the fifth.
inline std::vector<std::vector<Point>> washed() {
  return {series(0, 20, {28, 26, 24, 22, 20}), series(100, 20, {29, 27, 25, 23, 21})};
}

// Points with many equal x, equal y and equal slopes: gauges read in whole degrees, hours in tenths
// or in whole steps.
inline std::vector<Point> tied_series(std::mt19937_64& random, int most) {
  std::uniform_int_distribution<int> how_many(2, most);
  std::uniform_int_distribution<int> kind(0, 3);
  const int of_kind = kind(random);
  const int n = how_many(random);
  std::uniform_int_distribution<int> x_steps(0, of_kind == 0 ? 5 : 4 * n);
  std::uniform_int_distribution<int> y_steps(0, of_kind == 1 ? 3 : 40);
  std::vector<Point> points;
  for (int place = 0; place < n; ++place) {
    const double x = x_steps(random) / 10.0;
    // The last kind lies on one line, but for the rounding of its own slopes.
    const double y = of_kind == 3 ? 30.0 - 0.1 * x : y_steps(random);
    points.push_back({x, y});
  }
  return points;
}

}  // namespace trend_test
