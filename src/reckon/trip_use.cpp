#include "reckon/trip_use.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/mixed_limit.h"
#include "reckon/side.h"
#include "reckon/source_factor.h"

namespace reckon {
namespace {

using logbook::CounterKind;

constexpr std::int64_t flights_looked_back = 50;

std::optional<quantity::Hours> gap_of(const View& view, const logbook::Aircraft& aircraft,
                                      const Trip& trip) {
  if (!trip.meter) return std::nullopt;
  const auto book = view.histories.meter(aircraft, trip.meter->meter, view.now());
  if (!book) return std::nullopt;
  return trip.meter->reading - book->reading;
}

quantity::ServiceHours on_clock(const TripView& trip, const Side& side, quantity::Hours flown) {
  return counts_service_hours(side) ? flown * trip.factor : quantity::service_hours(flown);
}

quantity::Cycles events(const Trip& trip, logbook::CountedEvent event) {
  switch (event) {
    case logbook::CountedEvent::start:
      return trip.starts;
    case logbook::CountedEvent::landing:
      return trip.landings;
    case logbook::CountedEvent::flight:
      break;
  }
  return trip.flights;
}

quantity::Cycles by_rules(const Trip& trip,
                          const std::vector<const logbook::CountingRule*>& rules) {
  quantity::Cycles sum;
  for (const logbook::CountingRule* rule : rules) {
    for (const logbook::Each& each : rule->each) sum += each.weight * events(trip, each.event);
  }
  return sum;
}

std::int64_t whole(quantity::Cycles count) { return quantity::ceiling_divide(count.count(), 1000); }

quantity::Cycles cycles_needed(const TripView& trip, const Item& item,
                               const logbook::Counter& counter) {
  const auto rules = trip.view.histories.rules_now(item.thing, counter);
  const bool is_own = counter.kind == CounterKind::own;
  quantity::Cycles full = is_own ? quantity::Cycles{} : trip.trip.flights;
  if (!rules.empty()) full = by_rules(trip.trip, rules);
  const auto dearest = trip.view.histories.dearest_flight(item.thing, counter, flights_looked_back);
  if (!dearest || dearest->is_unknown()) return full;
  return std::max(full, dearest->count() * whole(trip.trip.flights));
}

// Each engine is started; an airframe that counts starts counts those of all its engines.
quantity::Cycles starts_needed(const TripView& trip, const Item& item) {
  if (!std::holds_alternative<logbook::Aircraft>(item.thing)) return trip.trip.starts;
  std::int64_t engines = 0;
  for (const logbook::Thing& thing : aboard(trip.view.histories, trip.aircraft)) {
    if (std::holds_alternative<logbook::Engine>(thing)) ++engines;
  }
  return trip.trip.starts * std::max<std::int64_t>(engines, 1);
}

quantity::Cycles count_needed(const TripView& trip, const Item& item,
                              const logbook::Counter& counter) {
  switch (counter.kind) {
    case CounterKind::starts:
      return starts_needed(trip, item);
    case CounterKind::flights:
      return trip.trip.flights;
    case CounterKind::landings:
      return trip.trip.landings;
    case CounterKind::lifts:
    case CounterKind::hoist_lifts:
    case CounterKind::run_on_landings:
      return {};
    case CounterKind::transitions:
    case CounterKind::torque_events:
    case CounterKind::gas_generator_cycles:
    case CounterKind::power_turbine_cycles:
    case CounterKind::full_cycles:
    case CounterKind::abbreviated_cycles:
    case CounterKind::cycles:
    case CounterKind::own:
      break;
  }
  return cycles_needed(trip, item, counter);
}

quantity::Days days_needed(const TripView& trip) {
  const Day as_of = trip.view.as_of();
  return std::max(trip.trip.by.value_or(as_of) - as_of, quantity::Days{});
}

bool stops(const Figure& left, const Figure& need, bool is_calendar, bool when_exceeding) {
  if (left.raw() < 0 || left.raw() < need.raw()) return true;
  return left.raw() == 0 && !is_calendar && !when_exceeding;
}

// Another meter may run longer than the flight: as much as on the dearest of the last flights.
quantity::ServiceHours least_on_other_meter(const TripView& trip, const Item& item,
                                            const Side& side) {
  const auto dearest =
      trip.view.histories.dearest_flight(item.thing, side.clock, flights_looked_back);
  if (!dearest || dearest->is_unknown()) return {};
  return dearest->hours() * whole(trip.trip.flights);
}

// What a side leaves to fly, as the pilot logs it.
std::optional<quantity::Hours> bound(const TripView& trip, const Item& item, const Side& side) {
  if (side.is_calendar || !std::holds_alternative<HoursClock>(side.clock) || !side.left) {
    return std::nullopt;
  }
  const std::int64_t left = std::max<std::int64_t>(left_after_gap(trip, item, side).raw(), 0);
  const bool is_other_meter = !counts_service_hours(side);
  if (is_other_meter && left < least_on_other_meter(trip, item, side).count()) {
    return quantity::Hours{};
  }
  const std::int64_t factor = is_other_meter ? quantity::factor_one.count() : trip.factor.count();
  return quantity::Hours::of(quantity::floor_divide(left, factor));
}

// What the trip would use of each counter of a mixed limit.
std::vector<std::int64_t> needed_of_mix(const TripView& trip, const Item& item) {
  std::vector<std::int64_t> needs;
  for (const Side& side : item.sides) {
    needs.push_back(count_needed(trip, item, std::get<logbook::Counter>(side.clock)).count());
  }
  return needs;
}

bool stops_mix(const TripView& trip, const Item& item) {
  const bool is_known = std::all_of(item.sides.begin(), item.sides.end(),
                                    [](const Side& side) { return side.left.has_value(); });
  if (!is_known) return false;
  const Figure& left = *item.sides[static_cast<std::size_t>(item.governs)].left;
  if (left.raw() < 0 || (left.raw() == 0 && !item.when_exceeding)) return true;
  return life_used_with(item, needed_of_mix(trip, item)).is_more_than_all();
}

// As much of the one counter as would use the same part of the life.
Figure left_of_mix_alone(const Item& item, const Side& side) {
  return quantity::Cycles::of(life_used_with(item, {}).left_of(side.limit->raw()));
}

Figure needed_of_mix_alone(const TripView& trip, const Item& item, const Side& side) {
  const std::vector<std::int64_t> needs = needed_of_mix(trip, item);
  std::vector<UsedOf> parts;
  for (std::size_t i = 0; i < item.sides.size(); ++i) {
    parts.push_back({needs[i], item.sides[i].limit->raw()});
  }
  return quantity::Cycles::of(side.limit->raw() - LifeUsed(parts).left_of(side.limit->raw()));
}

}  // namespace

TripView trip_view(const View& view, const logbook::Aircraft& aircraft, const Trip& trip) {
  return {view, aircraft, trip, source_factor(view.standing, aircraft),
          gap_of(view, aircraft, trip)};
}

Figure needed(const TripView& trip, const Item& item, const Side& side) {
  if (item.mixed != nullptr) return needed_of_mix_alone(trip, item, side);
  if (side.is_calendar) return days_needed(trip);
  if (const auto* counter = std::get_if<logbook::Counter>(&side.clock)) {
    return count_needed(trip, item, *counter);
  }
  const auto need = on_clock(trip, side, trip.trip.hours.value_or(quantity::Hours{}));
  if (counts_service_hours(side)) return need;
  return std::max(need, least_on_other_meter(trip, item, side));
}

Figure left_after_gap(const TripView& trip, const Item& item, const Side& side) {
  if (item.mixed != nullptr) return left_of_mix_alone(item, side);
  const bool counts_hours = !side.is_calendar && std::holds_alternative<HoursClock>(side.clock);
  if (!counts_hours || !trip.gap || trip.gap->is_negative()) return *side.left;
  return *side.left - Figure(on_clock(trip, side, *trip.gap));
}

bool stops(const TripView& trip, const Item& item, const Side& side) {
  return stops(left_after_gap(trip, item, side), needed(trip, item, side), side.is_calendar,
               item.when_exceeding);
}

std::optional<int> stopping_side(const TripView& trip, const Item& item) {
  if (item.mixed != nullptr) {
    return stops_mix(trip, item) ? std::optional(item.governs) : std::nullopt;
  }
  std::optional<int> first;
  for (std::size_t i = 0; i < item.sides.size(); ++i) {
    const bool is_stopping = item.sides[i].left && stops(trip, item, item.sides[i]);
    if (!is_stopping && item.combine == logbook::Combine::latest) return std::nullopt;
    if (!is_stopping) continue;
    if (!first || static_cast<int>(i) == item.governs) first = static_cast<int>(i);
  }
  return first;
}

std::optional<quantity::Hours> longest_trip(const TripView& trip, const Item& item) {
  std::optional<quantity::Hours> longest;
  const bool is_latest = item.combine == logbook::Combine::latest;
  for (const Side& side : item.sides) {
    const std::optional<quantity::Hours> here = bound(trip, item, side);
    if (!here) {
      if (is_latest && side.left && !stops(trip, item, side)) return std::nullopt;
      continue;
    }
    if (!longest) longest = here;
    longest = is_latest ? std::max(*longest, *here) : std::min(*longest, *here);
  }
  return longest;
}

}  // namespace reckon
