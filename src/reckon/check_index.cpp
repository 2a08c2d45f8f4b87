#include "reckon/check_index.h"

#include <algorithm>

#include "reckon/check_spread.h"

namespace reckon {

std::optional<logbook::Aircraft> aircraft_flown(const logbook::Fact& fact) {
  if (const auto used = aircraft_used(fact)) return used;
  if (const auto* changed = std::get_if<logbook::MeterChanged>(&fact)) return changed->aircraft;
  if (const auto* lost = std::get_if<logbook::MeterLost>(&fact)) return lost->aircraft;
  if (const auto* counts = std::get_if<logbook::CountsHours>(&fact)) return counts->aircraft;
  const auto* brings = std::get_if<logbook::BringsForward>(&fact);
  if (brings == nullptr) return std::nullopt;
  const auto* aircraft = std::get_if<logbook::Aircraft>(&brings->thing);
  return aircraft == nullptr ? std::nullopt : std::optional(*aircraft);
}

void CheckIndex::add(const Placed& placed) {
  next_written_ = std::max(next_written_, placed.written + 1);
  names_.add(placed);
  tasks_.add(placed);
  sharings_.add(placed);
  fittings_.add(placed);
  if (const auto aircraft = aircraft_flown(placed.said->fact)) uses_[*aircraft].add(placed);
}

const UseChecks* CheckIndex::uses_of(const logbook::Aircraft& aircraft) const {
  const auto found = uses_.find(aircraft);
  return found == uses_.end() ? nullptr : &found->second;
}

void CheckIndex::check(const Placed& placed, Against against, Objections& objections) const {
  names_.check(placed, against, objections);
  tasks_.check(placed, names_, objections);
  fittings_.check(placed, against, objections);
  check_move(placed, objections);
  sharings_.check(placed, names_, objections);
  const auto aircraft = aircraft_flown(placed.said->fact);
  if (!aircraft) return;
  static const UseChecks none;
  const UseChecks& uses = uses_of(*aircraft) != nullptr ? *uses_of(*aircraft) : none;
  uses.check(placed, against, names_.is_twin(*aircraft), objections);
  check_use_over_moves(placed, fittings_, uses, objections);
}

void CheckIndex::check_move(const Placed& placed, Objections& objections) const {
  const auto move = FittingChecks::move_in(placed);
  const auto aircraft = move ? fittings_.aircraft_of(*move) : std::nullopt;
  const UseChecks* uses = aircraft ? uses_of(*aircraft) : nullptr;
  if (uses != nullptr) check_move_in_use(*move, *uses, objections);
}

Placed placed(const StandingFact& fact) { return {fact.said, fact.root, fact.written}; }

CheckIndex index_of(const Standing& standing, const std::optional<logbook::EntryId>& but) {
  CheckIndex index;
  for (const StandingFact& fact : standing.facts) {
    if (fact.root != but) index.add(placed(fact));
  }
  return index;
}

}  // namespace reckon
