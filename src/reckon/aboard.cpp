#include "reckon/aboard.h"

#include <algorithm>

namespace reckon {
namespace {

// Things stand inside one another at most so deep; a circle in the record ends here.
constexpr int deepest = 32;

struct DaysAboard {
  Day from;
  std::optional<Day> to;
};

void add_inside(const Histories& histories, const logbook::Thing& host,
                std::vector<logbook::Thing>& found) {
  for (const Stay& stay : histories.fitted_now(host)) {
    if (std::find(found.begin(), found.end(), stay.thing) != found.end()) continue;
    found.push_back(stay.thing);
    add_inside(histories, stay.thing, found);
  }
}

std::optional<DaysAboard> overlap(const DaysAboard& span, const Stay& stay) {
  DaysAboard both{std::max(span.from, stay.from.day), span.to};
  if (stay.to) both.to = both.to ? std::min(*both.to, stay.to->day) : stay.to->day;
  if (both.to && *both.to < both.from) return std::nullopt;
  return both;
}

struct ModelSearch {
  const Histories& histories;
  std::set<logbook::ModelName>& found;
};

void add_models(const ModelSearch& search, const logbook::Thing& thing, const DaysAboard& span,
                int depth) {
  if (std::holds_alternative<logbook::Aircraft>(thing)) {
    if (const auto model = search.histories.model_of(thing)) search.found.insert(*model);
    return;
  }
  if (depth == deepest) return;
  for (const Stay& stay : search.histories.stays(thing)) {
    if (const auto both = overlap(span, stay)) add_models(search, stay.host, *both, depth + 1);
  }
}

constexpr Day earliest_day = Day::of(-1'000'000);

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

std::set<logbook::ModelName> models_been_on(const Histories& histories,
                                            const logbook::Thing& thing) {
  std::set<logbook::ModelName> found;
  add_models({histories, found}, thing, {earliest_day, std::nullopt}, 0);
  return found;
}

std::optional<logbook::ModelName> model_now_or_last(const Histories& histories,
                                                    const logbook::Thing& thing) {
  if (const auto aircraft = histories.aircraft_now(thing)) return histories.model_of(*aircraft);
  const std::vector<Stay>& stays = histories.stays(thing);
  for (auto stay = stays.rbegin(); stay != stays.rend(); ++stay) {
    if (const auto aircraft = aircraft_at(histories, stay->host, stay->from)) {
      return histories.model_of(*aircraft);
    }
  }
  return std::nullopt;
}

}  // namespace reckon
