#include "reckon/whereabouts.h"

#include <algorithm>
#include <iterator>

namespace reckon {

void Whereabouts::take(const logbook::Fact& fact) {
  if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) {
    homes_[fitted->thing].push_back({fitted->host, fitted->place});
  }
  if (const auto* removed = std::get_if<logbook::Removed>(&fact)) {
    std::erase(homes_[removed->thing], Home{removed->host, removed->place});
  }
}

// The thing itself first. A thing that is said to lie within itself ends the way.
std::vector<logbook::Thing> Whereabouts::way_up(const logbook::Thing& thing) const {
  std::vector<logbook::Thing> way{thing};
  while (true) {
    const auto found = homes_.find(way.back());
    if (found == homes_.end() || found->second.empty()) return way;
    const logbook::Thing& host = found->second.back().host;
    if (std::find(way.begin(), way.end(), host) != way.end()) return way;
    way.push_back(host);
  }
}

std::optional<logbook::Aircraft> Whereabouts::aircraft_of(const logbook::Thing& thing) const {
  const std::vector<logbook::Thing> way = way_up(thing);
  const auto* aircraft = std::get_if<logbook::Aircraft>(&way.back());
  return aircraft ? std::optional(*aircraft) : std::nullopt;
}

std::optional<logbook::Engine> Whereabouts::engine_of(const logbook::Thing& thing) const {
  for (const logbook::Thing& up : way_up(thing)) {
    if (const auto* engine = std::get_if<logbook::Engine>(&up)) return *engine;
  }
  std::optional<logbook::Engine> only;
  for (const auto& [fitted, homes] : homes_) {
    const auto* engine = std::get_if<logbook::Engine>(&fitted);
    const bool is_here = engine != nullptr && !homes.empty() && homes.back().host == thing;
    if (!is_here) continue;
    if (only) return std::nullopt;
    only = *engine;
  }
  return only;
}

}  // namespace reckon
