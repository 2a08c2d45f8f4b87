#include "reckon/tally.h"

#include <algorithm>

namespace reckon {

namespace {

const logbook::Counter* counter_of(const Line& line) {
  return std::get_if<logbook::Counter>(&line.clock);
}

Spot spot_of(const Line& line) {
  Spot spot;
  spot.place = line.place;
  spot.is_engine_place = line.place && is_engine_place(*line.place);
  spot.engine_places = &line.ledger->engine_places;
  return spot;
}

bool is_counted_always(const logbook::Counter& counter) {
  return counter.kind == logbook::CounterKind::starts ||
         counter.kind == logbook::CounterKind::flights ||
         counter.kind == logbook::CounterKind::landings;
}

bool speaks_of(const Use& use, const Line& line) {
  if (const logbook::Counter* counter = counter_of(line)) return states(use, *counter);
  const auto& meter = std::get<HoursClock>(line.clock).meter;
  return !meter || run_of(use, *meter) != nullptr || use.source.meter == meter;
}

bool is_line_counted(const Line& line) {
  const logbook::Counter* counter = counter_of(line);
  if (!line.rules.empty() || (counter != nullptr && is_counted_always(*counter))) return true;
  if (counter == nullptr && !std::get<HoursClock>(line.clock).meter) return true;
  const std::vector<Use>& uses = line.ledger->uses;
  return std::any_of(uses.begin(), uses.end(),
                     [&](const Use& use) { return speaks_of(use, line); });
}

struct Range {
  std::size_t from = 0;
  std::size_t to = 0;
};

Range range_of(const Line& line, const Span& span) {
  const std::size_t from = line.ledger->first_after(span.from);
  return {from, std::max(from, line.ledger->first_after(span.to))};
}

}  // namespace

Amount Tally::amount(const Line& line, const Use& use) {
  const Spot spot = spot_of(line);
  if (const logbook::Counter* counter = counter_of(line)) {
    return line.rules.counted(use, *counter, spot);
  }
  const auto& meter = std::get<HoursClock>(line.clock).meter;
  return meter ? meter_used(use, *meter) : hours_used(use, spot);
}

Tally::Column Tally::make_column(const Line& line) {
  Column column;
  column.is_counted = is_line_counted(line);
  column.sums.push_back(0);
  column.at_least.push_back(0);
  column.flights.push_back(0);
  for (std::size_t at = 0; at < line.ledger->uses.size(); ++at) {
    const Use& use = line.ledger->uses[at];
    const Amount one = amount(line, use);
    column.sums.push_back(quantity::checked_add(column.sums.back(), one.value));
    column.at_least.push_back(column.at_least.back() + (one.sureness == Sureness::exact ? 0 : 1));
    column.flights.push_back(column.flights.back() + use.flights());
    if (use.unaccounted != nullptr) column.unaccounted.push_back(at);
  }
  return column;
}

const Tally::Column& Tally::column(const Line& line) const {
  const auto found = columns_.find(line);
  if (found != columns_.end()) return found->second;
  return columns_.emplace(line, make_column(line)).first->second;
}

bool Tally::is_counted(const Line& line) const { return column(line).is_counted; }

Used Tally::used(const Line& line, const Span& span) const {
  const Range range = range_of(line, span);
  Used used;
  if (range.from == range.to) return used;
  const Column& sums = column(line);
  used.amount.value = sums.sums[range.to] - sums.sums[range.from];
  const bool is_exact = sums.at_least[range.to] == sums.at_least[range.from];
  used.amount.sureness = is_exact ? Sureness::exact : Sureness::at_least;
  used.flights = sums.flights[range.to] - sums.flights[range.from];
  used.first = line.ledger->uses[range.from].root;
  used.last = line.ledger->uses[range.to - 1].root;
  return used;
}

Amount Tally::missing(const Line& line, const Span& span) const {
  Amount sum;
  const Range range = range_of(line, span);
  for (const std::size_t at : column(line).unaccounted) {
    if (range.from <= at && at < range.to) sum += amount(line, line.ledger->uses[at]);
  }
  return sum;
}

}  // namespace reckon
