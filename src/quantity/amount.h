// quantity/amount.h: how surely an amount is known, and sums of such amounts. A sum is unknown if a
// term is, else at least if a term is (design: an amount is exact, at least, default or unknown).
#pragma once

#include <algorithm>

#include "quantity/exact.h"

namespace quantity {

// Ordered from best to worst: a sum is as sure as its worst term.
enum class Sureness { exact, by_default, at_least, unknown };

constexpr Sureness worse(Sureness a, Sureness b) { return std::max(a, b); }

// An amount of T with its sureness. The value of an unknown amount is what is known of it (a lower
// bound), and is never shown as a figure.
template <class T>
struct Known {
  T value{};
  Sureness sureness = Sureness::exact;

  bool is_unknown() const { return sureness == Sureness::unknown; }
  friend constexpr Known operator+(Known a, Known b) {
    return {a.value + b.value, worse(a.sureness, b.sureness)};
  }
  friend constexpr Known operator-(Known a, Known b) {
    return {a.value - b.value, worse(a.sureness, b.sureness)};
  }
  friend constexpr Known& operator+=(Known& a, Known b) { return a = a + b; }
  friend constexpr bool operator==(const Known&, const Known&) = default;
};

}  // namespace quantity
