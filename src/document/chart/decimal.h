#pragma once
// Digits of coordinates, the same bytes on every machine and in every locale.

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace document {

// With that many digits behind the point, rounded; never -0. `at` must be finite.
std::string fixed(double at, std::size_t places);

// The same without zeros at the end: 12.5, 12, -0.3.
std::string shortest(double at, std::size_t places);

// number x 10^exponent, written out: 15 and -1 give 1.5, 2 and 3 give 2000.
std::string scaled(std::int64_t number, int exponent);

// The value of a plain number (number.h), if it is one.
std::optional<double> value_of(std::string_view digits);

}  // namespace document
