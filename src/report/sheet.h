// report/sheet.h: what stands at the head of every answer: as of which day, what was counted, which
// horizon. One file a report; each makes a document for people and minimal JSON for machines from
// the same answers. Never here: the store, the clock, formulas.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "document/document.h"
#include "document/json.h"
#include "logbook/entry.h"
#include "reckon/forecast.h"
#include "reckon/histories.h"

namespace report {

struct Sheet {
  quantity::Day as_of;
  logbook::Horizon horizon;  // the newest number per writer counted
  quantity::TenthsRule tenths = quantity::TenthsRule::half_up;
  std::vector<std::string> left_out;        // sentences: what was not counted
  std::vector<std::string> notices;         // sentences that are no part of the answer
  std::optional<reckon::UseRate> use_rate;  // named beside the dates it gives
};

// An answer in both forms; needs_attention makes the exit code 1 (over, an open question).
struct Answer {
  document::Document document;
  document::Json json;
  bool needs_attention = false;
};

}  // namespace report
