// quantity/exact.h: a checked whole number of one named smallest unit. Each quantity derives from
// Exact<Self>, so quantities of different kinds neither add nor compare, and no sum overflows.
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>

#include "quantity/expect.h"

namespace quantity {

// Checked 64-bit arithmetic; an overflow is a broken promise (bounds are checked when text is
// read).
constexpr std::int64_t checked_add(std::int64_t a, std::int64_t b) {
  std::int64_t sum = 0;
  EXPECT(!__builtin_add_overflow(a, b, &sum));
  return sum;
}
constexpr std::int64_t checked_subtract(std::int64_t a, std::int64_t b) {
  std::int64_t difference = 0;
  EXPECT(!__builtin_sub_overflow(a, b, &difference));
  return difference;
}
constexpr std::int64_t checked_multiply(std::int64_t a, std::int64_t b) {
  std::int64_t product = 0;
  EXPECT(!__builtin_mul_overflow(a, b, &product));
  return product;
}

// Division that says which way it goes; the divisor is positive.
constexpr std::int64_t floor_divide(std::int64_t a, std::int64_t b) {
  return a / b - ((a % b != 0 && a < 0) ? 1 : 0);
}
constexpr std::int64_t ceiling_divide(std::int64_t a, std::int64_t b) {
  return a / b + ((a % b != 0 && a > 0) ? 1 : 0);
}

// Self is a difference: it adds, subtracts, negates and is multiplied by whole numbers.
template <class Self>
class Exact {
 public:
  constexpr Exact() = default;
  // The count of smallest units (seconds, thousandths …; each type names its unit).
  constexpr std::int64_t count() const { return count_; }
  static constexpr Self of(std::int64_t count) {
    Self self;
    self.count_ = count;
    return self;
  }
  // A fraction would be cut off without a word.
  static constexpr Self of(std::floating_point auto) = delete;
  constexpr bool is_zero() const { return count_ == 0; }
  constexpr bool is_negative() const { return count_ < 0; }
  friend constexpr Self operator+(Self a, Self b) { return of(checked_add(a.count_, b.count_)); }
  friend constexpr Self operator-(Self a, Self b) {
    return of(checked_subtract(a.count_, b.count_));
  }
  friend constexpr Self operator-(Self a) { return of(checked_subtract(0, a.count_)); }
  friend constexpr Self operator*(Self a, std::int64_t times) {
    return of(checked_multiply(a.count_, times));
  }
  template <std::floating_point Real>
  friend constexpr Self operator*(Self, Real) = delete;
  friend constexpr Self& operator+=(Self& a, Self b) { return a = a + b; }
  friend constexpr Self& operator-=(Self& a, Self b) { return a = a - b; }
  friend constexpr auto operator<=>(Self a, Self b) { return a.count_ <=> b.count_; }
  friend constexpr bool operator==(Self a, Self b) { return a.count_ == b.count_; }

 private:
  std::int64_t count_ = 0;
};

// Self is a point whose differences are Difference: two points do not add.
template <class Self, class Difference>
class Point {
 public:
  constexpr Point() = default;
  constexpr std::int64_t count() const { return count_; }
  static constexpr Self of(std::int64_t count) {
    Self self;
    self.count_ = count;
    return self;
  }
  static constexpr Self of(std::floating_point auto) = delete;
  friend constexpr Self operator+(Self a, Difference b) {
    return of(checked_add(a.count_, b.count()));
  }
  friend constexpr Self operator-(Self a, Difference b) {
    return of(checked_subtract(a.count_, b.count()));
  }
  friend constexpr Difference operator-(Self a, Self b) {
    return Difference::of(checked_subtract(a.count_, b.count_));
  }
  friend constexpr auto operator<=>(Self a, Self b) { return a.count_ <=> b.count_; }
  friend constexpr bool operator==(Self a, Self b) { return a.count_ == b.count_; }

 private:
  std::int64_t count_ = 0;
};

}  // namespace quantity
