#include "reckon/check_had.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/check_names.h"

namespace reckon {

namespace {

using logbook::Basis;
using logbook::Had;
using logbook::Thing;

const std::vector<Had>& had_in(const logbook::Fact& fact) {
  static const std::vector<Had> none;
  if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) return fitted->with;
  if (const auto* removed = std::get_if<logbook::Removed>(&fact)) return removed->with;
  if (const auto* overhauled = std::get_if<logbook::Overhauled>(&fact)) return overhauled->had;
  if (const auto* forward = std::get_if<logbook::BringsForward>(&fact)) return forward->had;
  return none;
}

Stated stated_by(const Thing& thing, const Had& had) {
  const Basis since = had.since == Basis::overhaul ? Basis::overhaul : Basis::new_;
  if (const auto* hours = std::get_if<logbook::ClockHours>(&had.amount)) {
    return {thing, HoursClock{hours->meter}, hours_figure(hours->hours), since, had.grade};
  }
  const auto& count = std::get<logbook::Count>(had.amount);
  return {thing, count.counter, Figure(count.amount), since, had.grade};
}

// An engine that came with the airframe, and with no more hours, cannot have more later. Gives the
// airframe's total where it has.
std::optional<Figure> airframe_outdone(const StatedAt& at, const Stated& stated) {
  if (!std::holds_alternative<logbook::Engine>(stated.thing) || stated.clock != service_clock ||
      stated.since != Basis::new_) {
    return std::nullopt;
  }
  const Histories& histories = at.histories;
  const std::vector<Stay>& stays = histories.stays(stated.thing);
  if (stays.size() != 1) return std::nullopt;
  const Thing& airframe = stays.front().host;
  if (!std::holds_alternative<logbook::Aircraft>(airframe)) return std::nullopt;
  const Figure then = histories.total(airframe, service_clock, stays.front().from).figure;
  const Figure own = histories.total(stated.thing, service_clock, stays.front().from).figure;
  const Figure now = histories.total(airframe, service_clock, at.last_place()).figure;
  if (then.is_unknown() || own.is_unknown() || now.is_unknown()) return std::nullopt;
  if (own.compare(then) > 0 || stated.figure.compare(now) <= 0) return std::nullopt;
  return now;
}

// Use from the fact's place to a later mark. A fitting that is not on record yet gives its thing
// the hours of the aircraft; of all else nothing is known.
std::optional<Figure> used_until(const StatedAt& at, const Stated& stated, const Mark& mark) {
  const Histories& histories = at.histories;
  const Mark& from = at.last_place();
  const auto* fitted = std::get_if<logbook::Fitted>(&at.placed.said->fact);
  const bool is_coming = fitted != nullptr && is_new(at.placed);
  const auto aircraft = is_coming ? aircraft_at(histories, fitted->host, from) : std::nullopt;
  if (!aircraft) return histories.used_between(stated.thing, stated.clock, from, mark);
  if (stated.clock != service_clock) return std::nullopt;
  // Before its brought-forward day an aircraft has no flights that could be counted.
  const std::optional<Day> begins = histories.brought_forward_day(*aircraft);
  if (begins && from.day < *begins) return std::nullopt;
  return histories.used_between(*aircraft, service_clock, from, mark);
}

// What stands before all that was said so far is held against the first of that: what it leaves for
// its place.
std::optional<Figure> unmet_further_on(const StatedAt& at, const Stated& stated) {
  if (!may_begin(at.placed.said->fact)) return std::nullopt;
  if (!reckoned_at(at, stated, at.last_place()).is_unknown()) return std::nullopt;
  for (const Mark& mark : at.histories.beginnings(stated.thing)) {
    if (mark <= at.last_place()) continue;
    const Figure then = reckoned_at(at, stated, mark);
    if (then.is_unknown()) continue;
    const auto used = used_until(at, stated, mark);
    if (!used || used->is_unknown()) return std::nullopt;
    const Figure left = then - *used;
    return is_met_by(stated, left) ? std::nullopt : std::optional(left);
  }
  return std::nullopt;
}

// Since overhaul nothing can be told from what comes after another overhaul.
std::optional<Figure> unmet_anywhere(const StatedAt& at, const Stated& stated) {
  if (auto reckoned = unmet(at, stated)) return reckoned;
  if (stated.since == Basis::overhaul && at.histories.basis_day(stated.thing, stated.since)) {
    return std::nullopt;
  }
  return unmet_further_on(at, stated);
}

std::string slot_of_had(const logbook::Fact& fact) {
  const bool is_with = std::holds_alternative<logbook::Fitted>(fact) ||
                       std::holds_alternative<logbook::Removed>(fact);
  return is_with ? "with" : "had";
}

}  // namespace

std::optional<Thing> thing_with_had(const logbook::Fact& fact) {
  if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) return fitted->thing;
  if (const auto* removed = std::get_if<logbook::Removed>(&fact)) return removed->thing;
  if (const auto* overhauled = std::get_if<logbook::Overhauled>(&fact)) return overhauled->thing;
  return std::nullopt;
}

bool states_had(const logbook::Fact& fact) {
  const auto* forward = std::get_if<logbook::BringsForward>(&fact);
  return !had_in(fact).empty() || (forward != nullptr && forward->airframe);
}

void check_had(const StatedAt& at, const Thing& thing, Objections& objections) {
  const logbook::Fact& fact = at.placed.said->fact;
  const bool is_overhauled = std::holds_alternative<logbook::Overhauled>(fact);
  for (const Had& had : had_in(fact)) {
    if (is_overhauled && had.since == Basis::overhaul) continue;
    const Stated stated = stated_by(thing, had);
    const auto reckoned = unmet_anywhere(at, stated);
    if (!reckoned) continue;
    const auto airframe = airframe_outdone(at, stated);
    objections.push_back(with_figures(
        doubt(airframe ? CheckKind::engine_older_than_airframe : CheckKind::had_differs,
              slot_of_had(fact)),
        stated.figure, airframe.value_or(*reckoned)));
    objections.back().names = {thing_text(thing)};
    objections.back().clock = stated.clock;
    if (stated.since == Basis::overhaul) objections.back().since = stated.since;
  }
}

void check_forward(const Placed& placed, const Histories& histories, Objections& objections) {
  const auto& forward = std::get<logbook::BringsForward>(placed.said->fact);
  if (!is_on_record(histories, forward.thing)) return;
  const StatedAt at{placed, histories, {{placed.said->day, 0}}};
  check_had(at, forward.thing, objections);
  if (!forward.airframe) return;
  const Stated stated{forward.thing, service_clock, hours_figure(*forward.airframe)};
  if (const auto reckoned = unmet_anywhere(at, stated)) {
    objections.push_back(
        with_figures(doubt(CheckKind::stated_total_differs, "airframe"), stated.figure, *reckoned));
  }
}

}  // namespace reckon
