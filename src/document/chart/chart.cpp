#include "document/chart/chart.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "document/chart/decimal.h"
#include "document/key.h"

namespace document {
namespace {

constexpr double farthest = 1e12;
constexpr std::size_t most_digits = 15;  // what every reader of JSON keeps of a decimal number

// Half of the last digit, and what a double itself rounds.
double tolerance_of(const ChartValue& value) {
  const std::size_t point = value.exact.find('.');
  const auto places = point == value.exact.npos ? 0 : value.exact.size() - point - 1;
  return 0.5 * std::pow(10.0, -static_cast<double>(places)) + 1e-9 * std::abs(value.at);
}

bool is_sound(const ChartValue& value) {
  if (!std::isfinite(value.at) || std::abs(value.at) > farthest) return false;
  const std::optional<double> said = value_of(value.exact);
  if (!said || value.exact.size() > most_digits + 2) return false;
  return std::abs(*said - value.at) <= tolerance_of(value);
}

// Finds faults and says each with the place of the chart in front.
class Finder {
 public:
  explicit Finder(const Chart& chart) : chart_(chart) {}

  void require(bool is_right, const std::string& fault) {
    if (!is_right) found_.push_back("chart \"" + chart_.key + "\" " + fault);
  }

  void require_value(const ChartValue& value) {
    require(is_sound(value), "has \"" + value.exact + "\", which is not the number that is drawn");
  }

  void require_place(const ChartPlace& place) {
    require_value(place.x);
    require_value(place.y);
  }

  void find_in_words();
  void find_in_points();
  void find_in_lines();
  void find_in_band(const ChartBand& band);
  void find_in_marks();

  const std::vector<std::string>& found() const { return found_; }

 private:
  bool is_over_points(double from, double to) const { return from >= first_ && to <= last_; }

  const Chart& chart_;
  double first_ = 0;
  double last_ = 0;
  std::vector<std::string> found_;
};

void Finder::find_in_words() {
  require(is_key(chart_.key), "has no proper key");
  require(!chart_.title.empty(), "has no title");
  require(!chart_.alt.empty(), "has no sentence that says what it shows");
  const bool is_named =
      !chart_.points_name.empty() && !chart_.x.name.empty() && !chart_.y.name.empty();
  require(is_named, "has an axis or points without a name");
}

void Finder::find_in_points() {
  require(!chart_.points.empty(), "has no points");
  if (chart_.points.empty()) return;
  first_ = last_ = chart_.points.front().place.x.at;
  for (const ChartPoint& point : chart_.points) {
    require_place(point.place);
    first_ = std::min(first_, point.place.x.at);
    last_ = std::max(last_, point.place.x.at);
    const bool is_flagged = point.mark == ChartMark::flagged;
    require(is_flagged != point.reason.empty(), "has a flag without a reason, or the other way");
  }
}

void Finder::find_in_lines() {
  for (const ChartLine& line : chart_.lines) {
    require_place(line.from);
    require_place(line.to);
    require(line.from.x.at <= line.to.x.at, "has a line that runs backward");
    if (line.reach == ChartReach::ahead) {
      last_ = std::max(last_, line.to.x.at);
    } else {
      require(is_over_points(line.from.x.at, line.to.x.at), "has a line outside its points");
    }
  }
}

void Finder::find_in_band(const ChartBand& band) {
  require(!band.label.empty(), "has a band without a label");
  require(band.samples.size() >= 2, "has a band of less than two samples");
  const ChartBandAt* before = nullptr;
  for (const ChartBandAt& at : band.samples) {
    require_value(at.x);
    require_value(at.lower);
    require_value(at.upper);
    require(at.lower.at <= at.upper.at, "has a band upside down");
    require(is_over_points(at.x.at, at.x.at), "has a band outside its points and lines");
    require(before == nullptr || before->x.at < at.x.at, "has a band that runs backward");
    before = &at;
  }
}

void Finder::find_in_marks() {
  for (const ChartBand& band : chart_.bands) find_in_band(band);
  for (const ChartLevel& level : chart_.levels) {
    require_value(level.y);
    require(!level.label.empty(), "has a level without a label");
  }
  for (const ChartEvent& event : chart_.events) {
    require_value(event.x);
    require(!event.label.empty(), "has an event without a label");
  }
}

}  // namespace

ChartValue chart_value(double at, std::size_t places) {
  if (!std::isfinite(at)) return {at, ""};
  return {at, fixed(at, places)};
}

std::string_view word(ChartMark mark) { return mark == ChartMark::counted ? "counted" : "flagged"; }

std::string axis_words(const ChartAxis& axis) {
  return axis.unit.empty() ? axis.name : axis.name + ", " + axis.unit;
}

std::string figure(const ChartValue& value, const ChartAxis& axis) {
  return axis.unit.empty() ? value.exact : value.exact + " " + axis.unit;
}

std::vector<std::string> faults(const Chart& chart) {
  Finder finder(chart);
  finder.find_in_words();
  finder.find_in_points();
  finder.find_in_lines();
  finder.find_in_marks();
  return finder.found();
}

}  // namespace document
