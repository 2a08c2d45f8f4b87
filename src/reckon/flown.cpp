#include "reckon/flown.h"

#include <algorithm>
#include <utility>

#include "quantity/expect.h"

namespace reckon {

namespace {

// Meters show tenths, and clocks are written in minutes: nearer than this they do not differ.
constexpr quantity::Hours a_tenth = quantity::Hours::of(360);

std::optional<quantity::Hours> by_clock(const logbook::Said& said, const logbook::Flew& flew) {
  if (!flew.took_off || !flew.landed) return std::nullopt;
  const std::int64_t minutes =
      quantity::utc_minute(said.day, *flew.landed) - quantity::utc_minute(said.day, *flew.took_off);
  const quantity::Hours between = quantity::Hours::of(minutes * 60);
  return between.is_negative() ? between + a_day : between;
}

// Between the first take-off and the last landing of several flights lies time on the ground.
bool is_one_flight(const Use& use) { return !use.flew->since && use.flights() <= 1; }

quantity::Hours by_source_meter(const Use& use, quantity::Hours typed) {
  if (!use.source.meter) return typed;
  const logbook::MeterRun* run = run_of(use, *use.source.meter);
  return run == nullptr ? typed : std::max(typed, run->to - run->from);
}

// The source rules; where another figure differs, the larger counts (design 4).
quantity::Hours hours_of_flight(const Use& use) {
  const quantity::Hours counted = by_source_meter(use, use.flew->hours);
  const auto clock = by_clock(*use.said, *use.flew);
  if (!clock || !is_one_flight(use)) return counted;
  if (use.source.is_clock || use.flew->by_clock) return std::max(counted, *clock);
  return *clock - counted >= a_tenth ? *clock : counted;
}

const std::vector<logbook::MeterRun> no_runs;

// What an entry states of one counter.
struct CountStated {
  std::optional<quantity::Cycles> here;        // at the spot's own place
  std::optional<quantity::Cycles> everywhere;  // without a place
  std::optional<quantity::Cycles> elsewhere;   // the largest at any one place
};

void add(std::optional<quantity::Cycles>& sum, quantity::Cycles amount) {
  sum = sum.value_or(quantity::Cycles{}) + amount;
}

CountStated stated_in(const Use& use, const logbook::Counter& counter, const Spot& spot) {
  CountStated stated;
  const auto take = [&](const logbook::Count& count,
                        const std::optional<logbook::PlaceName>& place) {
    if (!(count.counter == counter)) return;
    if (!place) return add(stated.everywhere, count.amount);
    if (place == spot.place) return add(stated.here, count.amount);
    stated.elsewhere = std::max(stated.elsewhere.value_or(count.amount), count.amount);
  };
  if (use.flew != nullptr) {
    for (const logbook::CountAt& at : use.flew->counts) take(at.count, at.place);
  }
  const auto* counts = use.ran ? &use.ran->counts : use.tried ? &use.tried->counts : nullptr;
  const auto* place = use.ran ? &use.ran->place : use.tried ? &use.tried->place : nullptr;
  if (counts != nullptr) {
    for (const logbook::Count& count : *counts) take(count, *place);
  }
  return stated;
}

Amount exactly(quantity::Cycles cycles) { return {cycles.count(), Sureness::exact}; }
constexpr Amount at_least_none{0, Sureness::at_least};

// Whether the engine of another place was run or tried by itself: it says nothing about this one.
bool is_run_elsewhere(const Use& use, const Spot& spot) {
  const logbook::PlaceName& place = use.ran ? use.ran->place : use.tried->place;
  return spot.is_engine_place && place != spot.place;
}

// What stands for a counter that the entry does not state. Landings are at least the flights;
// starts and cycles of a flight were there, nobody wrote how many; all else did not happen.
Amount not_stated(const Use& use, const logbook::Counter& counter, const Spot& spot) {
  if (use.unaccounted != nullptr) return at_least_none;
  const quantity::Cycles flights = quantity::whole_cycles(use.flights());
  const bool is_start = counter.kind == logbook::CounterKind::starts;
  if (use.flew == nullptr) {
    return is_start && !is_run_elsewhere(use, spot) ? at_least_none : Amount{};
  }
  if (counter.kind == logbook::CounterKind::flights) return exactly(flights);
  if (counter.kind == logbook::CounterKind::landings) return {flights.count(), Sureness::at_least};
  return is_start || takes_fractions(counter) ? at_least_none : Amount{};
}

// The airframe, and what is fitted to no engine place, has no starts of its own. With one engine
// they are that engine's; with more, at least the most that any one of them made.
Amount on_airframe(const CountStated& stated, const logbook::Counter& counter, const Spot& spot) {
  const quantity::Cycles most = std::max(stated.everywhere.value_or(quantity::Cycles{}),
                                         stated.elsewhere.value_or(quantity::Cycles{}));
  const bool is_one_engine = spot.engine_places == nullptr || spot.engine_places->size() <= 1;
  const bool is_start = counter.kind == logbook::CounterKind::starts;
  if (is_one_engine || (!is_start && !stated.elsewhere)) return exactly(most);
  return {most.count(), Sureness::at_least};
}

}  // namespace

void Sources::add(quantity::Day day, const logbook::CountsHours& counts) {
  Source source;
  source.is_clock = std::holds_alternative<logbook::ByClock>(counts.source);
  if (!source.is_clock) source.meter = std::get<logbook::MeterName>(counts.source);
  source.factor = counts.factor.value_or(quantity::factor_one);
  const auto after =
      std::find_if(from_.begin(), from_.end(), [&](const From& from) { return day < from.day; });
  from_.insert(after, {day, source});
}

Source Sources::on(quantity::Day day) const {
  Source source;
  for (const From& from : from_) {
    if (from.day <= day) source = from.source;
  }
  return source;
}

std::vector<Source> Sources::within(quantity::Day first, quantity::Day last) const {
  std::vector<Source> sources{on(first)};
  for (const From& from : from_) {
    if (first < from.day && from.day <= last) sources.push_back(from.source);
  }
  return sources;
}

quantity::Day Use::first_day() const {
  return flew != nullptr && flew->since ? std::min(*flew->since, day()) : day();
}

std::int64_t Use::flights() const {
  if (flew == nullptr) return 0;
  std::int64_t stated = -1;
  for (const logbook::CountAt& at : flew->counts) {
    if (at.count.counter.kind != logbook::CounterKind::flights) continue;
    stated = std::max(stated, quantity::ceiling_divide(at.count.amount.count(), 1000));
  }
  return stated < 0 ? 1 : stated;
}

const std::vector<logbook::MeterRun>& Use::meters() const {
  if (flew != nullptr) return flew->meters;
  if (ran != nullptr) return ran->meters;
  return unaccounted != nullptr ? unaccounted->meters : no_runs;
}

std::optional<logbook::Aircraft> aircraft_used(const logbook::Fact& fact) {
  if (const auto* flew = std::get_if<logbook::Flew>(&fact)) return flew->aircraft;
  if (const auto* ran = std::get_if<logbook::Ran>(&fact)) return ran->aircraft;
  if (const auto* tried = std::get_if<logbook::Tried>(&fact)) return tried->aircraft;
  if (const auto* lost = std::get_if<logbook::Unaccounted>(&fact)) return lost->aircraft;
  return std::nullopt;
}

namespace {

Use use_by(const logbook::Said& said, const Source& source) {
  Use use;
  use.said = &said;
  use.source = source;
  use.flew = std::get_if<logbook::Flew>(&said.fact);
  use.ran = std::get_if<logbook::Ran>(&said.fact);
  use.tried = std::get_if<logbook::Tried>(&said.fact);
  use.unaccounted = std::get_if<logbook::Unaccounted>(&said.fact);
  EXPECT(use.flew || use.ran || use.tried || use.unaccounted);
  if (use.flew != nullptr) use.raw = hours_of_flight(use);
  if (use.unaccounted != nullptr) use.raw = by_source_meter(use, use.unaccounted->hours);
  return use;
}

}  // namespace

Use use_of(const logbook::Said& said, const Sources& sources) {
  Use use = use_by(said, sources.on(said.day));
  for (const Source& source : sources.within(use.first_day(), use.day())) {
    Use other = use_by(said, source);
    if (service(use, use.raw) < service(other, other.raw)) use = std::move(other);
  }
  return use;
}

const logbook::MeterRun* run_of(const Use& use, const logbook::MeterName& meter) {
  for (const logbook::MeterRun& run : use.meters()) {
    if (run.meter == meter) return &run;
  }
  return nullptr;
}

quantity::ServiceHours service(const Use& use, quantity::Hours raw) {
  const bool is_timed_apart = use.flew != nullptr && use.flew->by_clock && use.source.meter;
  return raw *
         (is_timed_apart ? std::max(use.source.factor, quantity::factor_one) : use.source.factor);
}

Amount hours_used(const Use& use, const Spot& spot) {
  quantity::Hours raw = use.raw;
  if (use.flew != nullptr && spot.place) {
    for (const logbook::HoursAt& at : use.flew->hours_at) {
      if (at.place == spot.place) raw = at.hours;
    }
  }
  return {service(use, raw).count(), Sureness::exact};
}

Amount meter_used(const Use& use, const logbook::MeterName& meter) {
  if (const logbook::MeterRun* run = run_of(use, meter)) {
    return {quantity::service_hours(run->to - run->from).count(), Sureness::exact};
  }
  const Amount raw{quantity::service_hours(use.raw).count(), Sureness::exact};
  if (use.source.meter == meter || use.tried != nullptr) return raw;
  return {raw.value, Sureness::at_least};
}

Amount count_used(const Use& use, const logbook::Counter& counter, const Spot& spot) {
  const CountStated stated = stated_in(use, counter, spot);
  if (stated.here) return exactly(*stated.here);
  const bool is_start = counter.kind == logbook::CounterKind::starts;
  if (spot.is_engine_place || (spot.place && !is_start)) {
    return stated.everywhere ? exactly(*stated.everywhere) : not_stated(use, counter, spot);
  }
  if (stated.everywhere || stated.elsewhere) return on_airframe(stated, counter, spot);
  return not_stated(use, counter, spot);
}

bool states_at(const Use& use, const logbook::Counter& counter, const Spot& spot) {
  const CountStated stated = stated_in(use, counter, spot);
  return stated.here || stated.everywhere;
}

bool states(const Use& use, const logbook::Counter& counter) {
  const CountStated stated = stated_in(use, counter, Spot{});
  return stated.here || stated.everywhere || stated.elsewhere;
}

}  // namespace reckon
