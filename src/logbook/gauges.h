// logbook/gauges.h: figures as gauges show them, with the unit they were typed in.
#pragma once

#include <cstdint>
#include <variant>

#include "quantity/counts.h"
#include "quantity/temperature.h"

namespace logbook {

enum class TorqueUnit { percent, psi, foot_pounds, newton_metres };
struct Torque {
  quantity::Decimal value;
  TorqueUnit unit = TorqueUnit::percent;
  auto operator<=>(const Torque&) const = default;
  bool operator==(const Torque&) const = default;
};
enum class FuelUnit { pounds_an_hour, kilograms_an_hour };
struct FuelFlow {
  quantity::Decimal value;
  FuelUnit unit = FuelUnit::pounds_an_hour;
  auto operator<=>(const FuelFlow&) const = default;
  bool operator==(const FuelFlow&) const = default;
};
// 810 C for 3 s.
struct Band {
  quantity::Temperature above;
  std::int64_t seconds = 0;
  auto operator<=>(const Band&) const = default;
  bool operator==(const Band&) const = default;
};

// What a gauge may show too much of: temperature 915 C, torque 112 %, gas generator 106 %.
struct GaugeTemperature {
  quantity::Temperature value;
  auto operator<=>(const GaugeTemperature&) const = default;
  bool operator==(const GaugeTemperature&) const = default;
};
struct GaugeTorque {
  Torque value;
  auto operator<=>(const GaugeTorque&) const = default;
  bool operator==(const GaugeTorque&) const = default;
};
enum class Rotating { gas_generator, power_turbine, rotor, propeller };
struct GaugeSpeed {
  Rotating of = Rotating::gas_generator;
  quantity::Decimal percent;
  auto operator<=>(const GaugeSpeed&) const = default;
  bool operator==(const GaugeSpeed&) const = default;
};
using Gauge = std::variant<GaugeTemperature, GaugeTorque, GaugeSpeed>;
// temperature 843 C for 10 s.
struct GaugeFor {
  Gauge gauge;
  std::int64_t seconds = 0;
  auto operator<=>(const GaugeFor&) const = default;
  bool operator==(const GaugeFor&) const = default;
};

}  // namespace logbook
