#include "document/chart/decimal.h"

#include <array>
#include <charconv>
#include <cstdlib>

#include "document/number.h"

namespace document {

std::string fixed(double at, std::size_t places) {
  std::array<char, 512> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), at,
                                 std::chars_format::fixed, static_cast<int>(places));
  std::string result(buffer.data(), end.ptr);
  if (result.find_first_not_of("-0.") == result.npos && result.starts_with('-')) result.erase(0, 1);
  return result;
}

std::string shortest(double at, std::size_t places) {
  std::string result = fixed(at, places);
  if (result.find('.') == result.npos) return result;
  result.erase(result.find_last_not_of('0') + 1);
  if (result.ends_with('.')) result.pop_back();
  return result;
}

std::string scaled(std::int64_t number, int exponent) {
  std::string digits = std::to_string(std::llabs(number));
  const auto count = static_cast<std::size_t>(std::abs(exponent));
  if (exponent >= 0) {
    if (number != 0) digits.append(count, '0');
  } else {
    if (digits.size() <= count) digits.insert(0, count + 1 - digits.size(), '0');
    digits.insert(digits.size() - count, 1, '.');
  }
  return number < 0 ? "-" + digits : digits;
}

std::optional<double> value_of(std::string_view digits) {
  if (!is_plain_number(digits)) return std::nullopt;
  double value = 0;
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (read.ec != std::errc()) return std::nullopt;
  return value;
}

}  // namespace document
