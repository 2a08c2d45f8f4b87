#include "quantity/counts.h"

#include "quantity/figure.h"

namespace quantity {
namespace {

constexpr std::int64_t most = 999'999'999;
constexpr std::int64_t thousandths_of_most = most * 1000 + 999;
constexpr Decimals thousandths{3, 0};

// Reads a figure and makes a T of its smallest units.
template <class T>
Typed<T> read_as(std::string_view text, const FigureForm& form) {
  const Typed<std::int64_t> figure = read_figure(text, form);
  if (!figure.is_read()) return figure.misread();
  return T::of(figure.value());
}

}  // namespace

std::string say(Cycles cycles) { return say_figure(cycles.count(), thousandths); }

std::string say(Weight weight) { return say_figure(weight.count(), thousandths); }

std::string say(Decimal decimal) { return say_figure(decimal.count(), thousandths); }

Typed<Cycles> read_cycles(std::string_view text) {
  return read_as<Cycles>(text, {3, 0, thousandths_of_most});
}

Typed<Cycles> read_whole_count(std::string_view text) {
  const Typed<std::int64_t> whole = read_figure(text, {0, 0, most});
  if (!whole.is_read()) return whole.misread();
  return whole_cycles(whole.value());
}

Typed<Weight> read_weight(std::string_view text) {
  return read_as<Weight>(text, {3, 0, most_weight.count()});
}

Typed<Decimal> read_decimal(std::string_view text) {
  return read_as<Decimal>(text, {3, -thousandths_of_most, thousandths_of_most});
}

Typed<std::int64_t> read_whole(std::string_view text) {
  const Typed<std::int64_t> whole = read_figure(text, {0, 0, most});
  if (!whole.is_read() || is_all_digits(text)) return whole;
  return Misread{Misreading::not_whole, say_figure(whole.value(), {0, 0}), {}};
}

Typed<std::int64_t> read_period_number(std::string_view text) {
  const Typed<std::int64_t> whole = read_whole(text);
  if (whole.is_read() && whole.value() > most_period_number) {
    return Misreading::out_of_range;
  }
  return whole;
}

}  // namespace quantity
