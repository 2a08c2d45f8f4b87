#include "reckon/figure.h"

#include "quantity/exact.h"
#include "quantity/expect.h"

namespace reckon {

Figure Figure::as_sure_as(Sureness sureness) const {
  Figure same = *this;
  same.sureness_ = sureness;
  return same;
}

quantity::ServiceHours Figure::hours() const {
  EXPECT(unit_ == Unit::hours);
  return quantity::ServiceHours::of(raw_);
}

quantity::Cycles Figure::count() const {
  EXPECT(unit_ == Unit::count);
  return quantity::Cycles::of(raw_);
}

quantity::Days Figure::days() const {
  EXPECT(unit_ == Unit::days);
  return quantity::Days::of(raw_);
}

Figure Figure::operator+(const Figure& other) const {
  EXPECT(unit_ == other.unit_);
  Figure sum = *this;
  sum.raw_ = quantity::checked_add(raw_, other.raw_);
  sum.sureness_ = quantity::worse(sureness_, other.sureness_);
  return sum;
}

Figure Figure::operator-(const Figure& other) const {
  EXPECT(unit_ == other.unit_);
  Figure difference = *this;
  difference.raw_ = quantity::checked_subtract(raw_, other.raw_);
  difference.sureness_ = quantity::worse(sureness_, other.sureness_);
  return difference;
}

Figure Figure::operator-() const {
  Figure negative = *this;
  negative.raw_ = quantity::checked_subtract(0, raw_);
  return negative;
}

std::strong_ordering Figure::compare(const Figure& other) const {
  EXPECT(unit_ == other.unit_);
  return raw_ <=> other.raw_;
}

Figure zero(const Clock& clock) {
  if (std::holds_alternative<HoursClock>(clock)) return Figure(quantity::ServiceHours{});
  return Figure(quantity::Cycles{});
}

Figure figure_on(const Clock& clock, quantity::Known<std::int64_t> amount) {
  if (std::holds_alternative<HoursClock>(clock)) {
    return {quantity::ServiceHours::of(amount.value), amount.sureness};
  }
  return {quantity::Cycles::of(amount.value), amount.sureness};
}

}  // namespace reckon
