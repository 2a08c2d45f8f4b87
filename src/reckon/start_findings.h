// reckon/start_findings.h: one start held against its model's limits and against what a normal
// start shows. Exact figures: a limit is passed by more than it, never by being reached.
#pragma once

#include <optional>
#include <vector>

#include "reckon/histories.h"

namespace reckon {

enum class StartMeasure { battery, lowest, residual, light_off, peak, idle, generator, time_above };

// not_known: a limit cannot be told, or nothing could be compared.
enum class StartVerdict { normal, worth_a_look, past_a_limit, not_known };

// One figure outside what is stated for it.
struct StartFinding {
  StartMeasure measure = StartMeasure::peak;
  bool is_limit = false;     // of the model's start limits: past it, not only worth a look
  bool is_below = false;     // too low; else too high or too long
  quantity::Decimal figure;  // V, C or s, as the measure is
  quantity::Decimal stated;  // the end of the range that was left
  quantity::Decimal by;      // how far, positive
  std::optional<quantity::Temperature> above;  // time_above: above which temperature
  logbook::EntryId rule;
};

struct StartJudged {
  logbook::EntryId entry;   // the start
  logbook::EntryId newest;  // the newest of its corrections
  Day day;
  const logbook::Started* started = nullptr;
  std::optional<logbook::Engine> engine;
  bool has_check = false;   // a start check is on record for the model
  bool has_limits = false;  // start limits are
  int compared = 0;         // figures and limits that could be held against something
  std::vector<StartFinding> findings;
  // Start limits that cannot be told: the peak passed the temperature, and how long it stood above
  // it was not written, or there is no peak.
  std::vector<logbook::Band> untold;

  StartVerdict verdict() const;
  bool is_past_a_limit() const;
};

// Every start on record, by day and order of writing.
std::vector<StartJudged> judged_starts(const Histories& histories, const Standing& standing);

// One start against the rules given: what judged_starts does with those of the engine's model.
struct StartRules {
  std::vector<std::pair<logbook::EntryId, const logbook::StartCheck*>> checks;
  std::vector<std::pair<logbook::EntryId, const logbook::StartLimit*>> limits;
};
void judge(const logbook::Started& started, const StartRules& rules, StartJudged& judged);

}  // namespace reckon
