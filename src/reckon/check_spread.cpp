#include "reckon/check_spread.h"

#include "reckon/base.h"
#include "reckon/check_names.h"
#include "reckon/work.h"

namespace reckon {

namespace {

bool states_own_hours(const logbook::Fact& fact) {
  const auto* removed = std::get_if<logbook::Removed>(&fact);
  if (removed == nullptr) return false;
  const auto own = stated_on(removed->with, service_clock, logbook::Basis::new_);
  return own && own->sureness() == Sureness::exact;
}

// Whether it says itself how much was flown before it. What is fitted has all that may have been
// flown after it, so that missing hours are nothing to ask about.
bool is_told(const logbook::Said& move, const logbook::Said& use, Day began) {
  const auto stated = work_in(move.fact);
  if (stated->airframe || states_own_hours(move.fact)) return true;
  const auto* fitted = std::get_if<logbook::Fitted>(&move.fact);
  const bool is_fitting = fitted != nullptr;
  const bool comes = is_fitting && std::holds_alternative<logbook::Engine>(fitted->thing);
  if (stated->engine && !comes) return true;
  if (is_fitting && std::holds_alternative<logbook::Unaccounted>(use.fact)) return true;
  return stated->is_before_first && move.day == began;
}

}  // namespace

void check_move_in_use(const FittingChecks::Move& move, const UseChecks& uses,
                       Objections& objections) {
  for (const Placed& use : uses.spread_over(move.fact.said->day)) {
    if (move.fact.written < use.written && !is_new(move.fact)) continue;
    if (is_told(*move.fact.said, *use.said, uses.began(use))) continue;
    objections.push_back(doubt(CheckKind::moved_within_a_use, "airframe"));
    objections.back().names = {thing_text(move.thing)};
    objections.back().entries = {use.id};
  }
}

void check_use_over_moves(const Placed& placed, const FittingChecks& fittings,
                          const UseChecks& uses, Objections& objections) {
  const auto aircraft = aircraft_used(placed.said->fact);
  const Day began = aircraft ? uses.began(placed) : placed.said->day;
  if (!(began < placed.said->day)) return;
  for (const auto& move : fittings.moves_on(*aircraft, began, placed.said->day)) {
    if (placed.written < move.fact.written && !is_new(placed)) continue;
    if (is_told(*move.fact.said, *placed.said, began)) continue;
    objections.push_back(doubt(CheckKind::moved_within_a_use, "since"));
    objections.back().names = {thing_text(move.thing)};
    objections.back().entries = {move.fact.id};
  }
}

}  // namespace reckon
