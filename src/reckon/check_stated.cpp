#include "reckon/check_stated.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/check_hours.h"

namespace reckon {

bool is_on_record(const Histories& histories, const logbook::Thing& thing) {
  const auto& things = histories.things();
  return std::binary_search(things.begin(), things.end(), thing);
}

bool is_met_by(const Stated& stated, const Figure& reckoned) {
  if (agree_as_totals(stated.figure, reckoned)) return true;
  const bool is_below = reckoned.compare(stated.figure) < 0;
  if (stated.grade == logbook::Grade::at_least) return !is_below;
  return reckoned.sureness() == Sureness::at_least && is_below;
}

namespace {

// Hours that may have been flown by then, though the entry that holds them ends later.
bool is_met_within_a_use(const StatedAt& at, const Stated& stated, const Figure& reckoned) {
  const auto aircraft = aircraft_at(at.histories, stated.thing, at.last_place());
  const bool are_hours = stated.clock == service_clock && aircraft;
  if (!are_hours || stated.figure.compare(reckoned) < 0) return false;
  const Figure spread = at.histories.spread_around(*aircraft, at.last_place());
  return stated.figure.compare(reckoned + spread) <= 0;
}

}  // namespace

Figure reckoned_at(const StatedAt& at, const Stated& stated, const Mark& mark) {
  const TotalAsked asked{stated.thing, stated.clock, mark, stated.since};
  const std::int64_t written = is_new(at.placed) ? INT64_MAX : at.placed.written;
  return at.histories.total_as_said_before(written, asked);
}

namespace {

// Since an overhaul that lies before all that is on record, nothing is known: not that it has none.
bool is_before_the_record(const StatedAt& at, const Stated& stated, const Mark& mark) {
  if (stated.since != logbook::Basis::overhaul || !may_begin(at.placed.said->fact)) return false;
  Stated since_new = stated;
  since_new.since = logbook::Basis::new_;
  return reckoned_at(at, since_new, mark).is_unknown();
}

// Of what only says what it finds, all that is known now counts where nothing was known before.
Figure found_at_mark(const StatedAt& at, const Stated& stated, const Mark& mark) {
  const Figure before = reckoned_at(at, stated, mark);
  if (!before.is_unknown() || may_begin(at.placed.said->fact)) return before;
  return at.histories.total_as_said_before(INT64_MAX,
                                           {stated.thing, stated.clock, mark, stated.since});
}

// A total that agreed when it was written and was moved with everybody's knowledge.
bool is_moved(const StatedAt& at, const Stated& stated) {
  if (is_new(at.placed)) return false;
  const auto& statements = at.histories.statements();
  return std::any_of(statements.begin(), statements.end(), [&](const Statement& one) {
    return one.is_settled && one.entry == at.placed.id && one.thing == stated.thing &&
           one.clock == stated.clock && one.stated.raw() == stated.figure.raw();
  });
}

}  // namespace

bool may_begin(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Fitted>(fact) ||
         std::holds_alternative<logbook::BringsForward>(fact);
}

std::optional<Figure> unmet(const StatedAt& at, const Stated& stated) {
  if (!is_on_record(at.histories, stated.thing)) return std::nullopt;
  std::optional<Figure> last;
  for (const Mark& mark : at.places) {
    last = found_at_mark(at, stated, mark);
    if (last->is_unknown() || is_before_the_record(at, stated, mark)) return std::nullopt;
    if (is_met_by(stated, *last)) return std::nullopt;
  }
  if (is_met_within_a_use(at, stated, *last) || is_moved(at, stated)) return std::nullopt;
  return last;
}

}  // namespace reckon
