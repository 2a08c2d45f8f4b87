#include "reckon/trend/chart.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "quantity/expect.h"

namespace reckon::trend {

namespace {

using Places = std::array<std::size_t, 3>;  // on each axis, which of its values

std::array<double, 3> figures_of(const ChartPlace& place) {
  return {place.torque, place.pressure_altitude, place.outside};
}

ChartPlace place_of(const Chart& chart, const Places& at) {
  return {chart.axes[0][at[0]], chart.axes[1][at[1]], chart.axes[2][at[2]]};
}

std::size_t index_of(const Chart& chart, const Places& at) {
  return (at[0] * chart.axes[1].size() + at[1]) * chart.axes[2].size() + at[2];
}

// The two values of an axis about a figure, and how much the higher one weighs; on a value itself
// the two are one, and nothing beyond it has a say.
struct Bracket {
  std::size_t lower;
  std::size_t upper;
  double upper_weight;
};

Bracket bracket(const std::vector<double>& axis, double figure) {
  const auto above = std::lower_bound(axis.begin(), axis.end(), figure);
  const auto upper = static_cast<std::size_t>(above - axis.begin());
  if (axis[upper] == figure) return {upper, upper, 0.0};
  const double low = axis[upper - 1];
  return {upper - 1, upper, (figure - low) / (axis[upper] - low)};
}

std::optional<AxisOutside> outside_of(const std::vector<double>& axis, double figure,
                                      ChartAxis name) {
  if (figure < axis.front()) return AxisOutside{name, figure, axis.front() - figure, axis.front()};
  if (figure > axis.back()) return AxisOutside{name, figure, figure - axis.back(), axis.back()};
  return std::nullopt;
}

std::vector<AxisOutside> all_outside(const Chart& chart, const std::array<double, 3>& figures) {
  constexpr std::array names{ChartAxis::torque, ChartAxis::pressure_altitude,
                             ChartAxis::outside_air};
  std::vector<AxisOutside> outside;
  for (std::size_t axis = 0; axis < names.size(); ++axis) {
    const auto out = outside_of(chart.axes[axis], figures[axis], names[axis]);
    if (out) outside.push_back(*out);
  }
  return outside;
}

struct Corner {
  Places at;
  double weight;
};

// The corners that weigh anything, one to eight.
std::vector<Corner> corners_about(const Chart& chart, const std::array<double, 3>& figures) {
  std::vector<Corner> corners{{{0, 0, 0}, 1.0}};
  for (std::size_t axis = 0; axis < figures.size(); ++axis) {
    const Bracket about = bracket(chart.axes[axis], figures[axis]);
    std::vector<Corner> split;
    for (Corner corner : corners) {
      corner.at[axis] = about.lower;
      const double weight = corner.weight;
      corner.weight = weight * (1.0 - about.upper_weight);
      split.push_back(corner);
      if (about.lower == about.upper) continue;
      corner.at[axis] = about.upper;
      corner.weight = weight * about.upper_weight;
      split.push_back(corner);
    }
    corners = std::move(split);
  }
  return corners;
}

using Key = std::tuple<double, double, double>;

struct Gathered {
  std::map<Key, double> values;
  std::optional<SamePlaceTwice> twice;
};

void gather(Gathered& gathered, const ChartPlace& place, double value) {
  for (const double figure : figures_of(place)) EXPECT(std::isfinite(figure));
  EXPECT(std::isfinite(value));
  const Key key{place.torque, place.pressure_altitude, place.outside};
  const auto [found, is_new] = gathered.values.try_emplace(key, value);
  if (is_new || found->second == value || gathered.twice) return;
  gathered.twice =
      SamePlaceTwice{place, std::min(value, found->second), std::max(value, found->second)};
}

Gathered gathered_from(std::span<const ChartRow> rows) {
  Gathered gathered;
  for (const ChartRow& row : rows) {
    for (const ChartRow::Allowed& allowed : row.allowed) {
      gather(gathered, {allowed.torque, row.pressure_altitude, row.outside}, allowed.value);
    }
  }
  return gathered;
}

std::size_t place_on(const std::vector<double>& axis, double figure) {
  return static_cast<std::size_t>(std::lower_bound(axis.begin(), axis.end(), figure) -
                                  axis.begin());
}

}  // namespace

std::variant<Chart, ChartFault> make_chart(std::span<const ChartRow> rows) {
  const Gathered gathered = gathered_from(rows);
  if (gathered.twice) return ChartFault(*gathered.twice);
  if (gathered.values.empty()) return ChartFault(NoPoints{});
  std::array<std::set<double>, 3> seen;
  for (const auto& [key, value] : gathered.values) {
    seen[0].insert(std::get<0>(key));
    seen[1].insert(std::get<1>(key));
    seen[2].insert(std::get<2>(key));
  }
  Chart chart;
  for (std::size_t axis = 0; axis < seen.size(); ++axis) {
    chart.axes[axis].assign(seen[axis].begin(), seen[axis].end());
  }
  chart.values.resize(seen[0].size() * seen[1].size() * seen[2].size());
  for (const auto& [key, value] : gathered.values) {
    const Places at{place_on(chart.axes[0], std::get<0>(key)),
                    place_on(chart.axes[1], std::get<1>(key)),
                    place_on(chart.axes[2], std::get<2>(key))};
    chart.values[index_of(chart, at)] = value;
  }
  return chart;
}

ChartAnswer allowed_at(const Chart& chart, const ChartPlace& place) {
  const std::array<double, 3> figures = figures_of(place);
  for (const double figure : figures) EXPECT(std::isfinite(figure));
  OutsideChart outside{all_outside(chart, figures)};
  if (!outside.axes.empty()) return outside;
  double sum = 0.0;
  ChartHole hole;
  for (const Corner& corner : corners_about(chart, figures)) {
    const std::optional<double>& value = chart.values[index_of(chart, corner.at)];
    if (value) sum += corner.weight * *value;
    if (!value) hole.missing.push_back(place_of(chart, corner.at));
  }
  if (!hole.missing.empty()) return hole;
  return sum;
}

}  // namespace reckon::trend
