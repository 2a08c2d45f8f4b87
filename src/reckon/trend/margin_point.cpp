#include "reckon/trend/margin_point.h"

#include "reckon/trend/air.h"
#include "reckon/trend/doubles.h"

namespace reckon::trend {

namespace {

using logbook::Reading;
using quantity::Decimal;

bool is_on(const std::optional<logbook::Switch>& state) { return state == logbook::Switch::on; }

ChartFigure figure_of(ChartAxis axis) {
  switch (axis) {
    case ChartAxis::torque:
      return ChartFigure::torque;
    case ChartAxis::pressure_altitude:
      return ChartFigure::altitude;
    case ChartAxis::outside_air:
      return ChartFigure::outside_air;
  }
  return ChartFigure::torque;
}

void read_chart(const Reading& reading, const ChartOnRecord& on_record, MarginPoint& point) {
  const auto* chart = std::get_if<Chart>(&on_record.chart);
  if (chart == nullptr || !on_record.is_one_unit) {
    point.flag = Flag::chart_faulty;
    return;
  }
  if (!reading.torque || !reading.pressure_altitude_feet || !reading.outside_air) {
    point.flag = Flag::chart_wants_more;
    return;
  }
  if (reading.torque->unit != on_record.unit) {
    point.flag = Flag::torque_unit;
    return;
  }
  const ChartAnswer answer =
      allowed_at(*chart, {in_units(reading.torque->value),
                          static_cast<double>(*reading.pressure_altitude_feet),
                          in_degrees(*reading.outside_air)});
  if (const auto* outside = std::get_if<OutsideChart>(&answer)) {
    point.flag = Flag::outside_chart;
    for (const AxisOutside& axis : outside->axes) {
      point.out.push_back({figure_of(axis.axis), to_hundredths(axis.given),
                           to_hundredths(axis.out_by), to_hundredths(axis.nearest_allowed)});
    }
    return;
  }
  const auto* allowed = std::get_if<double>(&answer);
  if (allowed == nullptr) {
    point.flag = Flag::chart_hole;
    return;
  }
  point.degrees = *allowed - in_degrees(*reading.temperature);
  point.margin = to_margin(point.degrees);
}

void take_margin(const Taken& taken, MarginPoint& point) {
  if (!taken.reading.temperature) {
    point.flag = Flag::no_temperature;
  } else if (!taken.allowed) {
    point.flag = Flag::no_limit;
  } else if (taken.allowed->is_one_of_two_charts) {
    point.flag = Flag::two_charts;
  } else if (const auto* limit = std::get_if<quantity::Temperature>(&taken.allowed->allowed)) {
    point.margin = *limit - *taken.reading.temperature;
    point.degrees = in_degrees(*point.margin);
  } else {
    read_chart(taken.reading, *std::get<const ChartOnRecord*>(taken.allowed->allowed), point);
  }
}

// A margin that was taken in another state of the engine is no like among likes.
Flag state_flag(const Taken& taken) {
  const Reading& reading = taken.reading;
  if (is_on(reading.bleed) || is_on(reading.anti_ice)) return Flag::bleed_on;
  const auto& least = taken.settings.steady_minutes;
  if (!least || *least == 0) return Flag::counted;
  if (!reading.steady_minutes) return Flag::steady_not_said;
  return *reading.steady_minutes < *least ? Flag::not_steady : Flag::counted;
}

CorrectedFigures corrected(const Reading& reading, const Exponents& exponents) {
  CorrectedFigures figures;
  if (!reading.outside_air || !reading.pressure_altitude_feet) return figures;
  const auto worked = air_at(static_cast<double>(*reading.pressure_altitude_feet),
                             in_degrees(*reading.outside_air));
  const auto* air = std::get_if<Air>(&worked);
  if (air == nullptr) return figures;
  if (reading.temperature) {
    figures.temperature =
        to_tenths(corrected_temperature(in_degrees(*reading.temperature), *air, exponents));
  }
  if (reading.gas_generator_percent) {
    figures.gas_generator =
        to_hundredths(corrected_speed(in_units(*reading.gas_generator_percent), *air, exponents));
  }
  if (reading.fuel) {
    figures.fuel = to_tenths(corrected_fuel(in_units(reading.fuel->value), *air, exponents));
  }
  return figures;
}

}  // namespace

void work_out(const Taken& taken, MarginPoint& point) {
  point.corrected = corrected(taken.reading, taken.settings.exponents);
  take_margin(taken, point);
  if (point.flag == Flag::counted) point.flag = state_flag(taken);
}

}  // namespace reckon::trend
