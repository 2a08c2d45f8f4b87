#include "reckon/trend/margins.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "reckon/trend/model_rules.h"

namespace reckon::trend {

namespace {

using logbook::CheckKind;
using SeriesKey = std::pair<logbook::Engine, CheckKind>;

constexpr double seconds_an_hour = 3600.0;

// Thousandths of a second to hours, tenths of a degree to degrees: the one place.
double in_hours(const Figure& figure) {
  return static_cast<double>(figure.hours().count()) / (1000.0 * seconds_an_hour);
}
double in_degrees(quantity::Margin margin) { return static_cast<double>(margin.count()) / 10.0; }

quantity::Decimal to_tenths(double value) {
  return quantity::Decimal::of(100 * std::llround(value * 10.0));
}

// The engine that was in the place when the reading was taken.
std::optional<logbook::Engine> engine_in(const Histories& histories, const logbook::Reading& taken,
                                         const Mark& mark) {
  for (const logbook::Thing& thing : histories.things()) {
    const auto* engine = std::get_if<logbook::Engine>(&thing);
    if (engine == nullptr) continue;
    const auto stay = histories.stay_at(thing, mark);
    if (stay && stay->host == logbook::Thing(taken.aircraft) && stay->place == taken.place) {
      return *engine;
    }
  }
  return std::nullopt;
}

bool is_on(const std::optional<logbook::Switch>& state) { return state == logbook::Switch::on; }

Flag flag_of(const logbook::Reading& taken, const std::optional<LimitInForce>& limit) {
  if (!taken.temperature) return Flag::no_temperature;
  if (!limit) return Flag::no_limit;
  if (is_on(taken.bleed) || is_on(taken.anti_ice)) return Flag::bleed_on;
  return Flag::counted;
}

// A point with what decides to which segment it belongs.
struct Placed {
  MarginPoint point;
  Mark mark;
  std::optional<LimitInForce> limit;
};

Placed place(const Histories& histories, const StandingFact& fact, const logbook::Engine& engine,
             const std::vector<TemperatureRule>& rules) {
  const auto& taken = std::get<logbook::Reading>(fact.said->fact);
  Placed placed;
  placed.mark = histories.mark_of(fact.root);
  placed.limit = limit_in_force(rules, engine.model, taken.check, fact.said->day);
  placed.point.entry = fact.root;
  placed.point.day = fact.said->day;
  placed.point.engine_hours = histories.total(engine, service_clock, placed.mark).figure;
  placed.point.flag = flag_of(taken, placed.limit);
  if (taken.temperature && placed.limit) {
    placed.point.margin = placed.limit->limit - *taken.temperature;
  }
  return placed;
}

// Something that was done to the engine, after which a new segment begins.
struct Break {
  Mark mark;
  Beginning beginning = Beginning::first_reading;
  std::optional<logbook::EntryId> entry;
};

std::vector<Break> breaks_of(const Histories& histories, const Standing& standing,
                             const logbook::Engine& engine) {
  std::vector<Break> breaks;
  for (const Stay& stay : histories.stays(engine)) {
    breaks.push_back({stay.from, Beginning::fitted, stay.fitted});
  }
  for (const StandingFact& fact : standing.facts) {
    const auto beginning = event_of(*fact.said, engine);
    if (beginning) breaks.push_back({histories.mark_of(fact.root), *beginning, fact.root});
  }
  std::stable_sort(breaks.begin(), breaks.end(),
                   [](const Break& a, const Break& b) { return a.mark < b.mark; });
  return breaks;
}

// The newest break between two readings, if there is one.
const Break* break_between(const std::vector<Break>& breaks, const Mark& after, const Mark& up_to) {
  const Break* found = nullptr;
  for (const Break& one : breaks) {
    if (after < one.mark && one.mark <= up_to) found = &one;
  }
  return found;
}

Segment begin_segment(const Break* cause, const Placed& first) {
  Segment segment;
  segment.began = cause != nullptr ? cause->mark.day : first.point.day;
  if (cause != nullptr) {
    segment.beginning = cause->beginning;
    segment.begun_by = cause->entry;
  }
  return segment;
}

bool has_another_limit(const Placed& a, const Placed& b) {
  return a.limit && b.limit && !(a.limit->entry == b.limit->entry);
}

std::vector<Segment> cut(const std::vector<Placed>& placed, const std::vector<Break>& breaks) {
  std::vector<Segment> segments;
  const Placed* before = nullptr;
  for (const Placed& now : placed) {
    const Mark after = before != nullptr ? before->mark : Mark{quantity::Day::of(-100000), 0};
    const Break* cause = break_between(breaks, after, now.mark);
    const bool limit_changed = before != nullptr && has_another_limit(*before, now);
    if (segments.empty() || cause != nullptr || limit_changed) {
      segments.push_back(begin_segment(cause, now));
      if (cause == nullptr && limit_changed) segments.back().beginning = Beginning::limit_changed;
    }
    segments.back().points.push_back(now.point);
    before = &now;
  }
  return segments;
}

void grade(Segment& segment, double serial_correlation) {
  std::vector<Point> points;
  std::vector<logbook::EntryId> entries;
  for (const MarginPoint& point : segment.points) {
    if (point.flag != Flag::counted) continue;
    points.push_back({in_hours(point.engine_hours), in_degrees(point.margin)});
    entries.push_back(point.entry);
  }
  segment.finding = grade_points(points, serial_correlation);
  if (!segment.finding.evidence) return;
  const Evidence& evidence = *segment.finding.evidence;
  segment.slope =
      SlopeText{to_tenths(100.0 * evidence.line.slope), to_tenths(100.0 * evidence.slope.low),
                to_tenths(100.0 * evidence.slope.high)};
  const double last =
      std::max_element(points.begin(), points.end(), [](Point a, Point b) { return a.x < b.x; })->x;
  segment.now = quantity::Margin::of(std::llround(10.0 * value_at(evidence.line, last)));
  for (const std::size_t place : evidence.deciding) segment.deciding.push_back(entries[place]);
}

}  // namespace

std::vector<Series> margin_series(const Histories& histories, const Standing& standing) {
  const auto rules = temperature_rules(standing);
  std::map<SeriesKey, std::vector<Placed>> readings;
  for (const StandingFact& fact : standing.facts) {
    const auto* taken = std::get_if<logbook::Reading>(&fact.said->fact);
    if (taken == nullptr) continue;
    const auto engine = engine_in(histories, *taken, histories.mark_of(fact.root));
    if (!engine) continue;
    readings[{*engine, taken->check}].push_back(place(histories, fact, *engine, rules));
  }
  std::vector<Series> all;
  for (auto& [key, placed] : readings) {
    std::stable_sort(placed.begin(), placed.end(),
                     [](const Placed& a, const Placed& b) { return a.mark < b.mark; });
    Series series = settings_in_force(standing, key.first.model, histories.as_of());
    series.engine = key.first;
    series.check = key.second;
    series.segments = cut(placed, breaks_of(histories, standing, key.first));
    const double correlation = static_cast<double>(series.serial_correlation.count()) / 1000.0;
    for (Segment& segment : series.segments) grade(segment, correlation);
    all.push_back(std::move(series));
  }
  return all;
}

}  // namespace reckon::trend
