#include "reckon/readings.h"

#include <algorithm>

namespace reckon {

Readings::Readings(const Standing& standing, const Timeline& timeline) {
  for (const StandingFact& fact : standing.facts) {
    const auto* forward = std::get_if<logbook::BringsForward>(&fact.said->fact);
    const auto* aircraft = forward ? std::get_if<logbook::Aircraft>(&forward->thing) : nullptr;
    if (aircraft == nullptr) continue;
    for (const logbook::MeterReading& meter : forward->meters) {
      read_[{*aircraft, meter.meter}].push_back({{fact.said->day, 0}, meter.reading});
    }
  }
  for (const auto& [aircraft, ledger] : timeline.ledgers) {
    for (std::size_t at = 0; at < ledger.uses.size(); ++at) {
      for (const logbook::MeterRun& run : ledger.uses[at].meters()) {
        read_[{aircraft, run.meter}].push_back({ledger.marks[at], run.to});
      }
    }
  }
  for (const WorkEvent& event : timeline.works) {
    const logbook::Fact& fact = event.fact->said->fact;
    if (const auto* changed = std::get_if<logbook::MeterChanged>(&fact)) {
      read_[{changed->aircraft, changed->meter}].push_back({event.mark, changed->in});
    }
    if (const auto* lost = std::get_if<logbook::MeterLost>(&fact)) {
      read_[{lost->aircraft, lost->meter}].push_back({event.mark, lost->at});
    }
  }
  for (auto& [key, read] : read_) {
    std::stable_sort(read.begin(), read.end(),
                     [](const Read& a, const Read& b) { return a.mark < b.mark; });
  }
}

std::optional<logbook::MeterReading> Readings::newest(const logbook::Aircraft& aircraft,
                                                      const logbook::MeterName& meter,
                                                      const Mark& at) const {
  const auto found = read_.find({aircraft, meter});
  if (found == read_.end()) return std::nullopt;
  const auto after = std::upper_bound(found->second.begin(), found->second.end(), at,
                                      [](const Mark& a, const Read& b) { return a < b.mark; });
  if (after == found->second.begin()) return std::nullopt;
  return logbook::MeterReading{meter, std::prev(after)->reading};
}

}  // namespace reckon
