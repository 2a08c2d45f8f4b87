#include "reckon/models_on.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace reckon {
namespace {

// Things stand inside one another at most so deep; a circle in the record ends here.
constexpr int most_hosts = 32;
constexpr Mark before_all{Day::of(-1'000'000), 0};

// A host, at any depth, and until when; no end: still.
struct HostUntil {
  logbook::Thing host;
  std::optional<Mark> to;
};
using HostsUntil = std::vector<HostUntil>;

struct TimeInside {
  Mark from;
  std::optional<Mark> to;
};

std::optional<TimeInside> overlap(const TimeInside& span, const Stay& stay) {
  TimeInside both{std::max(span.from, stay.from), span.to};
  if (stay.to) both.to = both.to ? std::min(*both.to, *stay.to) : stay.to;
  if (both.to && !(both.from < *both.to)) return std::nullopt;
  return both;
}

struct HostSearch {
  const Histories& histories;
  HostsUntil& found;
};

void add_hosts(const HostSearch& search, const logbook::Thing& thing, const TimeInside& span,
               int depth) {
  if (depth == most_hosts) return;
  for (const Stay& stay : search.histories.stays(thing)) {
    const auto both = overlap(span, stay);
    if (!both) continue;
    search.found.push_back({stay.host, both->to});
    add_hosts(search, stay.host, *both, depth + 1);
  }
}

// An engine and an aircraft are in themselves for good.
HostsUntil hosts_of(const Histories& histories, const logbook::Thing& thing) {
  HostsUntil found{{thing, std::nullopt}};
  add_hosts({histories, found}, thing, {before_all, std::nullopt}, 0);
  return found;
}

// The hosts of a kind in which it is, else those which it left last.
template <class Kind>
HostsUntil now_or_last(const HostsUntil& hosts) {
  HostsUntil of_kind;
  for (const HostUntil& one : hosts) {
    if (std::holds_alternative<Kind>(one.host)) of_kind.push_back(one);
  }
  const auto ends_before = [](const HostUntil& a, const HostUntil& b) {
    return a.to && (!b.to || *a.to < *b.to);
  };
  const auto last = std::max_element(of_kind.begin(), of_kind.end(), ends_before);
  if (last == of_kind.end()) return of_kind;
  const HostUntil newest = *last;
  std::erase_if(of_kind, [&](const HostUntil& one) { return ends_before(one, newest); });
  return of_kind;
}

std::vector<logbook::Thing> things_of(const HostsUntil& hosts) {
  std::vector<logbook::Thing> things;
  for (const HostUntil& one : hosts) things.push_back(one.host);
  return things;
}

// Models of one kind of host.
struct OfKind {
  std::set<logbook::ModelName> models;
  bool is_known = false;
};

template <class Kind>
OfKind models_of(const Histories& histories, const std::vector<logbook::Thing>& hosts) {
  OfKind found;
  bool are_all_known = true;
  for (const logbook::Thing& host : hosts) {
    if (!std::holds_alternative<Kind>(host)) continue;
    const auto model = histories.model_of(host);
    if (model) found.models.insert(*model);
    are_all_known = are_all_known && model.has_value();
  }
  found.is_known = are_all_known && !found.models.empty();
  return found;
}

}  // namespace

ModelsOn models_on(const Histories& histories, const std::vector<logbook::Thing>& hosts) {
  OfKind engines = models_of<logbook::Engine>(histories, hosts);
  OfKind aircraft = models_of<logbook::Aircraft>(histories, hosts);
  return {std::move(engines.models), std::move(aircraft.models), engines.is_known,
          aircraft.is_known};
}

ModelsOn models_now_or_last(const Histories& histories, const logbook::Thing& thing) {
  const HostsUntil hosts = hosts_of(histories, thing);
  std::vector<logbook::Thing> last = things_of(now_or_last<logbook::Engine>(hosts));
  const std::vector<logbook::Thing> aircraft = things_of(now_or_last<logbook::Aircraft>(hosts));
  last.insert(last.end(), aircraft.begin(), aircraft.end());
  return models_on(histories, last);
}

ModelsOn models_ever_on(const Histories& histories, const logbook::Thing& thing) {
  return models_on(histories, things_of(hosts_of(histories, thing)));
}

bool is_on(const ModelsOn& on, const logbook::ModelName& model) {
  return on.engines.contains(model) || on.aircraft.contains(model);
}

bool may_be_on(const Histories& histories, const ModelsOn& on, const logbook::ModelName& model) {
  if (is_on(on, model)) return true;
  const Bearers bearers = histories.bearers_of(model);
  const bool may_be_aircrafts = bearers.aircraft || !bearers.engines;
  return (bearers.engines && !on.is_engine_known) || (may_be_aircrafts && !on.is_aircraft_known);
}

}  // namespace reckon
