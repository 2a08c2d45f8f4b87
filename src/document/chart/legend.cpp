#include "document/chart/legend.h"

#include <algorithm>
#include <string_view>
#include <utility>

#include "document/chart/geometry.h"

namespace document {
namespace {

std::vector<const ChartEvent*> events_by_x(const Chart& chart) {
  std::vector<const ChartEvent*> events;
  for (const ChartEvent& event : chart.events) events.push_back(&event);
  std::stable_sort(events.begin(), events.end(),
                   [](const ChartEvent* a, const ChartEvent* b) { return a->x.at < b->x.at; });
  return events;
}

// Collects the entries in the order in which they are read.
class Legend {
 public:
  explicit Legend(const Chart& chart) : chart_(chart), covered_(y_extent(chart)) {}

  void add_points();
  void add_line(const ChartLine& line);
  void add_band(const ChartBand& band);
  void add_events();

  // The same words twice would say nothing new, as with the lines of a tile.
  void add(LegendMark mark, std::string words, std::size_t number = 0) {
    const bool is_told = std::any_of(entries_.begin(), entries_.end(), [&](const auto& entry) {
      return number == 0 && entry.mark == mark && entry.words == words;
    });
    if (!is_told) entries_.push_back({mark, number, std::move(words)});
  }

  const std::vector<LegendEntry>& entries() const { return entries_; }

 private:
  struct Flagged {
    std::string_view reason;
    std::size_t count;
    std::string places;
  };

  bool is_tile() const { return chart_.size == ChartSize::tile; }
  std::string told(const ChartPoint& point) const;

  std::string told(const ChartPlace& place) const {
    return figure(place.y, chart_.y) + " at " + figure(place.x, chart_.x);
  }

  std::string told(const ChartBandAt& at) const {
    return at.lower.exact + " to " + figure(at.upper, chart_.y) + " at " + figure(at.x, chart_.x);
  }

  const Chart& chart_;
  Extent covered_;
  std::vector<LegendEntry> entries_;
};

std::string Legend::told(const ChartPoint& point) const {
  const std::string words = told(point.place);
  switch (beyond(covered_, point.place.y.at)) {
    case Beyond::above:
      return words + " (higher than the chart reaches)";
    case Beyond::below:
      return words + " (lower than the chart reaches)";
    case Beyond::inside:
      break;
  }
  return words;
}

void Legend::add_points() {
  std::size_t counted = 0;
  std::vector<Flagged> groups;
  for (const ChartPoint& point : chart_.points) {
    if (point.mark == ChartMark::counted) {
      ++counted;
      continue;
    }
    auto group = std::find_if(groups.begin(), groups.end(),
                              [&](const Flagged& one) { return one.reason == point.reason; });
    if (group == groups.end()) group = groups.insert(group, {point.reason, 0, ""});
    group->places += (group->count++ > 0 ? "; " : "") + told(point);
  }
  const std::string& name = chart_.points_name;
  add(LegendMark::counted, name + " counted: " + std::to_string(counted));
  for (const Flagged& group : groups) {
    const std::string what = is_tile() ? std::to_string(group.count) : group.places;
    add(LegendMark::flagged, name + " flagged, " + std::string(group.reason) + ": " + what);
  }
}

void Legend::add_line(const ChartLine& line) {
  const bool is_fitted = line.reach == ChartReach::fitted;
  std::string words = is_fitted ? "line" : "line ahead of the " + chart_.points_name;
  if (!is_tile()) words += " from " + told(line.from) + " to " + told(line.to);
  add(is_fitted ? LegendMark::line : LegendMark::ahead, words);
}

void Legend::add_band(const ChartBand& band) {
  std::string words = band.label;
  if (!is_tile()) words += ": " + told(band.samples.front()) + ", " + told(band.samples.back());
  add(LegendMark::band, words);
}

void Legend::add_events() {
  std::size_t number = 0;
  for (const ChartEvent* event : events_by_x(chart_)) {
    const std::string words = event->label + ", at " + figure(event->x, chart_.x);
    switch (beside(chart_, *event)) {
      case Beside::inside:
        add(LegendMark::event, words, ++number);
        break;
      case Beside::before:
        add(LegendMark::absent, "before the chart: " + words);
        break;
      case Beside::after:
        add(LegendMark::absent, "after the chart: " + words);
        break;
    }
  }
}

}  // namespace

std::vector<LegendEntry> legend(const Chart& chart) {
  Legend result(chart);
  result.add_points();
  for (const ChartLine& line : chart.lines) result.add_line(line);
  for (const ChartBand& band : chart.bands) result.add_band(band);
  for (const ChartLevel& level : chart.levels) {
    result.add(LegendMark::level, level.label + " " + figure(level.y, chart.y));
  }
  result.add_events();
  return result.entries();
}

std::vector<const ChartEvent*> numbered_events(const Chart& chart) {
  std::vector<const ChartEvent*> events = events_by_x(chart);
  std::erase_if(events,
                [&](const ChartEvent* event) { return beside(chart, *event) != Beside::inside; });
  return events;
}

}  // namespace document
