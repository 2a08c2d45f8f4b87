#pragma once
// How far two colours stand apart, by WCAG 2.1: relative luminance and contrast ratio.

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <string_view>

namespace document_test {

inline double luminance(std::string_view colour) {
  double sum = 0;
  const double shares[] = {0.2126, 0.7152, 0.0722};
  for (std::size_t i = 0; i < 3; ++i) {
    const double part = std::stoi(std::string(colour.substr(1 + 2 * i, 2)), nullptr, 16) / 255.0;
    sum += shares[i] * (part <= 0.03928 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4));
  }
  return sum;
}

inline double contrast(std::string_view a, std::string_view b) {
  const double light = std::max(luminance(a), luminance(b));
  return (light + 0.05) / (std::min(luminance(a), luminance(b)) + 0.05);
}

}  // namespace document_test
