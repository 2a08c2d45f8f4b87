// quantity/figure.h: how a figure in decimal notation becomes a whole number of smallest units and
// back. Every reader of this folder goes through here, so that all of them refuse alike.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "quantity/typed.h"

namespace quantity {

// What one kind of figure takes. The smallest unit is 10 to the power of minus decimals.
struct FigureForm {
  int decimals = 0;          // 0 to 6
  std::int64_t lowest = 0;   // in smallest units; below zero lets a minus in
  std::int64_t highest = 0;  // in smallest units
};

// Reads 1.7, 1,7 (a comma with one or two digits after it and no point beside it), 3. The value is
// in smallest units. Refusals:
//   not_a_number  a plus sign, a blank, no digit before or after a mark;
//   two_readings  1,234 and 1.234,5 (both readings are given); also 4.320 where the form has fewer
//                 than three decimals, since that may be 4.32 or 4320;
//   not_exact     more decimals than the form holds (not_whole if it holds none), with the figures
//                 below and above;
//   out_of_range  more than 9 digits before the point or 6 after it, outside lowest to highest, or
//   a
//                 minus where none is taken.
Typed<std::int64_t> read_figure(std::string_view text, const FigureForm& form);

struct Decimals {
  int held = 0;   // decimals of the smallest unit
  int least = 0;  // decimals that are written in any case
};
// Writes a count of smallest units without trailing zeros beyond the least decimals: 1.7, -12.5, 3.
std::string say_figure(std::int64_t count, Decimals decimals);

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_all_digits(std::string_view text);  // at least one, and nothing else
// The value of at most 18 digits; others are a broken promise.
std::int64_t value_of_digits(std::string_view digits);
// Digits with zeros in front, as in 04 and 2026; count is not negative.
std::string say_digits(std::int64_t count, std::size_t width);

}  // namespace quantity
