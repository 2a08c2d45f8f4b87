// tests/reckon/trend/test_points.h: what the trend tests share: series of points, random ones with
// a printed seed, and agreement with a figure as printed.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <random>
#include <variant>
#include <vector>

#include "reckon/trend/line.h"

namespace trend_test {

using reckon::trend::Line;
using reckon::trend::Point;

inline std::vector<Point> series(const std::vector<double>& x, const std::vector<double>& y) {
  std::vector<Point> points;
  for (std::size_t place = 0; place < x.size(); ++place) {
    points.push_back({x[place], y.at(place)});
  }
  return points;
}

// Evenly spaced x from `first` on.
inline std::vector<Point> series(double first, double spacing, const std::vector<double>& y) {
  std::vector<Point> points;
  for (double const value : y) {
    points.push_back({first + spacing * static_cast<double>(points.size()), value});
  }
  return points;
}

inline Line line_of(const std::vector<Point>& points) {
  return std::get<Line>(reckon::trend::fit_line(points));
}

// A figure agrees with a printed one if it is within half of the last printed place.
inline bool is_printed_as(double figure, double printed, int decimals) {
  return std::abs(figure - printed) <= 0.5 * std::pow(10.0, -decimals) * (1.0 + 1e-9);
}

// A new seed each run, printed, so that a failure can be run again with TIMEWORN_SEED.
inline std::mt19937_64 seeded(const char* test) {
  const char* wished = std::getenv("TIMEWORN_SEED");
  const std::uint64_t seed =
      wished != nullptr ? std::strtoull(wished, nullptr, 10) : std::random_device{}();
  std::cout << test << ": seed " << seed << "\n";
  return std::mt19937_64(seed);
}

// A plausible engine: 4 to 40 readings at uneven hours, a slope, and scatter about it.
inline std::vector<Point> random_series(std::mt19937_64& random) {
  std::uniform_int_distribution<int> how_many(4, 40);
  std::uniform_real_distribution<double> gap(0.5, 20.0);
  std::uniform_real_distribution<double> start(0.0, 9000.0);
  std::uniform_real_distribution<double> slope(-0.1, 0.1);
  std::normal_distribution<double> scatter(0.0, 3.0);
  const double first = start(random);
  const double per_hour = slope(random);
  std::vector<Point> points;
  double x = first;
  for (int left = how_many(random); left > 0; --left) {
    points.push_back({x, 40.0 + per_hour * (x - first) + scatter(random)});
    x += gap(random);
  }
  return points;
}

// One engine between washes: so many groups that share a slope, each a little higher than it ended.
inline std::vector<std::vector<Point>> random_groups(std::mt19937_64& random, int groups) {
  std::uniform_real_distribution<double> slope(-0.1, 0.1);
  std::uniform_real_distribution<double> gain(-5.0, 15.0);
  const double per_hour = slope(random);
  double level = 0.0;
  double hours = 0.0;
  std::vector<std::vector<Point>> all;
  for (int left = groups; left > 0; --left) {
    std::vector<Point> points = random_series(random);
    const double first = points.front().x;
    for (Point& point : points) {
      point.x += hours - first;
      point.y += level + per_hour * point.x;
    }
    hours = points.back().x + 5.0;
    level += gain(random);
    all.push_back(points);
  }
  return all;
}

}  // namespace trend_test
