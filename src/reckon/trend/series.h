// reckon/trend/series.h: margins as points, segments and series, as values. Figures for people are
// exact again, rounded half away from zero; what is drawn stays double.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/histories.h"
#include "reckon/trend/floor_reach.h"
#include "reckon/trend/grade.h"

namespace reckon::trend {

// Why a reading is kept and shown, and left out of the line.
enum class Flag {
  counted,
  no_temperature,
  no_limit,
  hours_unknown,  // of the engine
  bleed_on,
  not_steady,        // for less time than the model asks for
  steady_not_said,   // and the model asks for it
  chart_wants_more,  // torque, altitude or outside air was not written
  torque_unit,       // of the reading is not the chart's
  outside_chart,
  chart_hole,
  chart_faulty,  // the chart says two things at one place, or in two units
  two_charts,    // two charts for the check begin on one day
};

enum class ChartFigure { torque, altitude, outside_air };

// Where a reading lies outside its chart.
struct OutOfChart {
  ChartFigure figure = ChartFigure::torque;
  quantity::Decimal given;
  quantity::Decimal out_by;
  quantity::Decimal nearest_allowed;
};

// The air's share taken out; absent where the figure or the air was not written.
struct CorrectedFigures {
  std::optional<quantity::Decimal> temperature;    // C
  std::optional<quantity::Decimal> gas_generator;  // percent
  std::optional<quantity::Decimal> fuel;           // as typed
};

// One reading. The margin is what is allowed less the temperature seen: positive is good.
struct MarginPoint {
  logbook::EntryId entry;
  Day day;
  Figure engine_hours;
  std::optional<quantity::Margin> margin;  // absent if it could not be worked out
  Flag flag = Flag::counted;
  std::vector<OutOfChart> out;  // outside_chart: on each axis
  CorrectedFigures corrected;
  std::size_t level = 0;  // of its segment
  double hours = 0.0;     // engine_hours, for lines
  double degrees = 0.0;   // the margin before rounding
};

// Why a segment begins.
enum class Beginning {
  first_reading,
  fitted,
  overhauled,
  hot_section,
  probe,
  fuel_control,
  torque_gauge,
  temperature_gauge,
  limit_changed,
};

struct SlopeText {
  quantity::Decimal per_100_hours;  // C
  quantity::Decimal low;
  quantity::Decimal high;
};

// Pairs of readings that rise less those that fall, and the chance of so many by accident.
struct KendallText {
  std::int64_t s = 0;
  quantity::Decimal p;  // thousandths
};

// What a wash gave back, C; no figures where no line tells.
struct WashGain {
  logbook::EntryId wash;
  Day day;
  std::optional<double> hours;  // engine hours then; absent: not known
  struct Figures {
    quantity::Decimal gain;
    quantity::Decimal low;
    quantity::Decimal high;
  };
  std::optional<Figures> figures;
};

// When the line reaches the floor, from the engine's hours now.
struct ReachText {
  std::int64_t early_hours = 0;  // whole, rounded down; 0: the line may be there already
  std::int64_t late_hours = 0;   // the interval's upper end, rounded up
  std::int64_t reading_earlier_hours = 0;
  std::optional<Day> early_day;  // at recent use; absent without use
};

// The newest reading that has a margin, counted or not.
struct LastReading {
  logbook::EntryId entry;
  Day day;
  quantity::Margin margin;
  std::optional<std::int64_t> hours_since;  // whole, rounded up; absent: not known
};

struct Segment {
  Beginning beginning = Beginning::first_reading;
  Day began;
  std::vector<MarginPoint> points;
  std::vector<WashGain> washes;  // each begins the next level
  Finding finding;
  std::optional<SlopeText> slope;       // where there is a line
  std::optional<SlopeText> theil_sen;   // likewise
  std::optional<KendallText> kendall;   // likewise
  std::optional<quantity::Margin> now;  // the line's value at the last counted reading, tenths
  std::optional<LastReading> last;
  std::vector<logbook::EntryId> deciding;  // single readings that carry the answer
  // The last three counted readings all lie more than two scatters to one side of the line, by this
  // much on average: the line averages over a change.
  std::optional<quantity::Decimal> last_three_off;
  std::optional<ReachText> reach;
  std::optional<NoReach> no_reach;  // why there is no reach, where a floor is set and a line drawn
  bool hours_now_unknown = false;   // so that no reach can be told from now
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
