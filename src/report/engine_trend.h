// report/engine_trend.h: whether an engine is losing temperature margin, as graded words with the
// figures beside them, drawn; every reading with its reason where it was left out; how it started.
#pragma once

#include <string>
#include <vector>

#include "reckon/exceedances.h"
#include "reckon/trend/margins.h"
#include "report/sheet.h"

namespace report {

struct EngineTrend {
  std::string title_of;
  std::vector<reckon::trend::Series> series;
  std::vector<reckon::StartJudged> starts;      // of the same engines, oldest first
  std::vector<reckon::Exceedance> exceedances;  // that nobody has looked into
  std::vector<logbook::EntryId> of_no_engine;   // readings that are in no series
  bool readings_too = false;                    // list every reading of the newest segment
  bool charts_too = false;
};
Answer engine_trend(const EngineTrend& trend, const Sheet& sheet);

// One series as minimal JSON, a member for each segment.
document::Json segment_json(const reckon::trend::Series& series,
                            const reckon::trend::Segment& segment, std::size_t number);
// Clearly falling, at its floor, or past what is allowed.
bool is_losing(const reckon::trend::Series& series);

}  // namespace report
