#include "reckon/trend/margins.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "reckon/aboard.h"
#include "reckon/forecast.h"
#include "reckon/trend/doubles.h"
#include "reckon/trend/margin_point.h"
#include "reckon/trend/segments.h"

namespace reckon::trend {

namespace {

using SeriesKey = std::pair<logbook::Engine, logbook::CheckKind>;

PlacedPoint place(const Histories& histories, const StandingFact& fact,
                  const logbook::Engine& engine, const ModelRules& rules) {
  const auto& reading = std::get<logbook::Reading>(fact.said->fact);
  const Day day = fact.said->day;
  const auto allowed = rules.allowed(engine.model, reading.check, day);
  PlacedPoint placed;
  placed.mark = histories.mark_of(fact.root);
  if (allowed) placed.held_against = allowed->key;
  placed.point.entry = fact.root;
  placed.point.day = day;
  placed.point.engine_hours = histories.total(engine, service_clock, placed.mark).figure;
  if (!placed.point.engine_hours.is_unknown()) {
    placed.point.hours = in_hours(placed.point.engine_hours);
  }
  work_out({reading, allowed, rules.settings(engine.model, day)}, placed.point);
  if (placed.point.engine_hours.is_unknown()) placed.point.flag = Flag::hours_unknown;
  return placed;
}

SlopeText slope_text(double slope, const Interval& interval) {
  return {to_tenths(100.0 * slope), to_tenths(100.0 * interval.low),
          to_tenths(100.0 * interval.high)};
}

// The counted points by level, with the entries in the same order.
struct Counted {
  std::vector<Group> groups;
  std::vector<logbook::EntryId> entries;
  std::vector<std::size_t> levels;  // that have points, as graded
};

Counted counted_in(const Segment& segment) {
  Counted counted;
  counted.groups.resize(segment.washes.size() + 1);
  for (const MarginPoint& point : segment.points) {
    if (point.flag != Flag::counted) continue;
    if (counted.groups[point.level].empty()) counted.levels.push_back(point.level);
    counted.groups[point.level].push_back({point.hours, point.degrees});
    counted.entries.push_back(point.entry);
  }
  return counted;
}

// A gain lies between two levels that have points; washes between them cannot be told apart.
void tell_gains(const Evidence& evidence, const Counted& counted, Segment& segment) {
  for (std::size_t i = 0; i < evidence.gains.size(); ++i) {
    if (counted.levels[i + 1] - counted.levels[i] != 1) continue;
    const Gain& gain = evidence.gains[i];
    segment.washes[counted.levels[i]].figures = {to_tenths(gain.gain), to_tenths(gain.between.low),
                                                 to_tenths(gain.between.high)};
  }
}

Interval span_of(const std::vector<Group>& groups) {
  constexpr double endless = std::numeric_limits<double>::infinity();
  Interval span{endless, -endless};
  for (const Group& group : groups) {
    for (const Point& point : group) {
      span.low = std::min(span.low, point.x);
      span.high = std::max(span.high, point.x);
    }
  }
  return span;
}

void tell_last_three(const Evidence& evidence, const Group& newest, Segment& segment) {
  constexpr std::size_t three = 3;
  if (newest.size() < 2 * three) return;
  double sum = 0.0;
  int beyond = 0;
  for (std::size_t i = newest.size() - three; i < newest.size(); ++i) {
    const double off = newest[i].y - value_at(evidence.line, newest[i].x);
    sum += off;
    if (std::abs(off) > 2.0 * evidence.line.scatter) beyond += off > 0.0 ? 1 : -1;
  }
  if (std::abs(beyond) == 3) segment.last_three_off = to_tenths(sum / 3.0);
}

void grade(double serial_correlation, Segment& segment) {
  const Counted counted = counted_in(segment);
  segment.finding = grade_points(counted.groups, serial_correlation);
  if (!segment.finding.evidence) return;
  const Evidence& evidence = *segment.finding.evidence;
  segment.slope = slope_text(evidence.line.slope, evidence.slope);
  if (evidence.theil_sen.interval) {
    segment.theil_sen = slope_text(evidence.theil_sen.slope, *evidence.theil_sen.interval);
  }
  segment.kendall = KendallText{evidence.mann_kendall.s, to_thousandths(evidence.mann_kendall.p)};
  segment.now = to_margin(value_at(evidence.line, span_of(counted.groups).high));
  for (const std::size_t place : evidence.deciding) {
    segment.deciding.push_back(counted.entries[place]);
  }
  tell_gains(evidence, counted, segment);
  tell_last_three(evidence, counted.groups[counted.levels.back()], segment);
}

// Where the engine stands now, from which the hours to the floor are counted.
struct Now {
  std::optional<double> hours;
  Day day;
  UseRate rate;
};

ReachText reach_text(const FloorReach& found, double hours, const Now& now) {
  // A line without scatter is reached at a whole hour but for the last bits of a double.
  constexpr double hair = 1e-6;
  ReachText text;
  text.early_hours =
      static_cast<std::int64_t>(std::floor(std::max(0.0, found.early - hours + hair)));
  text.late_hours =
      static_cast<std::int64_t>(std::ceil(std::max(0.0, found.line.between.high - hours - hair)));
  text.reading_earlier_hours = static_cast<std::int64_t>(std::ceil(found.reading_earlier - hair));
  if (now.rate.from != UseRate::From::none) {
    constexpr std::int64_t an_hour = 3600 * 1000;
    text.early_day =
        day_reached(quantity::ServiceHours::of(text.early_hours * an_hour), now.rate, now.day);
  }
  return text;
}

void reach_floor(const Series& series, const Now& now, Segment& segment) {
  const auto& evidence = segment.finding.evidence;
  if (!evidence || !series.floor) return;
  const auto reach =
      time_to_floor(evidence->line, in_degrees(*series.floor), span_of(counted_in(segment).groups),
                    in_units(series.serial_correlation));
  if (const auto* why = std::get_if<NoReach>(&reach)) {
    segment.no_reach = *why;
  } else if (!now.hours) {
    segment.hours_now_unknown = true;
  } else {
    segment.reach = reach_text(std::get<FloorReach>(reach), *now.hours, now);
  }
}

void tell_last(const Now& now, Segment& segment) {
  for (const MarginPoint& point : segment.points) {
    if (!point.margin) continue;
    segment.last = LastReading{point.entry, point.day, *point.margin, {}};
    if (!now.hours || point.engine_hours.is_unknown()) continue;
    segment.last->hours_since =
        static_cast<std::int64_t>(std::ceil(std::max(0.0, *now.hours - point.hours) - 1e-6));
  }
}

class Reckoning {
 public:
  Reckoning(const Histories& histories, const Standing& standing,
            const std::set<logbook::Engine>* only)
      : histories_(histories), standing_(standing), only_(only), rules_(standing) {}

