#include "reckon/check_gauges.h"

namespace reckon {
namespace {

using quantity::Temperature;

constexpr Temperature tenths(std::int64_t count) { return Temperature::of(count); }

void ask(std::string figure, std::string range, const char* slot, Objections& objections) {
  Objection objection = doubt(CheckKind::outside_the_usual, slot);
  objection.names = {std::move(figure), std::move(range)};
  objections.push_back(std::move(objection));
}

void check_air(const std::optional<Temperature>& air, Objections& objections) {
  if (!air || (*air >= tenths(-600) && *air <= tenths(600))) return;
  ask("outside air " + quantity::say(*air) + " C", "-60 to 60 C", "outside_air", objections);
}

void check_altitude(const std::optional<std::int64_t>& feet, const char* slot,
                    Objections& objections) {
  if (!feet || (*feet >= -2000 && *feet <= 45000)) return;
  ask(std::to_string(*feet) + " ft", "-2000 to 45000 ft", slot, objections);
}

void check_gas(const std::optional<Temperature>& gas, const char* slot, Objections& objections) {
  if (!gas || (*gas >= tenths(2000) && *gas <= tenths(12000))) return;
  ask(quantity::say(*gas) + " C", "200 to 1200 C", slot, objections);
}

void check_gas(const logbook::GaugeFor& gauge, const char* slot, Objections& objections) {
  if (const auto* gas = std::get_if<logbook::GaugeTemperature>(&gauge.gauge)) {
    check_gas(gas->value, slot, objections);
  }
}

struct Check {
  Objections& objections;

  void operator()(const logbook::Started& start) const {
    check_air(start.outside_air, objections);
    check_gas(start.peak, "peak", objections);
    for (const logbook::Band& band : start.bands) check_gas(band.above, "bands", objections);
    const bool is_swapped =
        start.lowest_volts && start.battery_volts && *start.lowest_volts > *start.battery_volts;
    if (!is_swapped) return;
    ask("lowest " + quantity::say(*start.lowest_volts) + " V",
        "0 to " + quantity::say(*start.battery_volts) + " V", "lowest_volts", objections);
  }
  void operator()(const logbook::Reading& reading) const {
    check_air(reading.outside_air, objections);
    check_altitude(reading.pressure_altitude_feet, "pressure_altitude_feet", objections);
    check_gas(reading.temperature, "temperature", objections);
  }
  void operator()(const logbook::Exceeded& exceeded) const {
    check_gas(exceeded.what, "what", objections);
  }
  void operator()(const logbook::TemperatureLimit& limit) const {
    check_gas(limit.limit, "limit", objections);
  }
  void operator()(const logbook::ChartRow& row) const {
    check_altitude(row.altitude_feet, "altitude_feet", objections);
    check_air(row.outside_air, objections);
    for (const logbook::AllowedAt& one : row.allows) check_gas(one.allowed, "allows", objections);
  }
  void operator()(const logbook::StartLimit& limit) const {
    check_gas(limit.limit.above, "limit", objections);
    for (const logbook::Band& band : limit.also) check_gas(band.above, "also", objections);
  }
  void operator()(const logbook::ExceedanceLimit& limit) const {
    check_gas(limit.limit, "limit", objections);
    for (const logbook::GaugeFor& one : limit.also) check_gas(one, "also", objections);
  }
  void operator()(const logbook::StartCheck& check) const {
    check_gas(check.peak_at_most, "peak_at_most", objections);
  }
  void operator()(const logbook::TrendSettings& trend) const {
    if (!trend.floor || *trend.floor <= quantity::Margin::of(2000)) return;
    ask("a floor of " + quantity::say(*trend.floor) + " C", "0 to 200 C", "floor", objections);
  }
  template <class Other>
  void operator()(const Other&) const {}
};

}  // namespace

void check_gauges(const logbook::Fact& fact, Objections& objections) {
  std::visit(Check{objections}, fact);
}

}  // namespace reckon
