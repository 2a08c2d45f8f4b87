// reckon/trend/series.h: margins as points, segments and series, as values.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/histories.h"
#include "reckon/trend/grade.h"

namespace reckon::trend {

// Why a reading is kept and shown, and left out of the line.
enum class Flag { counted, no_temperature, no_limit, bleed_on };

// One reading. The margin is the stated limit less the temperature seen: positive is good.
struct MarginPoint {
  logbook::EntryId entry;
  Day day;
  Figure engine_hours;
  quantity::Margin margin;  // zero if it could not be worked out
  Flag flag = Flag::counted;
};

// Why a segment begins.
enum class Beginning {
  first_reading,
  fitted,
  overhauled,
  washed,
  hot_section,
  probe,
  fuel_control,
  torque_gauge,
  temperature_gauge,
  limit_changed,
};

// Figures for people, rounded half away from zero to tenths of a degree per 100 h.
struct SlopeText {
  quantity::Decimal per_100_hours;
  quantity::Decimal low;
  quantity::Decimal high;
};

struct Segment {
  Beginning beginning = Beginning::first_reading;
  Day began;
  std::optional<logbook::EntryId> begun_by;
  std::vector<MarginPoint> points;
  Finding finding;
  std::optional<SlopeText> slope;          // where there is a line
  std::optional<quantity::Margin> now;     // the line's value at the last counted reading, tenths
  std::vector<logbook::EntryId> deciding;  // single readings that carry the answer
};

// All readings of one kind of check on one engine; the newest segment last.
struct Series {
  logbook::Engine engine;
  logbook::CheckKind check = logbook::CheckKind::cruise;
  std::optional<quantity::Margin> floor;
  quantity::Decimal serial_correlation;  // as stated for the model, else 0.2
  bool is_correlation_stated = false;
  std::vector<Segment> segments;
};

}  // namespace reckon::trend
