// sentence/keys.h: what tells repeated clauses of one kind apart. Clauses are written in the order
// of their keys; a key that comes twice is a misreading.
#pragma once

#include <optional>
#include <tuple>

#include "logbook/fact.h"

namespace sentence {

inline auto key(const logbook::PublicKey& public_key) { return std::tie(public_key.text); }
inline auto key(const logbook::EntryName& entry) { return std::tie(entry.writer, entry.number); }
inline auto key(const logbook::HoursAt& hours) { return std::tie(hours.place); }
inline auto key(const logbook::CountAt& count) {
  return std::tie(count.count.counter, count.place);
}
inline auto key(const logbook::Count& count) { return std::tie(count.counter); }
inline auto key(const logbook::MeterRun& run) { return std::tie(run.meter); }
inline auto key(const logbook::MeterReading& reading) { return std::tie(reading.meter); }
inline auto key(const logbook::Each& each) { return std::tie(each.event); }
inline auto key(const logbook::Band& band) { return std::tie(band.above); }
inline auto key(const logbook::GaugeFor& excess) { return std::tie(excess.gauge); }
inline auto key(const logbook::AcceptedDoubt& accepted) { return std::tie(accepted.doubt); }

// Since new and no basis at all are the same total.
inline bool is_since_overhaul(std::optional<logbook::Basis> since) {
  return since == logbook::Basis::overhaul;
}
inline auto key(const logbook::Had& had) {
  const auto* hours = std::get_if<logbook::ClockHours>(&had.amount);
  const auto* count = std::get_if<logbook::Count>(&had.amount);
  return std::tuple(is_since_overhaul(had.since), had.amount.index(),
                    hours == nullptr ? std::nullopt : hours->meter,
                    count == nullptr ? logbook::Counter{} : count->counter);
}
inline auto key(const logbook::Unknown& unknown) {
  return std::tuple(is_since_overhaul(unknown.since), unknown.what);
}

template <class Item>
concept HasKey = requires(const Item& item) {
  key(item);
};

}  // namespace sentence
