#include "command/clock.h"

#include <ctime>

#include "quantity/expect.h"

namespace command {

quantity::Instant machine_now() { return quantity::Instant::of(std::time(nullptr)); }

quantity::Day local_day(quantity::Instant instant) {
  const std::time_t seconds = instant.count();
  std::tm local{};
  EXPECT(localtime_r(&seconds, &local) != nullptr);
  const auto day =
      quantity::make_day({local.tm_year + 1900, static_cast<unsigned>(local.tm_mon + 1),
                          static_cast<unsigned>(local.tm_mday)});
  EXPECT(day.has_value());
  return *day;
}

}  // namespace command
