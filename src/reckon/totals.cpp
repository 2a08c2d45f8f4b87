#include "reckon/totals.h"

#include <algorithm>
#include <utility>

#include "reckon/work.h"

namespace reckon {

namespace {

constexpr Mark the_beginning{Day::of(INT32_MIN), 0};

Mark start_of(Day day) { return {day, 0}; }

Term base_term(const Base& base) {
  Term term;
  term.kind = base.kind;
  term.figure = base.figure;
  term.to = base.mark.day;
  term.first = term.last = base.entry;
  term.source = base.source;
  return term;
}

Total total_of(std::vector<Term> terms, const Clock& clock) {
  Total total;
  total.figure = zero(clock);
  for (const Term& term : terms) {
    total.figure = term.subtract ? total.figure - term.figure : total.figure + term.figure;
  }
  total.because = std::move(terms);
  return total;
}

Term unknown_term(const Clock& clock) {
  Term term;
  term.kind = TermKind::brought_forward;
  term.figure = zero(clock).as_sure_as(Sureness::unknown);
  return term;
}

Used with_more(Used used, const Used& more) {
  used.amount += more.amount;
  used.flights += more.flights;
  if (!used.first) used.first = more.first;
  if (more.last) used.last = more.last;
  return used;
}

std::optional<Span> overlap(const Ride& ride, const Span& span) {
  const Mark from = std::max(ride.from, span.from);
  const Mark to = ride.to ? std::min(*ride.to, span.to) : span.to;
  if (!(from < to)) return std::nullopt;
  return Span{from, to};
}

}  // namespace

Totals::Totals(const Timeline& timeline, const Fittings& fittings, const CountingRules& rules,
               const Bases& bases)
    : timeline_(timeline), fittings_(fittings), rules_(rules), bases_(bases) {
  for (const WorkEvent& event : timeline.works) {
    const logbook::Fact& fact = event.fact->said->fact;
    const auto* overhauled = std::get_if<logbook::Overhauled>(&fact);
    if (overhauled != nullptr && event.fact->is_counted) {
      overhauls_[overhauled->thing].push_back(&event);
    }
    if (event.aircraft && work_in(fact)->airframe) stated_[*event.aircraft].push_back(&event);
  }
}

Line Totals::line_of(const logbook::Thing& thing, const Ride& ride, const Clock& clock) const {
  Line line{ride.ledger, clock, ride.place, {}};
  if (const auto* counter = std::get_if<logbook::Counter>(&clock)) {
    std::vector<logbook::Thing> way{thing};
    way.insert(way.end(), ride.hosts.begin(), ride.hosts.end());
    line.rules = rules_.find(way, *counter);
  }
  return line;
}

Line Totals::line_of(const Ledger& ledger, const Clock& clock) const {
  Line line{&ledger, clock, std::nullopt, {}};
  if (const auto* counter = std::get_if<logbook::Counter>(&clock)) {
    line.rules = rules_.find({ledger.aircraft}, *counter);
  }
  return line;
}

// What an airframe had before its flights are on record: as brought forward, or as stated there.
std::optional<Figure> Totals::airframe_before(const Ledger& ledger, const Mark& mark) const {
  if (mark == start_of(*ledger.begins)) {
    const auto base = this->base({ledger.aircraft, service_clock, mark});
    return base ? std::optional(base->figure) : std::nullopt;
  }
  const auto found = stated_.find(ledger.aircraft);
  if (found == stated_.end()) return std::nullopt;
  for (const WorkEvent* event : found->second) {
    if (event->mark != mark) continue;
    return Figure(quantity::service_hours(*work_in(event->fact->said->fact)->airframe));
  }
  return std::nullopt;
}

// Use that lies before the aircraft's flights: by what was stated at both ends, else not known.
std::optional<Figure> Totals::before_flights(const Ride& ride, const Span& span,
                                             const Clock& clock) const {
  if (!ride.ledger->begins || !(span.from < start_of(*ride.ledger->begins))) return zero(clock);
  if (clock != service_clock) return std::nullopt;
  const Mark end = std::min(span.to, start_of(*ride.ledger->begins));
  const auto from = airframe_before(*ride.ledger, span.from);
  const auto to = airframe_before(*ride.ledger, end);
  if (!from || !to) return std::nullopt;
  return *to - *from;
}

void Totals::add_ride(const logbook::Thing& thing, const Ride& ride, const Span& span,
                      Sum& sum) const {
  const Line line = line_of(thing, ride, sum.clock);
  const Used used = with_more(tally_.used(line, span), at_the_ends(line, ride, span, sum));
  const std::optional<Figure> earlier = before_flights(ride, span, sum.clock);
  const Figure unknown = zero(sum.clock).as_sure_as(Sureness::unknown);
  const Figure figure = figure_on(sum.clock, used.amount) + earlier.value_or(unknown);
  if (used.first && !tally_.is_counted(line)) sum.is_counted = false;
  if (figure == zero(sum.clock)) return;  // a stay in which nothing was used is no term
  const auto [at, is_new] = sum.of_stay.try_emplace({ride.stay, ride.hosts}, sum.terms.size());
  if (is_new) {
    const Stay& stay = fittings_.stays(thing)[ride.stay];
    Term term;
    term.kind = TermKind::used_in_stay;
    term.figure = zero(sum.clock);
    term.host = stay.host;
    term.hosts = ride.hosts;
    term.place = stay.place;
    term.from = span.from.day;
    term.first = used.first;
    sum.terms.push_back(term);
  }
  Term& term = sum.terms[at->second];
  term.figure = term.figure + figure;
  term.to = span.to.day;
  term.flights += used.flights;
  if (!term.first) term.first = used.first;
  if (used.last) term.last = used.last;
}

Totals::Sum Totals::flown(const Ledger& ledger, const Clock& clock, const Span& span) const {
  Sum sum;
  sum.clock = clock;
  const Line line = line_of(ledger, clock);
  const Used used = tally_.used(line, span);
  if (used.first && !tally_.is_counted(line)) sum.is_counted = false;
  const Amount missing = tally_.missing(line, span);
  Term term;
  term.kind = TermKind::flown;
  term.figure = figure_on(clock, used.amount) - figure_on(clock, {missing.value, Sureness::exact});
  term.from = span.from.day;
  term.to = span.to.day;
  term.flights = used.flights;
  term.first = used.first;
  term.last = used.last;
  sum.terms.push_back(term);
  if (missing.value == 0) return sum;
  term = Term{};
  term.kind = TermKind::missing;
  term.figure = figure_on(clock, missing);
  term.from = span.from.day;
  term.to = span.to.day;
  sum.terms.push_back(term);
  return sum;
}

Totals::Sum Totals::used(const logbook::Thing& thing, const Clock& clock, const Span& span) const {
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&thing)) {
    const auto found = timeline_.ledgers.find(*aircraft);
    if (found == timeline_.ledgers.end()) return {clock, {}, {}, true, {}};
    return flown(found->second, clock, span);
  }
  Sum sum;
  sum.clock = clock;
  for (const Ride& ride : fittings_.rides(thing)) {
    if (const auto part = overlap(ride, span)) add_ride(thing, ride, *part, sum);
  }
  return sum;
}

