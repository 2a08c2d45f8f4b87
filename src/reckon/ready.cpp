#include "reckon/ready.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/conditions.h"
#include "reckon/trip_use.h"

namespace reckon {
namespace {

std::vector<Missing> missing(const Asked& asked, const Book& book) {
  std::vector<Missing> all = missing_of_aircraft(asked);
  for (Missing& more : missing_of_record(asked, book)) all.push_back(std::move(more));
  return all;
}

Obstacle obstacle(const TripView& trip, const Item& item, int side_index) {
  const Side& side = item.sides[static_cast<std::size_t>(side_index)];
  const Figure left = left_after_gap(trip, item, side);
  return {item, side_index, left, needed(trip, item, side), left.raw() < 0};
}

// The items come in order; what is over already stays before what the trip would pass.
void part(const TripView& trip, std::vector<Item> items, Ready& ready) {
  for (Item& item : items) {
    if (const std::optional<int> side = stopping_side(trip, item)) {
      ready.obstacles.push_back(obstacle(trip, item, *side));
    } else {
      ready.next.push_back(std::move(item));
    }
  }
  std::stable_partition(ready.obstacles.begin(), ready.obstacles.end(),
                        [](const Obstacle& found) { return found.is_passed_already; });
}

bool is_blocked_at_no_hours(TripView trip, const std::vector<Item>& items) {
  trip.trip.hours.reset();
  return std::any_of(items.begin(), items.end(),
                     [&](const Item& item) { return stopping_side(trip, item).has_value(); });
}

std::optional<quantity::ServiceHours> allowed(const TripView& trip, const std::vector<Item>& items,
                                              bool is_all_on_record) {
  if (is_blocked_at_no_hours(trip, items)) return quantity::ServiceHours{};
  if (!is_all_on_record) return std::nullopt;
  std::optional<quantity::Hours> least;
  for (const Item& item : items) {
    const std::optional<quantity::Hours> longest = longest_trip(trip, item);
    if (longest && (!least || *longest < *least)) least = longest;
  }
  if (!least) return std::nullopt;
  return quantity::service_hours(*least);
}

std::optional<Day> first_last_legal_day(const std::vector<Item>& items) {
  std::optional<Day> first;
  for (const Item& item : items) {
    if (item.combine == logbook::Combine::latest) continue;
    for (const Side& side : item.sides) {
      if (side.last_legal && (!first || *side.last_legal < *first)) first = side.last_legal;
    }
  }
  return first;
}

std::optional<quantity::ServiceHours> may_be_missing(const View& view,
                                                     const logbook::Aircraft& aircraft) {
  const std::optional<Day> last = view.histories.last_flight(aircraft);
  const UseRate* rate = view.rate_of(aircraft);
  if (!last || *last >= view.as_of() || rate == nullptr) return std::nullopt;
  if (rate->from == UseRate::From::none) return std::nullopt;
  return used_in(*rate, view.as_of() - *last);
}

}  // namespace

Ready ready(const Histories& histories, const Standing& standing, const Asking& asking) {
  const logbook::Aircraft& aircraft = asking.aircraft;
  const View view = view_of(histories, standing, {});
  const std::vector<logbook::Thing> things = aboard(histories, aircraft);
  const std::vector<Item> items = due(histories, standing, aircraft, {});
  const TripView flown = trip_view(view, aircraft, asking.trip);
  Ready ready;
  ready.missing = missing({view, aircraft, things, items}, asking.book);
  part(flown, items, ready);
  if (!ready.obstacles.empty()) {
    ready.answer = Answer::no;
  } else if (ready.missing.empty()) {
    ready.answer = Answer::yes;
  }
  ready.allowed_hours = allowed(flown, items, ready.missing.empty());
  ready.allowed_until = first_last_legal_day(items);
  ready.last_flight = histories.last_flight(aircraft);
  if (flown.gap) ready.gap = quantity::service_hours(*flown.gap);
  ready.may_be_missing = may_be_missing(view, aircraft);
  return ready;
}

}  // namespace reckon
