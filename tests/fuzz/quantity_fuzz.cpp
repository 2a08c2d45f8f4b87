// Any text given to the readers of amounts either is a misreading or is read; and what is read,
// said and read again is the same amount.

#include <cstddef>
#include <cstdint>
#include <string_view>

#include "quantity/calendar.h"
#include "quantity/counts.h"
#include "quantity/expect.h"
#include "quantity/hours.h"
#include "quantity/temperature.h"

namespace {

template <class Amount>
void try_reader(quantity::Typed<Amount> (*read)(std::string_view), std::string_view text) {
  const auto first = read(text);
  if (!first.is_read()) return;
  const auto again = read(say(first.value()));
  EXPECT(again.is_read());
  EXPECT(again.value() == first.value());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  try_reader(&quantity::read_hours, text);
  try_reader(&quantity::read_hour_meter, text);
  try_reader(&quantity::read_factor, text);
  try_reader(&quantity::read_cycles, text);
  try_reader(&quantity::read_weight, text);
  try_reader(&quantity::read_decimal, text);
  try_reader(&quantity::read_temperature, text);
  try_reader(&quantity::read_margin, text);
  try_reader(&quantity::read_day, text);
  try_reader(&quantity::read_instant, text);
  return 0;
}
