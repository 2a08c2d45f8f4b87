// What a thing has of uses that lie on both sides of its fitting or removal: several days in one
// entry. Of the hours a stated airframe total tells how many came before; of all else nobody can
// tell, so that what was there before and what came after both have the whole of it.
#include <algorithm>

#include "reckon/past.h"
#include "reckon/totals.h"
#include "reckon/work.h"

namespace reckon {

namespace {

bool stands_before_all(const WorkEvent& event, const SpreadUse& spread) {
  return work_in(event.fact->said->fact)->is_before_first && event.mark.day == spread.began.day;
}

// A total that the work states of another thing than the airframe: of what is removed, or of the
// engine aboard. A fitted thing's own hours say nothing of the aircraft.
struct OwnTotal {
  logbook::Thing thing;
  quantity::ServiceHours hours;
};

std::optional<OwnTotal> own_total(const WorkEvent& event) {
  const logbook::Fact& fact = event.fact->said->fact;
  if (const auto* removed = std::get_if<logbook::Removed>(&fact)) {
    const auto own = stated_on(removed->with, service_clock, logbook::Basis::new_);
    if (own && own->sureness() == Sureness::exact) return OwnTotal{removed->thing, own->hours()};
  }
  const auto engine = work_in(fact)->engine;
  const auto* fitted = std::get_if<logbook::Fitted>(&fact);
  const bool comes =
      fitted != nullptr && event.engine && fitted->thing == logbook::Thing(*event.engine);
  if (!engine || !event.engine || comes) return std::nullopt;
  return OwnTotal{*event.engine, quantity::service_hours(*engine)};
}

}  // namespace

quantity::ServiceHours Totals::spread_around(const logbook::Aircraft& aircraft,
                                             const Mark& mark) const {
  quantity::ServiceHours sum;
  const auto found = timeline_.ledgers.find(aircraft);
  if (found == timeline_.ledgers.end()) return sum;
  for (const SpreadUse& spread : found->second.around(mark)) {
    const Use& use = found->second.uses[spread.use];
    sum += service(use, use.raw);
  }
  return sum;
}

// What was flown by the work beyond what is counted before it: by the airframe's total that is
// stated there, else by the removed thing's own hours or those of the engine aboard.
std::optional<Totals::Beyond> Totals::stated_beyond(const Ledger& ledger,
                                                    const WorkEvent& event) const {
  const auto airframe = work_in(event.fact->said->fact)->airframe;
  if (airframe && event.aircraft != ledger.aircraft) return std::nullopt;
  if (airframe) {
    return Beyond{quantity::service_hours(*airframe),
                  since_new(ledger.aircraft, service_clock, event.mark).figure};
  }
  const auto own = own_total(event);
  if (!own) return std::nullopt;
  const Mark before{event.mark.day, event.mark.order - 1};
  return Beyond{own->hours, since_new(own->thing, service_clock, before).figure};
}

// Of the airframe's hours in the use those before the mark.
std::optional<quantity::ServiceHours> Totals::hours_before(const Ledger& ledger, std::size_t use,
                                                           const Mark& mark) const {
  const WorkEvent* event = timeline_.work_at(mark);
  const std::vector<SpreadUse> around = ledger.around(mark);
  if (event == nullptr || around.size() != 1 || around.front().use != use) return std::nullopt;
  if (stands_before_all(*event, around.front())) return quantity::ServiceHours{};
  const auto beyond = stated_beyond(ledger, *event);
  if (!beyond || beyond->counted.sureness() != Sureness::exact) return std::nullopt;
  const quantity::ServiceHours counted = beyond->counted.hours();
  const quantity::ServiceHours all = service(ledger.uses[use], ledger.uses[use].raw);
  if (all == quantity::ServiceHours{}) return std::nullopt;
  const quantity::Hours stated = quantity::floor_to_seconds(beyond->stated);
  if (agrees(stated, counted)) return quantity::ServiceHours{};
  if (agrees(stated, counted + all)) return all;
  const quantity::ServiceHours before = beyond->stated - counted;
  const bool is_within = quantity::ServiceHours{} < before && before < all;
  return is_within ? std::optional(before) : std::nullopt;
}

std::optional<std::int64_t> Totals::amount_before(const Line& line, std::size_t use,
                                                  const Mark& mark) const {
  const auto hours = hours_before(*line.ledger, use, mark);
  if (!hours) return std::nullopt;
  const Use& its = line.ledger->uses[use];
  const std::int64_t whole = Tally::amount(line, its).value;
  const quantity::ServiceHours all = service(its, its.raw);
  if (*hours == quantity::ServiceHours{}) return 0;
  if (*hours == all) return whole;
  const bool is_airframes = line.clock == service_clock && whole == all.count();
  return is_airframes ? std::optional(hours->count()) : std::nullopt;
}

// The whole of a use is counted once at most for the same thing.
Used Totals::at_the_ends(const Line& line, const Ride& ride, const Span& part, Sum& sum) const {
  Used more;
  const Ledger& ledger = *line.ledger;
  for (const SpreadUse& spread : ledger.spread) {
    const Mark& end = ledger.marks[spread.use];
    const bool is_tallied = part.from < end && end <= part.to;
    const bool goes_past = part.from < end && spread.began < part.to && part.to < end &&
                           ride.to == std::optional(part.to);
    const bool came_before = part.from == ride.from && spread.began < part.from;
    if (!goes_past && !(is_tallied && came_before)) continue;
    const Amount whole = Tally::amount(line, ledger.uses[spread.use]);
    // None of it came before: not even some of what nobody counted.
    if (goes_past && hours_before(ledger, spread.use, part.to) == quantity::ServiceHours{})
      continue;
    const std::int64_t to =
        goes_past ? amount_before(line, spread.use, part.to).value_or(whole.value) : whole.value;
    const std::int64_t from =
        came_before ? amount_before(line, spread.use, part.from).value_or(0) : 0;
    std::int64_t& counted = sum.spread[{&ledger, spread.use}];
    const std::int64_t here = std::clamp<std::int64_t>(to - from, 0, whole.value - counted);
    counted += here;
    more.amount += Amount{here - (is_tallied ? whole.value : 0), whole.sureness};
    if (is_tallied) continue;
    more.flights += ledger.uses[spread.use].flights();
    more.last = ledger.uses[spread.use].root;
    if (!more.first) more.first = more.last;
  }
  return more;
}

}  // namespace reckon
