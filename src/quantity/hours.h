// quantity/hours.h: time in service. Hours are whole seconds as typed; ServiceHours are sums of
// them after a factor, in thousandths of a second, so that a factor of three decimals stays exact.
#pragma once

#include <string>
#include <string_view>

#include "quantity/exact.h"
#include "quantity/typed.h"

namespace quantity {

// A difference, in whole seconds.
class Hours : public Exact<Hours> {};

// What an hour meter shows, in whole seconds: a point. Two readings do not add.
class HourMeter : public Point<HourMeter, Hours> {};

// An exact factor on hours (1.12), in thousandths.
class Factor : public Exact<Factor> {};
inline constexpr Factor factor_one = Factor::of(1000);
// A factor is above zero and at most 100, so that no total of hours can overflow.
inline constexpr Factor most_factor = Factor::of(100'000);

// A total of hours, in thousandths of a second.
class ServiceHours : public Exact<ServiceHours> {};

constexpr ServiceHours operator*(Hours raw, Factor factor) {
  return ServiceHours::of(checked_multiply(raw.count(), factor.count()));
}
constexpr ServiceHours service_hours(Hours raw) { return raw * factor_one; }
// Whole seconds at or below / at or above the total. Left is shown rounded down, used rounded up.
constexpr Hours floor_to_seconds(ServiceHours total) {
  return Hours::of(floor_divide(total.count(), 1000));
}
constexpr Hours ceiling_to_seconds(ServiceHours total) {
  return Hours::of(ceiling_divide(total.count(), 1000));
}

// Canonical text without the unit: hundredths of an hour if exact (at least one decimal), else
// h:mm, else h:mm:ss. 1.7, 1.25, 0:47, 12:00:01; negative amounts with a leading minus.
std::string say(Hours hours);
std::string say(HourMeter reading);
// Factors, without trailing zeros: 1.12.
std::string say(Factor factor);

// Which of the two published minute tables turns minutes into tenths for display.
enum class TenthsRule { half_up, half_down };
// Tenths of an hour for display only: "0.8". Negative amounts are mirrored.
std::string say_tenths(Hours hours, TenthsRule rule);

// Reads 1.7, 1.70, 1:42, 1:42:30. Refuses what is not a whole number of hundredths of an hour,
// whole minutes or seconds (both neighbours are in Misread), and what has two readings (1,234; 1:4;
// 4.320). At most 1,000,000 h; no minus.
Typed<Hours> read_hours(std::string_view text);
// For 1h42 and 1 h 42 min; out_of_range for more than 59 minutes.
Typed<Hours> hours_and_minutes(std::int64_t hours, std::int64_t minutes);
Typed<HourMeter> read_hour_meter(std::string_view text);
Typed<Factor> read_factor(std::string_view text);

}  // namespace quantity
