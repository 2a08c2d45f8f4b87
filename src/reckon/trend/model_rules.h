// reckon/trend/model_rules.h: the temperature limits, charts, trend settings and events on record
// that a margin rests on, each from its day.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "reckon/checks_in_force.h"
#include "reckon/standing.h"
#include "reckon/trend/chart.h"
#include "reckon/trend/corrected.h"
#include "reckon/trend/series.h"

namespace reckon::trend {

// One revision of a maker's chart, with all its lines.
struct ChartOnRecord {
  std::string name;
  Day from;  // of its first line
  logbook::TorqueUnit unit = logbook::TorqueUnit::percent;
  bool is_one_unit = true;
  std::variant<Chart, ChartFault> chart;
};

// What a reading is held against: a chart where the model has one for the check, else the limit.
struct AllowedInForce {
  std::string key;  // tells one limit or chart from the next
  std::variant<quantity::Temperature, const ChartOnRecord*> allowed;
  bool is_one_of_two_charts = false;  // another chart begins on the same day
};

// How the readings of a model are taken and corrected.
struct ModelSettings {
  std::optional<quantity::Margin> floor;
  std::optional<std::int64_t> steady_minutes;
  Exponents exponents;
  quantity::Decimal serial_correlation = quantity::Decimal::of(200);
  bool is_correlation_stated = false;
};

// The rules of every model, gathered once.
class ModelRules {
 public:
  explicit ModelRules(const Standing& standing);

  // The newest at or before the day; none on record: no value.
  std::optional<AllowedInForce> allowed(const logbook::ModelName& model, logbook::CheckKind check,
                                        Day day) const;
  // The newest statement of each setting at or before the day.
  ModelSettings settings(const logbook::ModelName& model, Day day) const;

 private:
  struct Limit {
    logbook::EntryId entry;
    Day from;
    std::optional<Day> until;  // from then on another stands instead
    quantity::Temperature limit;
  };
  using Key = std::pair<logbook::ModelName, logbook::CheckKind>;

  struct Settings {
    Day from;
    std::optional<Day> until;
    const logbook::TrendSettings* said;
  };

  void take_charts(const Standing& standing, const Replacements& replacements);

  std::map<Key, std::vector<Limit>> limits_;                      // by day
  std::map<Key, std::vector<ChartOnRecord>> charts_;              // by day
  std::map<logbook::ModelName, std::vector<Settings>> settings_;  // by day
};

// What was done to the engine: a wash shifts its level, all else begins a new segment.
struct Washed {};
using Done = std::variant<Beginning, Washed>;
std::optional<Done> done_to(const logbook::Said& said, const logbook::Engine& engine);

}  // namespace reckon::trend
