#include "reckon/check_flight.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "reckon/check_hours.h"

namespace reckon {

namespace {

using logbook::CounterKind;
using quantity::Cycles;
using quantity::Hours;

Cycles sum_of(const std::vector<logbook::CountAt>& counts, CounterKind kind) {
  Cycles sum;
  for (const logbook::CountAt& at : counts) {
    if (at.count.counter.kind == kind) sum += at.count.amount;
  }
  return sum;
}
bool says(const std::vector<logbook::CountAt>& counts, CounterKind kind) {
  return std::any_of(counts.begin(), counts.end(),
                     [&](const logbook::CountAt& at) { return at.count.counter.kind == kind; });
}

// These run on the ground too, so they are compared with hours only when the record names them.
bool runs_on_the_ground(const logbook::MeterName& meter) {
  static constexpr std::array<std::string_view, 3> names = {"engine-run", "oil-pressure", "tach"};
  return std::find(names.begin(), names.end(), meter.text) != names.end();
}

const logbook::MeterRun* run_of(const std::vector<logbook::MeterRun>& meters,
                                const logbook::MeterName& name) {
  const auto found = std::find_if(meters.begin(), meters.end(),
                                  [&](const auto& run) { return run.meter == name; });
  return found == meters.end() ? nullptr : &*found;
}

// The run that ought to show the hours; null: none does.
const logbook::MeterRun* compared_run(const std::vector<logbook::MeterRun>& meters,
                                      const HoursSource& source) {
  if (source.is_stated) return source.meter ? run_of(meters, *source.meter) : nullptr;
  if (const auto* collective = run_of(meters, {"collective"})) return collective;
  return meters.size() == 1 && !runs_on_the_ground(meters.front().meter) ? &meters.front()
                                                                         : nullptr;
}

Objection hours_differ(CheckKind kind, Hours stated, Hours reckoned) {
  return with_figures(doubt(kind, "hours"), hours_figure(stated), hours_figure(reckoned));
}

// A count of cycles that says what the meter says of the hours: the fields were swapped.
bool is_swapped(const logbook::Flew& flew, const logbook::MeterRun& run) {
  return std::any_of(flew.counts.begin(), flew.counts.end(), [&](const logbook::CountAt& at) {
    const bool is_whole_hours = at.count.amount.count() * 3600 % 1000 == 0;
    return is_whole_hours && !quantity::is_whole(at.count.amount) &&
           at.count.amount.count() * 3600 / 1000 == (run.to - run.from).count();
  });
}

void check_meter(const logbook::Flew& flew, const logbook::MeterRun& run, Objections& objections) {
  if (run.to < run.from || agree_with_meter(flew.hours, run)) return;
  const Hours shown = run.to - run.from;
  const auto as_minutes = read_as_minutes(flew.hours);
  CheckKind kind = CheckKind::hours_against_meter;
  if (as_minutes && agree_with_meter(*as_minutes, run)) kind = CheckKind::minutes_as_decimals;
  if (is_swapped(flew, run)) kind = CheckKind::swapped_fields;
  objections.push_back(hours_differ(kind, flew.hours, shown));
  objections.back().names = {run.meter.text};
}

// Minutes from one time to another; a second time that is earlier is on the next day.
Hours clock_hours(Day day, const quantity::ClockTime& from, const quantity::ClockTime& to) {
  std::int64_t minutes = quantity::utc_minute(day, to) - quantity::utc_minute(day, from);
  if (minutes < 0) minutes += 24 * 60;
  return Hours::of(minutes * 60);
}

// Several flights in one entry have ground time between take-off and landing.
bool fits_the_clock(const logbook::Flew& flew, Hours by_clock) {
  if (agree_with_clock(flew.hours, by_clock)) return true;
  return flights_of(flew) > quantity::whole_cycles(1) && flew.hours < by_clock;
}

void check_times(const logbook::Flew& flew, Day day, Objections& objections) {
  if (!flew.took_off || !flew.landed) return;
  const Hours by_clock = clock_hours(day, *flew.took_off, *flew.landed);
  if (fits_the_clock(flew, by_clock)) return;
  const auto as_minutes = read_as_minutes(flew.hours);
  const bool is_minutes = as_minutes && agree_with_clock(*as_minutes, by_clock);
  const bool is_known = std::any_of(
      objections.begin(), objections.end(),
      [](const Objection& each) { return each.kind == CheckKind::minutes_as_decimals; });
  if (is_minutes && is_known) return;
  objections.push_back(
      hours_differ(is_minutes ? CheckKind::minutes_as_decimals : CheckKind::hours_against_clock,
                   flew.hours, by_clock));
}

// Block times hold the flight and the ground on both sides of it, so they are never shorter.
void check_blocks(const logbook::Flew& flew, Day day, Objections& objections) {
  if (!flew.blocks) return;
  const Hours blocks = clock_hours(day, flew.blocks->off, flew.blocks->on);
  if (flew.hours <= blocks || agree_with_clock(flew.hours, blocks)) return;
  objections.push_back(hours_differ(CheckKind::hours_against_clock, flew.hours, blocks));
  objections.back().slot = "blocks";
}

void check_landings(const logbook::Flew& flew, Objections& objections) {
  if (!says(flew.counts, CounterKind::landings)) return;
  const Cycles landings = sum_of(flew.counts, CounterKind::landings);
  const Cycles flights = flights_of(flew);
  if (landings >= flights) return;
  objections.push_back(with_figures(doubt(CheckKind::landings_below_flights, "counts"),
                                    Figure(landings), Figure(flights)));
}

void check_lifts(const std::vector<logbook::Count>& counts, bool has_flown,
                 Objections& objections) {
  for (const logbook::Count& count : counts) {
    if (count.counter.kind != CounterKind::lifts || count.amount.is_zero() || has_flown) continue;
    objections.push_back(doubt(CheckKind::lifts_without_flight, "counts"));
    objections.back().stated = Figure(count.amount);
    return;
  }
}

void check_fractions(const std::vector<logbook::Count>& counts, Objections& objections) {
  for (const logbook::Count& count : counts) {
    if (logbook::takes_fractions(count.counter) || quantity::is_whole(count.amount)) continue;
    objections.push_back(refusal(CheckKind::fraction_of_a_whole_count, "counts"));
    objections.back().stated = Figure(count.amount);
  }
}

// A fraction of a cycle is worked out for one engine, so two engines can hardly both have it.
void check_twin(const logbook::Flew& flew, Objections& objections) {
  const auto is_fraction_for_all = [](const logbook::CountAt& at) {
    return !at.place && !quantity::is_whole(at.count.amount) &&
           logbook::takes_fractions(at.count.counter);
  };
  const auto found = std::find_if(flew.counts.begin(), flew.counts.end(), is_fraction_for_all);
  if (found == flew.counts.end()) return;
  objections.push_back(doubt(CheckKind::not_on_a_twin, "counts"));
  objections.back().stated = Figure(found->count.amount);
}

std::vector<logbook::Count> plain_counts(const logbook::Flew& flew) {
  std::vector<logbook::Count> counts;
  for (const logbook::CountAt& at : flew.counts) counts.push_back(at.count);
  return counts;
}

void check(const logbook::Flew& flew, Day day, const AircraftKind& kind, Objections& objections) {
  const logbook::MeterRun* run = flew.by_clock ? nullptr : compared_run(flew.meters, kind.source);
  if (run != nullptr) check_meter(flew, *run, objections);
  if (!flew.since) check_times(flew, day, objections);
  if (!flew.since) check_blocks(flew, day, objections);
  check_landings(flew, objections);
  const std::vector<logbook::Count> counts = plain_counts(flew);
  check_fractions(counts, objections);
  check_lifts(counts, !flew.hours.is_zero() && !flights_of(flew).is_zero(), objections);
  if (kind.is_twin) check_twin(flew, objections);
}

void check(const logbook::Unaccounted& gap, const HoursSource& source, Objections& objections) {
  const logbook::MeterRun* run = compared_run(gap.meters, source);
  if (run == nullptr || run->to < run->from || agree_with_meter(gap.hours, *run)) return;
  objections.push_back(
      hours_differ(CheckKind::hours_against_meter, gap.hours, run->to - run->from));
  objections.back().names = {run->meter.text};
}

}  // namespace

Cycles flights_of(const logbook::Flew& flew) {
  return says(flew.counts, CounterKind::flights) ? sum_of(flew.counts, CounterKind::flights)
                                                 : quantity::whole_cycles(1);
}

void check_flight(const Placed& placed, const AircraftKind& kind, Objections& objections) {
  const logbook::Fact& fact = placed.said->fact;
  if (const auto* flew = std::get_if<logbook::Flew>(&fact)) {
    check(*flew, placed.said->day, kind, objections);
  } else if (const auto* gap = std::get_if<logbook::Unaccounted>(&fact)) {
    check(*gap, kind.source, objections);
  } else if (const auto* ran = std::get_if<logbook::Ran>(&fact)) {
    check_fractions(ran->counts, objections);
    check_lifts(ran->counts, false, objections);
  } else if (const auto* tried = std::get_if<logbook::Tried>(&fact)) {
    check_fractions(tried->counts, objections);
  }
}

}  // namespace reckon