// Before an aircraft was brought forward, what its papers state there is the source.
Total Totals::before_the_book(const logbook::Aircraft& aircraft, const Clock& clock,
                              const Mark& at) const {
  const auto found = stated_.find(aircraft);
  if (clock != service_clock || found == stated_.end()) {
    return total_of({unknown_term(clock)}, clock);
  }
  const WorkEvent* last = nullptr;
  for (const WorkEvent* event : found->second) {
    if (event->mark <= at) last = event;
  }
  if (last == nullptr) return total_of({unknown_term(clock)}, clock);
  Term term;
  term.kind = TermKind::stated;
  const Sureness sureness = last->mark == at ? Sureness::exact : Sureness::at_least;
  term.figure =
      Figure(quantity::service_hours(*work_in(last->fact->said->fact)->airframe), sureness);
  term.to = last->mark.day;
  term.first = term.last = last->fact->root;
  return total_of({term}, clock);
}

Total Totals::since_new(const logbook::Thing& thing, const Clock& clock, const Mark& at) const {
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&thing)) {
    const auto found = timeline_.ledgers.find(*aircraft);
    const bool has_begun = found == timeline_.ledgers.end() || !found->second.begins ||
                           start_of(*found->second.begins) <= at;
    if (!has_begun) return before_the_book(*aircraft, clock, at);
  }
  const TotalAsked asked{thing, clock, at};
  return since_new_from(base(asked), asked);
}

