#include "reckon/fittings.h"

#include <algorithm>
#include <utility>

#include "reckon/question.h"

namespace reckon {

namespace {

const std::vector<Stay> no_stays;
const std::vector<Ride> no_rides;
const std::vector<logbook::Thing> no_things;

bool is_in(const Stay& stay, const logbook::Thing& host, const logbook::PlaceName& place) {
  return !stay.to && stay.host == host && stay.place == place;
}

std::optional<Mark> earlier(const std::optional<Mark>& a, const std::optional<Mark>& b) {
  if (!a || !b) return a ? a : b;
  return std::min(*a, *b);
}

}  // namespace

Fittings::Fittings(const Timeline& timeline) : timeline_(timeline) {
  for (const WorkEvent& event : timeline.works) {
    const logbook::Fact& fact = event.fact->said->fact;
    if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) fit(event, *fitted);
    if (const auto* removed = std::get_if<logbook::Removed>(&fact)) remove(event, *removed);
  }
  for (const auto& [thing, stays] : stays_) ride(thing);
}

// Fitted where it already is: the first fitting holds, since a new one would restart its count.
void Fittings::fit(const WorkEvent& event, const logbook::Fitted& fitted) {
  std::vector<Stay>& stays = stays_[fitted.thing];
  const auto same = std::find_if(stays.begin(), stays.end(), [&](const Stay& stay) {
    return is_in(stay, fitted.host, fitted.place);
  });
  if (same != stays.end()) {
    questions_.push_back(make_question("fitted twice", {same->fitted, event.fact->root},
                                       {fitted.thing, fitted.host}));
    return;
  }
  Stay stay;
  stay.thing = fitted.thing;
  stay.host = fitted.host;
  stay.place = fitted.place;
  stay.from = event.mark;
  stay.fitted = event.fact->root;
  ask_about_second_fitting(stay);
  stays.push_back(std::move(stay));
  std::vector<logbook::Thing>& inside = inside_[fitted.host];
  if (std::find(inside.begin(), inside.end(), fitted.thing) == inside.end()) {
    inside.push_back(fitted.thing);
  }
}

// Until a person decides, its life runs on in both places, and both things in one place use.
void Fittings::ask_about_second_fitting(const Stay& stay) {
  for (const Stay& other : stays_[stay.thing]) {
    if (other.to) continue;
    questions_.push_back(make_question("serial in two places", {other.fitted, stay.fitted},
                                       {stay.thing, other.host, stay.host}));
  }
  const auto inside = inside_.find(stay.host);
  if (inside == inside_.end()) return;
  for (const logbook::Thing& thing : inside->second) {
    for (const Stay& other : stays_[thing]) {
      if (thing == stay.thing || !is_in(other, stay.host, stay.place)) continue;
      questions_.push_back(make_question("two in one place", {other.fitted, stay.fitted},
                                         {stay.thing, other.thing, stay.host}));
    }
  }
}

void Fittings::remove(const WorkEvent& event, const logbook::Removed& removed) {
  std::vector<Stay>& stays = stays_[removed.thing];
  const auto stay = std::find_if(stays.begin(), stays.end(), [&](const Stay& open) {
    return is_in(open, removed.host, removed.place);
  });
  if (stay == stays.end()) {
    questions_.push_back(make_question("removed where it was not fitted", {event.fact->root},
                                       {removed.thing, removed.host}));
    return;
  }
  stay->to = event.mark;
  stay->removed = event.fact->root;
}

// The host's rides are worked out first. The empty rides put in at once end a ring of hosts.
void Fittings::ride(const logbook::Thing& thing) {
  if (rides_.contains(thing)) return;
  rides_[thing];
  const auto found = stays_.find(thing);
  if (found == stays_.end()) return;
  std::vector<Ride> rides;
  for (std::size_t at = 0; at < found->second.size(); ++at) {
    ride_along(found->second[at], at, rides);
  }
  rides_[thing] = std::move(rides);
}

void Fittings::ride_along(const Stay& stay, std::size_t number, std::vector<Ride>& rides) {
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&stay.host)) {
    const Ledger& ledger = timeline_.ledgers.at(*aircraft);
    rides.push_back({&ledger, stay.place, stay.from, stay.to, number, {stay.host}});
    return;
  }
  ride(stay.host);
  for (Ride along : this->rides(stay.host)) {
    along.from = std::max(along.from, stay.from);
    along.to = earlier(along.to, stay.to);
    if (along.to && !(along.from < *along.to)) continue;
    along.stay = number;
    along.hosts.insert(along.hosts.begin(), stay.host);
    rides.push_back(std::move(along));
  }
}

const std::vector<Stay>& Fittings::stays(const logbook::Thing& thing) const {
  const auto found = stays_.find(thing);
  return found == stays_.end() ? no_stays : found->second;
}
const std::vector<Ride>& Fittings::rides(const logbook::Thing& thing) const {
  const auto found = rides_.find(thing);
  return found == rides_.end() ? no_rides : found->second;
}
const std::vector<logbook::Thing>& Fittings::ever_in(const logbook::Thing& host) const {
  const auto found = inside_.find(host);
  return found == inside_.end() ? no_things : found->second;
}

}  // namespace reckon
