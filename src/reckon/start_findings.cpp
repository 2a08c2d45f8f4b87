#include "reckon/start_findings.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/checks_in_force.h"

namespace reckon {
namespace {

using logbook::Band;
using logbook::Started;
using quantity::Decimal;
using quantity::Temperature;

Decimal whole(std::int64_t seconds) { return Decimal::of(1000 * seconds); }
// Tenths of a degree as thousandths.
Decimal degrees(Temperature temperature) {
  return Decimal::of(100 * (temperature - Temperature{}).count());
}
std::optional<Decimal> degrees(const std::optional<Temperature>& temperature) {
  return temperature ? std::optional(degrees(*temperature)) : std::nullopt;
}
std::optional<Decimal> whole(const std::optional<std::int64_t>& seconds) {
  return seconds ? std::optional(whole(*seconds)) : std::nullopt;
}

class Judging {
 public:
  Judging(const Started& started, StartJudged& judged) : started_(started), judged_(judged) {}

  void hold_against(const logbook::EntryId& rule, const logbook::StartCheck& check) {
    rule_ = rule;
    judged_.has_check = true;
    at_least(StartMeasure::battery, started_.battery_volts, check.battery_at_least);
    at_least(StartMeasure::lowest, started_.lowest_volts, check.lowest_at_least);
    at_most(StartMeasure::residual, degrees(started_.residual), degrees(check.residual_at_most));
    at_most(StartMeasure::light_off, whole(started_.light_off_seconds),
            whole(check.light_off_within));
    at_most(StartMeasure::peak, degrees(started_.peak), degrees(check.peak_at_most));
    at_most(StartMeasure::idle, whole(started_.idle_seconds), whole(check.idle_within));
    if (!check.generator) return;
    at_least(StartMeasure::generator, started_.generator_volts, check.generator->low);
    at_most(StartMeasure::generator, started_.generator_volts, check.generator->high);
  }

  // Whatever of peak and seconds speaks for the harsher answer is believed.
  void hold_against(const logbook::EntryId& rule, const Band& limit) {
    rule_ = rule;
    judged_.has_limits = true;
    const std::int64_t at_least = at_least_above(limit.above);
    const bool peaked_above = started_.peak && *started_.peak > limit.above;
    if (at_least > limit.seconds) {
      ++judged_.compared;
      add(StartMeasure::time_above, whole(at_least), whole(limit.seconds), true);
      judged_.findings.back().above = limit.above;
    } else if (peaked_above && limit.seconds == 0) {
      ++judged_.compared;
      add(StartMeasure::peak, degrees(*started_.peak), degrees(limit.above), true);
    } else if ((started_.peak && !peaked_above) || stood_no_longer(limit)) {
      ++judged_.compared;
    } else {
      judged_.untold.push_back(limit);
    }
  }

 private:
  void at_least(StartMeasure measure, const std::optional<Decimal>& figure,
                const std::optional<Decimal>& stated) {
    if (!figure || !stated) return;
    ++judged_.compared;
    if (*figure < *stated) add(measure, *figure, *stated, false);
  }
  void at_most(StartMeasure measure, const std::optional<Decimal>& figure,
               const std::optional<Decimal>& stated) {
    if (!figure || !stated) return;
    ++judged_.compared;
    if (*figure > *stated) add(measure, *figure, *stated, false);
  }
  void add(StartMeasure measure, Decimal figure, Decimal stated, bool is_limit) {
    StartFinding finding;
    finding.measure = measure;
    finding.is_limit = is_limit;
    finding.is_below = figure < stated;
    finding.figure = figure;
    finding.stated = stated;
    finding.by = finding.is_below ? stated - figure : figure - stated;
    finding.rule = rule_;
    judged_.findings.push_back(finding);
  }

  // As long as it stood above a higher temperature, it stood above this one at least.
  std::int64_t at_least_above(Temperature temperature) const {
    std::int64_t most = 0;
    for (const Band& band : started_.bands) {
      if (band.above >= temperature) most = std::max(most, band.seconds);
    }
    return most;
  }
  bool stood_no_longer(const Band& limit) const {
    const auto at_most = at_most_above(limit.above);
    return at_most && *at_most <= limit.seconds;
  }
  // As long as it stood above a lower temperature, it stood above this one at most.
  std::optional<std::int64_t> at_most_above(Temperature temperature) const {
    std::optional<std::int64_t> least;
    for (const Band& band : started_.bands) {
      if (band.above > temperature) continue;
      if (!least || band.seconds < *least) least = band.seconds;
    }
    return least;
  }

  const Started& started_;
  StartJudged& judged_;
  logbook::EntryId rule_;
};

// The rules of every model, gathered once.
class RulesOnRecord {
 public:
  explicit RulesOnRecord(const Standing& standing) : checks_(standing), limits_(standing) {}

  StartRules in_force(const logbook::ModelName& model, Day day) const {
    StartRules rules;
    for (const auto& one : checks_.in_force(model, day)) {
      rules.checks.emplace_back(one.fact->root, one.rule);
    }
    for (const auto& one : limits_.in_force(model, day)) {
      rules.limits.emplace_back(one.fact->root, one.rule);
    }
    return rules;
  }

 private:
  ChecksOnRecord<logbook::StartCheck> checks_;
  ChecksOnRecord<logbook::StartLimit> limits_;
};

}  // namespace

StartVerdict StartJudged::verdict() const {
  if (is_past_a_limit()) return StartVerdict::past_a_limit;
  if (!untold.empty() || compared == 0) return StartVerdict::not_known;
  return findings.empty() ? StartVerdict::normal : StartVerdict::worth_a_look;
}

bool StartJudged::is_past_a_limit() const {
  return std::any_of(findings.begin(), findings.end(),
                     [](const StartFinding& finding) { return finding.is_limit; });
}

void judge(const Started& started, const StartRules& rules, StartJudged& judged) {
  Judging judging(started, judged);
  for (const auto& [entry, check] : rules.checks) judging.hold_against(entry, *check);
  for (const auto& [entry, limit] : rules.limits) {
    judging.hold_against(entry, limit->limit);
    for (const Band& band : limit->also) judging.hold_against(entry, band);
  }
}

std::vector<StartJudged> judged_starts(const Histories& histories, const Standing& standing) {
  const RulesOnRecord rules(standing);
  std::vector<StartJudged> starts;
  for (const StandingFact& fact : standing.facts) {
    const auto* started = std::get_if<Started>(&fact.said->fact);
    if (started == nullptr) continue;
    StartJudged judged;
    judged.entry = fact.root;
    judged.newest = fact.chain.back();
    judged.day = fact.said->day;
    judged.started = started;
    judged.engine = engine_in(histories, {started->aircraft, started->place, started->serial},
                              histories.mark_of(fact.root));
    if (judged.engine) judge(*started, rules.in_force(judged.engine->model, judged.day), judged);
    starts.push_back(std::move(judged));
  }
  return starts;
}

}  // namespace reckon
