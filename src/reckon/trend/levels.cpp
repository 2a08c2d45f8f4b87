#include "reckon/trend/levels.h"

#include <cmath>

#include "quantity/expect.h"

namespace reckon::trend {

namespace {

double variance_share(const Line& from, const Line& to) {
  return 1.0 / static_cast<double>(from.n) + 1.0 / static_cast<double>(to.n) +
         squared(to.x_mean - from.x_mean) / to.sxx;
}

Gain gain_between(const Line& from, const Line& to, Certainty certainty) {
  Gain gain{};
  gain.gain = (to.y_mean - from.y_mean) - to.slope * (to.x_mean - from.x_mean);
  gain.error = to.scatter * std::sqrt(variance_share(from, to));
  const double half = errors_wide(to, certainty) * gain.error;
  gain.between = {gain.gain - half, gain.gain + half};
  return gain;
}

// The sums of squares and products about each group's own means, added up.
struct Within {
  double sxx = 0.0;
  double syy = 0.0;
  double sxy = 0.0;
};

Within within(Groups groups, const std::vector<Point>& means) {
  Within sums;
  for (std::size_t place = 0; place < groups.size(); ++place) {
    const Point mean = means[place];
    for (const Point& point : groups[place]) {
      sums.sxx += squared(point.x - mean.x);
      sums.syy += squared(point.y - mean.y);
      sums.sxy += (point.x - mean.x) * (point.y - mean.y);
    }
  }
  return sums;
}

double residual_sum(Groups groups, const std::vector<Point>& means, double slope) {
  double sum = 0.0;
  for (std::size_t place = 0; place < groups.size(); ++place) {
    const Point mean = means[place];
    for (const Point& point : groups[place]) {
      sum += squared(point.y - mean.y - slope * (point.x - mean.x));
    }
  }
  return sum;
}

std::vector<Point> means_of(Groups groups) {
  std::vector<Point> means;
  for (const Group& group : groups) {
    EXPECT(!group.empty());
    for (const Point& point : group) EXPECT(std::isfinite(point.x) && std::isfinite(point.y));
    means.push_back(mean_of(group));
  }
  return means;
}

}  // namespace

LevelledFit fit_levels(Groups groups) {
  EXPECT(!groups.empty());
  const std::vector<Point> means = means_of(groups);
  LevelledLine line{points_in(groups), {}};
  if (line.n < groups.size() + 2) return Refusal::fewer_than_three_points;
  const Within sums = within(groups, means);
  if (!(sums.sxx > 0.0)) return Refusal::no_spread_in_x;
  Line common{};
  common.sxx = sums.sxx;
  common.syy = sums.syy;
  common.slope = sums.sxy / sums.sxx;
  common.residual_sum_of_squares = residual_sum(groups, means, common.slope);
  common.degrees_of_freedom = line.n - groups.size() - 1;
  for (std::size_t place = 0; place < groups.size(); ++place) {
    common.n = groups[place].size();
    common.x_mean = means[place].x;
    common.y_mean = means[place].y;
    line.levels.push_back(completed(common));
  }
  return line;
}

std::vector<Gain> gains(const LevelledLine& line, Certainty certainty) {
  std::vector<Gain> all;
  for (std::size_t place = 1; place < line.levels.size(); ++place) {
    all.push_back(gain_between(line.levels[place - 1], line.levels[place], certainty));
  }
  return all;
}

std::vector<std::size_t> deciding_readings(Groups groups, const LevelledLine& line,
                                           Certainty certainty) {
  EXPECT(groups.size() == line.levels.size());
  std::vector<std::size_t> deciding;
  std::size_t before = 0;
  for (std::size_t place = 0; place < groups.size(); ++place) {
    for (const std::size_t one : deciding_readings(groups[place], line.levels[place], certainty)) {
      deciding.push_back(before + one);
    }
    before += groups[place].size();
  }
  return deciding;
}

}  // namespace reckon::trend
