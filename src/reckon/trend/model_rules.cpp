#include "reckon/trend/model_rules.h"

namespace reckon::trend {

namespace {

Beginning beginning_of(logbook::EventKind event) {
  switch (event) {
    case logbook::EventKind::washed:
      return Beginning::washed;
    case logbook::EventKind::hot_section_done:
      return Beginning::hot_section;
    case logbook::EventKind::temperature_probe_changed:
      return Beginning::probe;
    case logbook::EventKind::fuel_control_adjusted:
      return Beginning::fuel_control;
    case logbook::EventKind::torque_gauge_changed:
      return Beginning::torque_gauge;
    case logbook::EventKind::temperature_gauge_changed:
      return Beginning::temperature_gauge;
  }
  return Beginning::first_reading;
}

}  // namespace

std::vector<TemperatureRule> temperature_rules(const Standing& standing) {
  std::vector<TemperatureRule> rules;
  for (const StandingFact& fact : standing.facts) {
    const auto* rule = std::get_if<logbook::TemperatureLimit>(&fact.said->fact);
    if (rule != nullptr) rules.push_back({fact.root, fact.said->day, *rule});
  }
  return rules;
}

std::optional<LimitInForce> limit_in_force(const std::vector<TemperatureRule>& rules,
                                           const logbook::ModelName& model,
                                           logbook::CheckKind check, Day day) {
  std::optional<LimitInForce> newest;
  for (const TemperatureRule& rule : rules) {
    const bool applies = rule.rule.model.name == model && rule.rule.check == check;
    if (applies && rule.from <= day) newest = LimitInForce{rule.entry, rule.rule.limit};
  }
  return newest;
}

Series settings_in_force(const Standing& standing, const logbook::ModelName& model, Day day) {
  Series series;
  series.serial_correlation = quantity::Decimal::of(200);
  for (const StandingFact& fact : standing.facts) {
    const auto* settings = std::get_if<logbook::TrendSettings>(&fact.said->fact);
    if (settings == nullptr || settings->model.name != model || fact.said->day > day) continue;
    if (settings->floor) series.floor = settings->floor;
    if (settings->serial_correlation) {
      series.serial_correlation = *settings->serial_correlation;
      series.is_correlation_stated = true;
    }
  }
  return series;
}

std::optional<Beginning> event_of(const logbook::Said& said, const logbook::Engine& engine) {
  if (const auto* event = std::get_if<logbook::EngineEvent>(&said.fact)) {
    if (event->engine_thing == engine) return beginning_of(event->event);
  }
  if (const auto* overhauled = std::get_if<logbook::Overhauled>(&said.fact)) {
    if (overhauled->thing == logbook::Thing(engine)) return Beginning::overhauled;
  }
  return std::nullopt;
}

}  // namespace reckon::trend
