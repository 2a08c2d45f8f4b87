#include "reckon/aboard.h"

#include <algorithm>

namespace reckon {
namespace {

// Things stand inside one another at most so deep; a circle in the record ends here.
constexpr int deepest = 32;

void add_inside(const Histories& histories, const logbook::Thing& host,
                std::vector<logbook::Thing>& found) {
  for (const Stay& stay : histories.fitted_now(host)) {
    if (std::find(found.begin(), found.end(), stay.thing) != found.end()) continue;
    found.push_back(stay.thing);
    add_inside(histories, stay.thing, found);
  }
}

}  // namespace

std::vector<logbook::Thing> aboard(const Histories& histories, const logbook::Aircraft& aircraft) {
  std::vector<logbook::Thing> found = {aircraft};
  add_inside(histories, aircraft, found);
  return found;
}

std::optional<logbook::Aircraft> aircraft_at(const Histories& histories,
                                             const logbook::Thing& thing, const Mark& mark) {
  logbook::Thing at = thing;
  for (int depth = 0; depth < deepest; ++depth) {
    if (const auto* aircraft = std::get_if<logbook::Aircraft>(&at)) return *aircraft;
    const std::optional<Stay> stay = histories.stay_at(at, mark);
    if (!stay) return std::nullopt;
    at = stay->host;
  }
  return std::nullopt;
}

std::optional<logbook::Engine> engine_at(const Histories& histories, const logbook::Thing& thing,
                                         const Mark& mark) {
  logbook::Thing at = thing;
  for (int depth = 0; depth < deepest; ++depth) {
    if (const auto* engine = std::get_if<logbook::Engine>(&at)) return *engine;
    const std::optional<Stay> stay = histories.stay_at(at, mark);
    if (!stay) return std::nullopt;
    at = stay->host;
  }
  return std::nullopt;
}

namespace {

std::optional<logbook::Engine> engine_of_serial(const Histories& histories,
                                                const logbook::Serial& serial) {
  std::optional<logbook::Engine> found;
  for (const logbook::Thing& thing : histories.things()) {
    const auto* engine = std::get_if<logbook::Engine>(&thing);
    if (engine == nullptr || engine->serial != serial) continue;
    if (found) return std::nullopt;
    found = *engine;
  }
  return found;
}

}  // namespace

std::optional<logbook::Engine> engine_in(const Histories& histories, const GaugeAt& at,
                                         const Mark& mark) {
  if (at.serial) {
    if (auto named = engine_of_serial(histories, *at.serial)) return named;
  }
  for (const logbook::Thing& thing : histories.things()) {
    const auto* engine = std::get_if<logbook::Engine>(&thing);
    if (engine == nullptr) continue;
    const auto stay = histories.stay_at(thing, mark);
    if (stay && stay->host == logbook::Thing(at.aircraft) && stay->place == at.place) {
      return *engine;
    }
  }
  return std::nullopt;
}

}  // namespace reckon
