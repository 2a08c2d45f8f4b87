#include "reckon/trend/segments.h"

#include <algorithm>

#include "reckon/trend/doubles.h"

namespace reckon::trend {

namespace {

// Before everything on record.
const Mark long_ago{quantity::Day::of(-100000), 0};

// What was done between two readings: the newest that begins a segment, and all washes after it.
struct Between {
  const Event* begins = nullptr;
  std::vector<const Event*> washes;
};

Between between(const std::vector<Event>& events, const Mark& after, const Mark& up_to) {
  Between found;
  for (const Event& event : events) {
    if (!(after < event.mark && event.mark <= up_to)) continue;
    if (std::holds_alternative<Washed>(event.done)) {
      found.washes.push_back(&event);
    } else {
      found = {&event, {}};
    }
  }
  return found;
}

Segment begin_segment(const Event* cause, Day day) {
  Segment segment;
  segment.began = cause != nullptr ? cause->mark.day : day;
  if (cause != nullptr) segment.beginning = std::get<Beginning>(cause->done);
  return segment;
}

void add_washes(const std::vector<const Event*>& washes, Segment& segment) {
  for (const Event* wash : washes) {
    segment.washes.push_back({*wash->entry, wash->mark.day, wash->hours, {}});
  }
}

bool is_held_otherwise(const std::string& a, const std::string& b) {
  return !a.empty() && !b.empty() && a != b;
}

}  // namespace

std::vector<Event> events_of(const Histories& histories, const Standing& standing,
                             const logbook::Engine& engine) {
  std::vector<Event> events;
  for (const Stay& stay : histories.stays(engine)) {
    events.push_back({stay.from, Beginning::fitted, stay.fitted, {}});
  }
  for (const StandingFact& fact : standing.facts) {
    const auto done = done_to(*fact.said, engine);
    // An overhaul that does not count begins nothing anew: a loss before it is still told.
    if (done && fact.is_counted)
      events.push_back({histories.mark_of(fact.root), *done, fact.root, {}});
  }
  for (Event& event : events) {
    const Figure hours = histories.total(engine, service_clock, event.mark).figure;
    if (!hours.is_unknown()) event.hours = in_hours(hours);
  }
  std::stable_sort(events.begin(), events.end(),
                   [](const Event& a, const Event& b) { return a.mark < b.mark; });
  return events;
}

std::vector<Segment> cut(const std::vector<PlacedPoint>& points, const std::vector<Event>& events,
                         const End& end) {
  std::vector<Segment> segments;
  const PlacedPoint* before = nullptr;
  const auto begin_if_needed = [&](Between& done, const std::string& held_against, Day day) {
    const bool is_other =
        before != nullptr && is_held_otherwise(before->held_against, held_against);
    if (!segments.empty() && done.begins == nullptr && !is_other) return;
    segments.push_back(begin_segment(done.begins, day));
    if (done.begins == nullptr && is_other) segments.back().beginning = Beginning::limit_changed;
    done.washes.clear();  // nothing to measure them against
  };
  for (const PlacedPoint& now : points) {
    Between done = between(events, before != nullptr ? before->mark : long_ago, now.mark);
    begin_if_needed(done, now.held_against, now.point.day);
    Segment& segment = segments.back();
    add_washes(done.washes, segment);
    segment.points.push_back(now.point);
    segment.points.back().level = segment.washes.size();
    before = &now;
  }
  if (before == nullptr) return segments;
  Between done = between(events, before->mark, end.mark);
  begin_if_needed(done, end.held_against, end.mark.day);
  add_washes(done.washes, segments.back());
  return segments;
}

}  // namespace reckon::trend
