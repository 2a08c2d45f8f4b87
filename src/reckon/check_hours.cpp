#include "reckon/check_hours.h"

#include <cstdlib>

#include "reckon/past.h"

namespace reckon {

namespace {

constexpr std::int64_t tenth_seconds = 360;
constexpr std::int64_t hundredth_seconds = 36;
constexpr std::int64_t minute_seconds = 60;

std::int64_t seconds_apart(quantity::Hours a, quantity::Hours b) {
  return std::abs((a - b).count());
}
bool is_on(std::int64_t count, std::int64_t grid) { return count % grid == 0; }

bool shows(const logbook::MeterRun& run, std::int64_t grid) {
  return is_on(run.from.count(), grid) && is_on(run.to.count(), grid);
}

}  // namespace

bool agree_with_meter(quantity::Hours hours, const logbook::MeterRun& run) {
  const std::int64_t difference = seconds_apart(hours, run.to - run.from);
  if (difference == 0) return true;
  if (shows(run, tenth_seconds)) {
    return !is_on(hours.count(), tenth_seconds) && difference < tenth_seconds;
  }
  return !is_on(hours.count(), hundredth_seconds) && difference < minute_seconds;
}

bool agree_with_clock(quantity::Hours hours, quantity::Hours by_clock) {
  const std::int64_t difference = seconds_apart(hours, by_clock);
  if (is_on(hours.count(), tenth_seconds)) return difference <= tenth_seconds / 2;
  if (is_on(hours.count(), hundredth_seconds)) return difference <= hundredth_seconds / 2;
  if (is_on(hours.count(), minute_seconds)) return difference == 0;
  return difference < minute_seconds;
}

bool agree_as_totals(const Figure& stated, const Figure& reckoned) {
  if (stated.unit() != Unit::hours) return stated.compare(reckoned) == 0;
  return agrees(quantity::floor_to_seconds(stated.hours()), reckoned.hours());
}

std::optional<quantity::Hours> read_as_minutes(quantity::Hours hours) {
  if (!is_on(hours.count(), hundredth_seconds)) return std::nullopt;
  const std::int64_t hundredths = hours.count() / hundredth_seconds;
  const std::int64_t minutes = hundredths % 100;
  if (minutes == 0 || minutes >= 60) return std::nullopt;
  return quantity::Hours::of(hundredths / 100 * 3600 + minutes * minute_seconds);
}

}  // namespace reckon
