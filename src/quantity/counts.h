// quantity/counts.h: things that are counted, and plain decimals. Cycles are whole thousandths;
// counts typed for a whole counter are whole.
#pragma once

#include <string>
#include <string_view>

#include "quantity/exact.h"
#include "quantity/typed.h"

namespace quantity {

// Starts, landings, lifts, cycles …, in thousandths of one.
class Cycles : public Exact<Cycles> {};
constexpr Cycles whole_cycles(std::int64_t whole) {
  return Cycles::of(checked_multiply(whole, 1000));
}
constexpr bool is_whole(Cycles cycles) { return cycles.count() % 1000 == 0; }

// How much one event counts (0.5 each flight), in thousandths.
class Weight : public Exact<Weight> {};
// At most 10,000, so that no sum of weighted events can overflow.
inline constexpr Weight most_weight = Weight::of(10'000'000);
// events is a whole number of events; the product is exact in thousandths. (Of a fraction of an
// event the product is rounded down. Whole events are multiplied apart, so that nothing overflows.)
constexpr Cycles operator*(Weight weight, Cycles events) {
  const std::int64_t whole = floor_divide(events.count(), 1000);
  const std::int64_t rest = events.count() - whole * 1000;
  const std::int64_t part = floor_divide(checked_multiply(weight.count(), rest), 1000);
  return Cycles::of(checked_add(checked_multiply(weight.count(), whole), part));
}

// Figures of gauges with the decimals they were typed with, in thousandths: per cent, volts, fuel.
class Decimal : public Exact<Decimal> {};

// Canonical text without trailing zeros: 2210.35, 3, 0.9.
std::string say(Cycles cycles);
std::string say(Weight weight);
std::string say(Decimal decimal);

// At most nine digits before and three after the point; else not_exact / out_of_range.
Typed<Cycles> read_cycles(std::string_view text);
Typed<Cycles> read_whole_count(std::string_view text);  // 1.5 is not_whole
Typed<Weight> read_weight(std::string_view text);
Typed<Decimal> read_decimal(std::string_view text);  // may be negative
// A bare whole number without sign, at most nine digits.
Typed<std::int64_t> read_whole(std::string_view text);
// The number of days, months or years in a period. Above this bound no day could be named.
inline constexpr std::int64_t most_period_number = 20'000;
Typed<std::int64_t> read_period_number(std::string_view text);

}  // namespace quantity
