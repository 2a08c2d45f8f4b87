#include "reckon/day_order.h"

#include <algorithm>
#include <iterator>
#include <tuple>
#include <utility>

namespace reckon {

namespace {

enum class Told { by_reading, by_time, as_written };

struct Sortable {
  Use use;
  Told told = Told::as_written;
  std::int64_t reading = 0;
  std::int64_t minute = 0;
};

// On the day of a step a run is the old meter's if it lies nearer to where that one stopped than to
// where the new one began.
std::int64_t on_one_scale(const logbook::MeterRun& run, const std::optional<MeterStep>& step) {
  if (!step) return run.from.count();
  const quantity::Hours from_old = step->out - run.to;
  const quantity::Hours from_new = run.from - step->in;
  const bool is_old = !from_old.is_negative() && (from_new.is_negative() || from_old <= from_new);
  return is_old ? run.from.count() : run.from.count() + (step->out - step->in).count();
}

Sortable sortable(Use use, const std::optional<MeterStep>& step) {
  Sortable result;
  const logbook::MeterRun* run = use.source.meter ? run_of(use, *use.source.meter) : nullptr;
  const auto minute = began_at(*use.said);
  result.told = run ? Told::by_reading : minute ? Told::by_time : Told::as_written;
  if (run != nullptr) result.reading = on_one_scale(*run, step);
  if (minute) result.minute = *minute;
  result.use = std::move(use);
  return result;
}

bool is_before(const Sortable& a, const Sortable& b) {
  const auto key = [](const Sortable& one) {
    const std::int64_t value = one.told == Told::by_reading ? one.reading
                               : one.told == Told::by_time  ? one.minute
                                                            : 0;
    return std::tuple(one.told, value, one.use.written);
  };
  return key(a) < key(b);
}

// A later time comes after all that began no later; without any time, as it was written.
std::size_t place_by_time(std::int64_t minute, const std::vector<Use>& uses) {
  std::size_t after = 0;
  for (std::size_t at = 0; at < uses.size(); ++at) {
    const auto began = began_at(*uses[at].said);
    if (began && *began <= minute) after = at + 1;
  }
  return after;
}

bool has_times(const std::vector<Use>& uses) {
  return std::any_of(uses.begin(), uses.end(),
                     [](const Use& use) { return began_at(*use.said).has_value(); });
}

std::size_t place_as_written(const logbook::EntryId& id, const std::vector<Use>& uses,
                             const Knowledge& knowledge) {
  std::size_t after = 0;
  for (std::size_t at = 0; at < uses.size(); ++at) {
    if (knowledge.knew(id, uses[at].root)) after = at + 1;
  }
  return after;
}

// Flights that nothing tells the place of come last, unless one was written after them.
std::size_t place_flight(const Sortable& flight, const std::vector<Use>& uses,
                         const Knowledge& knowledge) {
  if (flight.told == Told::by_time && has_times(uses)) return place_by_time(flight.minute, uses);
  const std::size_t after = place_as_written(flight.use.root, uses, knowledge);
  for (std::size_t at = after; at < uses.size(); ++at) {
    if (knowledge.knew(uses[at].root, flight.use.root)) return at;
  }
  return uses.size();
}

bool is_flagged(const Use& use, bool logbook::Flew::*flag) {
  return use.flew != nullptr && use.flew->*flag;
}

void heed_flags(std::vector<Use>& uses) {
  std::stable_partition(uses.begin(), uses.end(), [](const Use& use) {
    return is_flagged(use, &logbook::Flew::before_the_first_flight);
  });
  std::stable_partition(uses.begin(), uses.end(), [](const Use& use) {
    return !is_flagged(use, &logbook::Flew::after_the_last_flight);
  });
}

bool has_reading(const Use& use) {
  return use.source.meter && run_of(use, *use.source.meter) != nullptr;
}

std::size_t place_by_reading(quantity::HourMeter reading, const std::vector<Use>& uses) {
  std::size_t after = 0;
  for (std::size_t at = 0; at < uses.size(); ++at) {
    if (has_reading(uses[at]) && run_of(uses[at], *uses[at].source.meter)->to <= reading) {
      after = at + 1;
    }
  }
  return after;
}

// Uses that its writer did not know, and whose writer did not know it, up to the first that did.
std::vector<std::size_t> uses_apart(const Work& work, std::size_t from,
                                    const std::vector<Use>& uses, const Knowledge& knowledge) {
  std::vector<std::size_t> apart;
  for (std::size_t at = from; at < uses.size(); ++at) {
    if (knowledge.knew(uses[at].root, work.root)) break;
    apart.push_back(at);
  }
  return apart;
}

WorkPlace place_untold(const Work& work, const std::vector<Use>& uses, const Knowledge& knowledge,
                       Ambiguous policy) {
  WorkPlace place;
  place.after = place_as_written(work.root, uses, knowledge);
  const auto apart = uses_apart(work, place.after, uses, knowledge);
  if (apart.empty()) return place;
  for (const std::size_t at : apart) place.apart.push_back(uses[at].root);
  if (policy == Ambiguous::late) place.after = apart.back() + 1;
  return place;
}

}  // namespace

std::optional<std::int64_t> began_at(const logbook::Said& said) {
  const auto* flew = std::get_if<logbook::Flew>(&said.fact);
  if (flew != nullptr && flew->took_off) return quantity::utc_minute(said.day, *flew->took_off);
  if (said.time) return quantity::utc_minute(said.day, *said.time);
  return std::nullopt;
}

std::vector<Use> in_order(std::vector<Use> uses, const Knowledge& knowledge,
                          const std::optional<MeterStep>& step) {
  std::vector<Sortable> all;
  for (Use& use : uses) all.push_back(sortable(std::move(use), step));
  std::sort(all.begin(), all.end(), is_before);
  std::vector<Use> ordered;
  for (Sortable& one : all) {
    const std::size_t at =
        one.told == Told::by_reading ? ordered.size() : place_flight(one, ordered, knowledge);
    ordered.insert(ordered.begin() + static_cast<std::ptrdiff_t>(at), std::move(one.use));
  }
  heed_flags(ordered);
  return ordered;
}

WorkPlace place_of(const Work& work, const std::vector<Use>& uses, const Knowledge& knowledge,
                   Ambiguous policy) {
  if (work.is_before_first) return {0, {}};
  if (work.is_after_last) return {uses.size(), {}};
  const bool can_read = work.reading && std::any_of(uses.begin(), uses.end(), has_reading);
  if (can_read) return {place_by_reading(*work.reading, uses), {}};
  if (work.utc_minute && has_times(uses)) return {place_by_time(*work.utc_minute, uses), {}};
  return place_untold(work, uses, knowledge, policy);
}

}  // namespace reckon
