// reckon/trend/model_rules.h: the temperature limits, trend settings and events on record that a
// margin rests on, each from its day.
#pragma once

#include <optional>
#include <vector>

#include "reckon/standing.h"
#include "reckon/trend/series.h"

namespace reckon::trend {

struct LimitInForce {
  logbook::EntryId entry;
  quantity::Temperature limit;
};
struct TemperatureRule {
  logbook::EntryId entry;
  Day from;
  logbook::TemperatureLimit rule;
};

// In the order of their days.
std::vector<TemperatureRule> temperature_rules(const Standing& standing);
// The newest limit of the model for the check at or before the day.
std::optional<LimitInForce> limit_in_force(const std::vector<TemperatureRule>& rules,
                                           const logbook::ModelName& model,
                                           logbook::CheckKind check, Day day);
// Floor and serial correlation of the model, the newest statement of each at or before the day; the
// correlation is 0.2 when none is stated.
Series settings_in_force(const Standing& standing, const logbook::ModelName& model, Day day);

// What the sentence did to the engine that begins a new segment, if it did.
std::optional<Beginning> event_of(const logbook::Said& said, const logbook::Engine& engine);

}  // namespace reckon::trend