Total Totals::since_new_from(const std::optional<Base>& base, const TotalAsked& asked) const {
  const bool is_known = base && !base->figure.is_unknown();
  Sum sum = used(asked.thing, asked.clock, {is_known ? base->mark : the_beginning, asked.at});
  if (!sum.is_counted && !(base && base->is_stated)) sum.terms.push_back(unknown_term(asked.clock));
  std::vector<Term> terms{base ? base_term(*base) : unknown_term(asked.clock)};
  terms.insert(terms.end(), sum.terms.begin(), sum.terms.end());
  return total_of(std::move(terms), asked.clock);
}

Figure Totals::used_between(const logbook::Thing& thing, const Clock& clock,
                            const Span& span) const {
  return total_of(used(thing, clock, span).terms, clock).figure;
}

const WorkEvent* Totals::overhaul_at(const logbook::Thing& thing, const Mark& at) const {
  const auto found = overhauls_.find(thing);
  if (found == overhauls_.end()) return nullptr;
  const WorkEvent* newest = nullptr;
  for (const WorkEvent* event : found->second) {
    if (event->mark <= at) newest = event;
  }
  return newest;
}

// From what the thing had at a point to what it has now, where the use between is not on record.
Total Totals::by_difference(const logbook::Thing& thing, const Clock& clock, const Mark& at,
                            const std::optional<Figure>& start) const {
  Total total = since_new(thing, clock, at);
  // From a start that is only "at least", the difference would be "at most".
  if (!start || start->sureness() == Sureness::at_least)
    return total_of({unknown_term(clock)}, clock);
  Term term;
  term.kind = TermKind::stated;
  term.figure = *start;
  term.subtract = true;
  total.because.push_back(term);
  return total_of(std::move(total.because), clock);
}

Total Totals::since_overhaul(const logbook::Thing& thing, const Clock& clock,
                             const Mark& at) const {
  const TotalAsked asked{thing, clock, at, logbook::Basis::overhaul};
  return since_overhaul_from(base(asked), asked);
}

Total Totals::since_overhaul_from(const std::optional<Base>& base, const TotalAsked& asked) const {
  const auto& [thing, clock, at, since] = asked;
  const WorkEvent* overhaul = overhaul_at(thing, at);
  if (base && (overhaul == nullptr || overhaul->mark <= base->mark)) {
    const Sum sum = used(thing, clock, {base->mark, at});
    std::vector<Term> terms{base_term(*base)};
    terms.insert(terms.end(), sum.terms.begin(), sum.terms.end());
    return total_of(std::move(terms), clock);
  }
  if (overhaul == nullptr) {
    // Never overhauled and new when it came on record: since overhaul is since new.
    const std::optional<Base> new_base = this->base({thing, clock, at});
    const bool came_new = new_base && new_base->figure == zero(clock);
    return came_new ? since_new(thing, clock, at) : total_of({unknown_term(clock)}, clock);
  }
  Sum sum = used(thing, clock, {overhaul->mark, at});
  if (!sum.is_counted) sum.terms.push_back(unknown_term(clock));
  Total total = total_of(std::move(sum.terms), clock);
  if (!total.figure.is_unknown()) return total;
  const auto& overhauled = std::get<logbook::Overhauled>(overhaul->fact->said->fact);
  const Total other =
      by_difference(thing, clock, at, stated_on(overhauled.had, clock, logbook::Basis::new_));
  return other.figure.is_unknown() ? total : other;
}

const Stay* Totals::stay_at(const logbook::Thing& thing, const Mark& at) const {
  const Stay* last = nullptr;
  for (const Stay& stay : fittings_.stays(thing)) {
    const bool has_begun = stay.from <= at;
    const bool is_better = last == nullptr || (last->to && *last->to <= at);
    if (has_begun && is_better) last = &stay;
  }
  return last;
}

Total Totals::since_fitting(const logbook::Thing& thing, const Clock& clock, const Mark& at) const {
  const Stay* stay = stay_at(thing, at);
  if (stay == nullptr) return total_of({unknown_term(clock)}, clock);
  Sum sum = used(thing, clock, {stay->from, at});
  if (!sum.is_counted) sum.terms.push_back(unknown_term(clock));
  Total total = total_of(std::move(sum.terms), clock);
  if (!total.figure.is_unknown()) return total;
  const WorkEvent* event = timeline_.work(stay->fitted);
  const auto& fitted = std::get<logbook::Fitted>(event->fact->said->fact);
  const Total other =
      by_difference(thing, clock, at, stated_on(fitted.with, clock, logbook::Basis::new_));
  return other.figure.is_unknown() ? total : other;
}

}  // namespace reckon
