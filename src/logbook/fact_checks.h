// logbook/fact_checks.h: what the readings of an engine model are held against: charts, limits and
// how its trend is worked out. Each holds from its sentence's day.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/gauges.h"
#include "logbook/names.h"

namespace logbook {

enum class CheckKind { cruise, idle, power_check };

// model TS-40 idle limit 560 C. / model TS-40 cruise limit 720 C.
struct TemperatureLimit {
  Model model;
  CheckKind check = CheckKind::cruise;
  quantity::Temperature limit;
  std::optional<std::string> source;
  bool operator==(const TemperatureLimit&) const = default;
};

// model TS-40 chart "C1" for cruise at 2000 ft and 10 C allows 650 C at 60 % and 690 C at 70 %,
// source "flight manual 5-12". One line of the maker's chart; a chart is all its lines together.
struct AllowedAt {
  quantity::Temperature allowed;
  Torque torque;
  auto operator<=>(const AllowedAt&) const = default;
  bool operator==(const AllowedAt&) const = default;
};
struct ChartRow {
  Model model;
  std::string chart;
  CheckKind check = CheckKind::cruise;
  std::int64_t altitude_feet = 0;  // pressure altitude
  quantity::Temperature outside_air;
  std::vector<AllowedAt> allows;
  std::optional<std::string> source;
  bool operator==(const ChartRow&) const = default;
};

// model TS-40 start limit 810 C for 10 s, start limit 870 C for 0 s, source "…": above 810 C for
// more than 10 s is past the limit, and above 870 C at once.
struct StartLimit {
  Model model;
  Band limit;
  std::vector<Band> also;
  std::optional<std::string> source;
  bool operator==(const StartLimit&) const = default;
};
// model TS-40 exceedance limit temperature 843 C for 10 s, exceedance limit torque 110 % for 5 s.
struct ExceedanceLimit {
  Model model;
  GaugeFor limit;
  std::vector<GaugeFor> also;
  std::optional<std::string> source;
  bool operator==(const ExceedanceLimit&) const = default;
};

// model TS-40 start check, battery at least 24.5 V, peak at most 800 C, generator 27.5 to 28.5 V,
// idle within 30 s. What a normal start shows; past it is worth a look, not past a limit.
struct VoltRange {
  quantity::Decimal low;
  quantity::Decimal high;
  auto operator<=>(const VoltRange&) const = default;
  bool operator==(const VoltRange&) const = default;
};
struct StartCheck {
  Model model;
  std::optional<quantity::Decimal> battery_at_least;
  std::optional<quantity::Decimal> lowest_at_least;
  std::optional<quantity::Temperature> residual_at_most;
  std::optional<std::int64_t> light_off_within;  // seconds
  std::optional<quantity::Temperature> peak_at_most;
  std::optional<std::int64_t> idle_within;  // seconds
  std::optional<VoltRange> generator;
  std::optional<std::string> source;
  bool operator==(const StartCheck&) const = default;
};

// model TS-40 trend, floor 10 C, steady at least 3 min, temperature exponent 1, speed exponent 0.5,
// fuel exponent 0.65, serial correlation 0.2.
struct TrendSettings {
  Model model;
  std::optional<quantity::Margin> floor;
  std::optional<std::int64_t> steady_at_least;  // minutes
  std::optional<quantity::Decimal> temperature_exponent;
  std::optional<quantity::Decimal> speed_exponent;
  std::optional<quantity::Decimal> fuel_exponent;
  std::optional<quantity::Decimal> serial_correlation;
  bool operator==(const TrendSettings&) const = default;
};

}  // namespace logbook
