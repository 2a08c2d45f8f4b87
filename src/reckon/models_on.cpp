#include "reckon/models_on.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace reckon {

namespace {

// Things stand inside one another at most so deep; a circle in the record ends here.
constexpr int most_hosts = 32;
constexpr Day earliest_day = Day::of(-1'000'000);

// A host, at any depth, and until when; no end: still.
struct HostUntil {
  logbook::Thing host;
  std::optional<Day> to;
};
using HostsUntil = std::vector<HostUntil>;

struct DaysInside {
  Day from;
  std::optional<Day> to;
};

std::optional<DaysInside> overlap(const DaysInside& span, const Stay& stay) {
  DaysInside both{std::max(span.from, stay.from.day), span.to};
  if (stay.to) both.to = both.to ? std::min(*both.to, stay.to->day) : stay.to->day;
  if (both.to && *both.to < both.from) return std::nullopt;
  return both;
}

struct HostSearch {
  const Histories& histories;
  HostsUntil& found;
};

void add_hosts(const HostSearch& search, const logbook::Thing& thing, const DaysInside& span,
               int depth) {
  if (depth == most_hosts) return;
  for (const Stay& stay : search.histories.stays(thing)) {
    const auto both = overlap(span, stay);
    if (!both) continue;
    search.found.push_back({stay.host, both->to});
    add_hosts(search, stay.host, *both, depth + 1);
  }
}

HostsUntil hosts_of(const Histories& histories, const logbook::Thing& thing) {
  HostsUntil found;
  add_hosts({histories, found}, thing, {earliest_day, std::nullopt}, 0);
  return found;
}

template <class Kind>
HostsUntil only(const HostsUntil& hosts) {
  HostsUntil of_kind;
  for (const HostUntil& one : hosts) {
    if (std::holds_alternative<Kind>(one.host)) of_kind.push_back(one);
  }
  return of_kind;
}

// The hosts in which it is, else those which it left last.
HostsUntil now_or_last(HostsUntil hosts) {
  const auto ends_before = [](const HostUntil& a, const HostUntil& b) {
    return a.to && (!b.to || *a.to < *b.to);
  };
  const auto last = std::max_element(hosts.begin(), hosts.end(), ends_before);
  if (last == hosts.end()) return hosts;
  const HostUntil newest = *last;
  std::erase_if(hosts, [&](const HostUntil& one) { return ends_before(one, newest); });
  return hosts;
}

template <class Kind>
bool is_borne_by_any(const Histories& histories, const logbook::ModelName& model) {
  const auto& things = histories.things();
  return std::any_of(things.begin(), things.end(), [&](const logbook::Thing& thing) {
    return std::holds_alternative<Kind>(thing) && histories.model_of(thing) == model;
  });
}

template <class Kind>
bool is_held_by(const Histories& histories, const HostsUntil& hosts,
                const logbook::ModelName& model) {
  const HostsUntil at = now_or_last(only<Kind>(hosts));
  return at.empty() || std::any_of(at.begin(), at.end(), [&](const HostUntil& one) {
           const auto its = histories.model_of(one.host);
           return !its || *its == model;
         });
}

}  // namespace

ModelsBeenOn models_been_on(const Histories& histories, const logbook::Thing& thing) {
  ModelsBeenOn found;
  for (const HostUntil& one : hosts_of(histories, thing)) {
    const auto model = histories.model_of(one.host);
    if (!model) continue;
    const bool is_aircraft = std::holds_alternative<logbook::Aircraft>(one.host);
    (is_aircraft ? found.aircraft : found.engines).insert(*model);
  }
  return found;
}

OnModel on_model(const Histories& histories, const logbook::Thing& thing,
                 const logbook::ModelName& model) {
  const bool is_engines = is_borne_by_any<logbook::Engine>(histories, model);
  const bool is_aircrafts = is_borne_by_any<logbook::Aircraft>(histories, model);
  if (!is_engines && !is_aircrafts) return OnModel::no_such_model;
  const HostsUntil hosts = hosts_of(histories, thing);
  const bool holds = (is_engines && is_held_by<logbook::Engine>(histories, hosts, model)) ||
                     (is_aircrafts && is_held_by<logbook::Aircraft>(histories, hosts, model));
  return holds ? OnModel::holds : OnModel::holds_not;
}

}  // namespace reckon
