#include "quantity/temperature.h"

#include "quantity/figure.h"

namespace quantity {
namespace {

constexpr FigureForm tenths_of_celsius{1, -900, 20000};
// Any two temperatures in range differ by no more than this.
constexpr FigureForm tenths_of_difference{1, -20900, 20900};

}  // namespace

std::string say(Temperature temperature) { return say_figure(temperature.count(), {1, 0}); }

std::string say(Margin margin) { return say_figure(margin.count(), {1, 0}); }

Typed<Temperature> read_temperature(std::string_view text) {
  const Typed<std::int64_t> tenths = read_figure(text, tenths_of_celsius);
  if (!tenths.is_read()) return tenths.misread();
  return Temperature::of(tenths.value());
}

Typed<Margin> read_margin(std::string_view text) {
  const Typed<std::int64_t> tenths = read_figure(text, tenths_of_difference);
  if (!tenths.is_read()) return tenths.misread();
  return Margin::of(tenths.value());
}

}  // namespace quantity
