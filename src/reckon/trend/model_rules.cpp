#include "reckon/trend/model_rules.h"

#include <algorithm>

#include "reckon/entry_named.h"
#include "reckon/trend/doubles.h"

namespace reckon::trend {

namespace {

Done beginning_of(logbook::EventKind event) {
  switch (event) {
    case logbook::EventKind::washed:
      return Washed{};
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

ChartRow row_of(const logbook::ChartRow& said) {
  ChartRow row{static_cast<double>(said.altitude_feet), in_degrees(said.outside_air), {}};
  for (const logbook::AllowedAt& at : said.allows) {
    row.allowed.push_back({in_units(at.torque.value), in_degrees(at.allowed)});
  }
  return row;
}

// The lines of one chart, as they were said.
struct Lines {
  Day from;
  std::vector<ChartRow> rows;
  std::vector<logbook::TorqueUnit> units;
};

ChartOnRecord chart_of(const std::string& name, const Lines& lines) {
  ChartOnRecord chart{name, lines.from, lines.units.front(), true, make_chart(lines.rows)};
  chart.is_one_unit = std::all_of(lines.units.begin(), lines.units.end(),
                                  [&](logbook::TorqueUnit unit) { return unit == chart.unit; });
  return chart;
}

double exponent_or(const std::optional<quantity::Decimal>& stated, double otherwise) {
  return stated ? in_units(*stated) : otherwise;
}

}  // namespace

ModelRules::ModelRules(const Standing& standing) {
  const Replacements replacements(standing);
  for (const StandingFact& fact : standing.facts) {
    const Day day = fact.said->day;
    if (const auto* limit = std::get_if<logbook::TemperatureLimit>(&fact.said->fact)) {
      limits_[{limit->model.name, limit->check}].push_back(
          {fact.root, day, replacements.from(fact), limit->limit});
    } else if (const auto* set = std::get_if<logbook::TrendSettings>(&fact.said->fact)) {
      settings_[set->model.name].push_back({day, replacements.from(fact), set});
    }
  }
  take_charts(standing, replacements);
}

void ModelRules::take_charts(const Standing& standing, const Replacements& replacements) {
  std::map<Key, std::map<std::string, Lines>> lines;
  for (const StandingFact& fact : standing.facts) {
    const auto* row = std::get_if<logbook::ChartRow>(&fact.said->fact);
    if (row == nullptr || replacements.from(fact)) continue;
    const auto [at, is_new] = lines[{row->model.name, row->check}].try_emplace(row->chart);
    if (is_new) at->second.from = fact.said->day;
    at->second.rows.push_back(row_of(*row));
    for (const logbook::AllowedAt& allowed : row->allows) {
      at->second.units.push_back(allowed.torque.unit);
    }
  }
  for (const auto& [key, by_name] : lines) {
    std::vector<ChartOnRecord>& charts = charts_[key];
    for (const auto& [name, said] : by_name) charts.push_back(chart_of(name, said));
    std::stable_sort(
        charts.begin(), charts.end(),
        [](const ChartOnRecord& a, const ChartOnRecord& b) { return a.from < b.from; });
  }
}

std::optional<AllowedInForce> ModelRules::allowed(const logbook::ModelName& model,
                                                  logbook::CheckKind check, Day day) const {
  std::optional<AllowedInForce> newest;
  if (const auto found = limits_.find({model, check}); found != limits_.end()) {
    for (const Limit& limit : found->second) {
      if (limit.from > day) break;
      if (limit.until && *limit.until <= day) continue;
      newest = {
          "limit " + writer_letters(limit.entry.writer, 26) + std::to_string(limit.entry.number),
          limit.limit};
    }
  }
  if (const auto found = charts_.find({model, check}); found != charts_.end()) {
    const ChartOnRecord* before = nullptr;
    for (const ChartOnRecord& chart : found->second) {
      if (chart.from > day) break;
      newest = {"chart " + chart.name, &chart, before != nullptr && before->from == chart.from};
      before = &chart;
    }
  }
  return newest;
}

ModelSettings ModelRules::settings(const logbook::ModelName& model, Day day) const {
  ModelSettings settings;
  const auto found = settings_.find(model);
  if (found == settings_.end()) return settings;
  for (const Settings& one : found->second) {
    if (one.from > day) break;
    if (one.until && *one.until <= day) continue;
    const logbook::TrendSettings* said = one.said;
    if (said->floor) settings.floor = said->floor;
    if (said->steady_at_least) settings.steady_minutes = said->steady_at_least;
    Exponents& powers = settings.exponents;
    powers.temperature = exponent_or(said->temperature_exponent, powers.temperature);
    powers.speed = exponent_or(said->speed_exponent, powers.speed);
    powers.fuel = exponent_or(said->fuel_exponent, powers.fuel);
    // Outside these bounds it is no correlation; such a statement is refused when it is said.
    if (!said->serial_correlation || !is_correlation(*said->serial_correlation)) continue;
    settings.serial_correlation = *said->serial_correlation;
    settings.is_correlation_stated = true;
  }
  return settings;
}

std::optional<Done> done_to(const logbook::Said& said, const logbook::Engine& engine) {
  if (const auto* event = std::get_if<logbook::EngineEvent>(&said.fact)) {
    if (event->engine_thing == engine) return beginning_of(event->event);
  }
  if (const auto* overhauled = std::get_if<logbook::Overhauled>(&said.fact)) {
    if (overhauled->thing == logbook::Thing(engine)) return Beginning::overhauled;
  }
  return std::nullopt;
}

}  // namespace reckon::trend
