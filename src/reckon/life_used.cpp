#include "reckon/life_used.h"

#include <algorithm>
#include <optional>

#include "quantity/exact.h"
#include "quantity/expect.h"

namespace reckon {
namespace {

constexpr Wide ten_thousand = 10'000;
// With a denominator below this, every product with an amount fits into 128 bits.
constexpr Wide largest_denominator = static_cast<Wide>(10'000'000'000'000'000) * 100'000;
constexpr Wide rounded_denominator = 1'000'000'000'000'000;
// No clock ever shows so much; more lives than this are not told apart.
constexpr Wide most_lives = 1'000'000;

Wide common_divisor(Wide a, Wide b) {
  while (b != 0) {
    const Wide rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

Wide floor_of(Wide a, Wide b) { return a / b - (a % b != 0 && a < 0 ? 1 : 0); }
Wide ceiling_of(Wide a, Wide b) { return a / b + (a % b != 0 && a > 0 ? 1 : 0); }

struct PartsSum {
  Wide numerator = 0;
  Wide denominator = 1;
};

// Empty: it does not fit.
std::optional<PartsSum> exact_sum(const std::vector<UsedOf>& parts) {
  PartsSum sum;
  for (const UsedOf& part : parts) {
    const Wide divisor = common_divisor(part.used, part.whole);
    const Wide used = part.used / divisor;
    const Wide whole = part.whole / divisor;
    const Wide shared = common_divisor(sum.denominator, whole);
    const Wide times = whole / shared;
    if (sum.denominator > largest_denominator / times) return std::nullopt;
    const Wide more = sum.denominator / shared;
    if (sum.numerator > most_lives * sum.denominator || used > most_lives * whole) {
      return std::nullopt;
    }
    sum.numerator = sum.numerator * times + used * more;
    sum.denominator *= times;
  }
  return sum;
}

PartsSum sum_rounded_up(const std::vector<UsedOf>& parts) {
  PartsSum sum{0, rounded_denominator};
  for (const UsedOf& part : parts) {
    sum.numerator += ceiling_of(static_cast<Wide>(part.used) * rounded_denominator, part.whole);
  }
  sum.numerator = std::min(sum.numerator, most_lives * rounded_denominator);
  return sum;
}

}  // namespace

LifeUsed::LifeUsed(const std::vector<UsedOf>& parts) {
  for (const UsedOf& part : parts) EXPECT(part.used >= 0 && part.whole > 0);
  const PartsSum sum = exact_sum(parts).value_or(sum_rounded_up(parts));
  numerator_ = sum.numerator;
  denominator_ = sum.denominator;
}

std::int64_t LifeUsed::left_of(std::int64_t whole) const {
  const Wide lives = numerator_ / denominator_;
  const Wide rest = numerator_ - lives * denominator_;
  const Wide used =
      static_cast<Wide>(whole) * lives + ceiling_of(static_cast<Wide>(whole) * rest, denominator_);
  const Wide left = static_cast<Wide>(whole) - used;
  return static_cast<std::int64_t>(std::max<Wide>(left, -(Wide{1} << 62)));
}

std::int64_t LifeUsed::left_in_share(std::int64_t used) const {
  if (numerator_ == 0) return 0;
  const Wide at_the_end = floor_of(static_cast<Wide>(used) * denominator_, numerator_);
  return static_cast<std::int64_t>(at_the_end - used);
}

std::int64_t LifeUsed::in_ten_thousandths() const {
  const Wide lives = numerator_ / denominator_;
  const Wide rest = numerator_ - lives * denominator_;
  return static_cast<std::int64_t>(lives * ten_thousand +
                                   ceiling_of(rest * ten_thousand, denominator_));
}

bool LifeUsed::is_exact_in_ten_thousandths() const {
  return numerator_ % denominator_ * ten_thousand % denominator_ == 0;
}

std::int64_t in_whole_units(std::int64_t left, const Clock& clock) {
  const auto* counter = std::get_if<logbook::Counter>(&clock);
  if (counter == nullptr || logbook::takes_fractions(*counter)) return left;
  return quantity::floor_divide(left, 1000) * 1000;
}

}  // namespace reckon
