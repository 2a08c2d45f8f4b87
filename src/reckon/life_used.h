// reckon/life_used.h: parts of a life that were used up, as an exact fraction: 3000/6000 + 900/4500
// is 7/10. Where the exact fraction would not fit into 128 bits it is rounded up, so that never
// more is left than there is.
#pragma once

#include <cstdint>
#include <vector>

#include "reckon/figure.h"
#include "reckon/wide.h"

namespace reckon {

// So much of what would be the whole life, both in the smallest unit of one clock.
struct UsedOf {
  std::int64_t used = 0;   // never negative
  std::int64_t whole = 1;  // more than nothing
};

class LifeUsed {
 public:
  LifeUsed() = default;  // nothing
  explicit LifeUsed(const std::vector<UsedOf>& parts);

  bool is_nothing() const { return numerator_ == 0; }
  bool is_all() const { return numerator_ == denominator_; }
  bool is_more_than_all() const { return numerator_ > denominator_; }
  // What is left of a whole, rounded down: of 4500 with 7/10 used, 1350. Negative: over by so much.
  std::int64_t left_of(std::int64_t whole) const;
  // What is left for a counter that goes on in the same share: of 2000 with 4/5 used, 500.
  std::int64_t left_in_share(std::int64_t used) const;
  // In ten-thousandths of the life, rounded up; at most a million lives.
  std::int64_t in_ten_thousandths() const;
  // Whether the ten-thousandths are exact.
  bool is_exact_in_ten_thousandths() const;

 private:
  Wide numerator_ = 0;
  Wide denominator_ = 1;
};

// A count of a whole counter is cut to whole ones; everything else stays as it is.
std::int64_t in_whole_units(std::int64_t left, const Clock& clock);

}  // namespace reckon