  std::vector<Series> all() {
    gather();
    std::vector<Series> all;
    for (auto& [key, points] : readings_) all.push_back(series_of(key, points));
    return all;
  }

 private:
  void gather() {
    for (const StandingFact& fact : standing_.facts) {
      const auto* taken = std::get_if<logbook::Reading>(&fact.said->fact);
      if (taken == nullptr) continue;
      const auto engine = engine_in(histories_, {taken->aircraft, taken->place, taken->serial},
                                    histories_.mark_of(fact.root));
      if (!engine || (only_ != nullptr && !only_->contains(*engine))) continue;
      readings_[{*engine, taken->check}].push_back(place(histories_, fact, *engine, rules_));
    }
  }

  Series series_of(const SeriesKey& key, std::vector<PlacedPoint>& points) const {
    std::stable_sort(points.begin(), points.end(),
                     [](const PlacedPoint& a, const PlacedPoint& b) { return a.mark < b.mark; });
    const ModelSettings settings = rules_.settings(key.first.model, histories_.as_of());
    Series series{key.first,
                  key.second,
                  settings.floor,
                  settings.serial_correlation,
                  settings.is_correlation_stated,
                  {}};
    const auto allowed = rules_.allowed(key.first.model, key.second, histories_.as_of());
    series.segments = cut(points, events_of(histories_, standing_, key.first),
                          {histories_.now(), allowed ? allowed->key : std::string()});
    const Now now = now_of(key.first);
    for (Segment& segment : series.segments) {
      grade(in_units(series.serial_correlation), segment);
      tell_last(now, segment);
    }
    reach_floor(series, now, series.segments.back());
    return series;
  }

  Now now_of(const logbook::Engine& engine) const {
    Now now;
    now.day = histories_.as_of();
    const Figure hours = histories_.total(engine, service_clock, histories_.now()).figure;
    if (!hours.is_unknown()) now.hours = in_hours(hours);
    const auto aircraft = histories_.aircraft_now(logbook::Thing(engine));
    if (aircraft) now.rate = use_rate(histories_, standing_, *aircraft);
    return now;
  }

  const Histories& histories_;
  const Standing& standing_;
  const std::set<logbook::Engine>* only_;  // null: all
  ModelRules rules_;
  std::map<SeriesKey, std::vector<PlacedPoint>> readings_;
};

}  // namespace

std::vector<logbook::EntryId> readings_of_no_engine(const Histories& histories,
                                                    const Standing& standing) {
  std::vector<logbook::EntryId> entries;
  for (const StandingFact& fact : standing.facts) {
    const auto* taken = std::get_if<logbook::Reading>(&fact.said->fact);
    if (taken == nullptr) continue;
    const Mark mark = histories.mark_of(fact.root);
    if (!engine_in(histories, {taken->aircraft, taken->place, taken->serial}, mark)) {
      entries.push_back(fact.chain.back());
    }
  }
  return entries;
}

std::vector<Series> margin_series(const Histories& histories, const Standing& standing) {
  return Reckoning(histories, standing, nullptr).all();
}

std::vector<Series> margin_series(const Histories& histories, const Standing& standing,
                                  const std::set<logbook::Engine>& only) {
  return Reckoning(histories, standing, &only).all();
}

}  // namespace reckon::trend
