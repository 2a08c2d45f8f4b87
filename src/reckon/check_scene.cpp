#include "reckon/check_scene.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/check_had.h"
#include "reckon/check_work.h"
#include "reckon/work.h"

namespace reckon {

namespace {

// Only these add to an airframe's total.
bool adds_hours(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Flew>(fact) ||
         std::holds_alternative<logbook::Unaccounted>(fact);
}

}  // namespace

CheckScene::CheckScene(const Standing& standing, Day today,
                       const std::optional<logbook::EntryId>& but)
    : standing_(&standing), today_(today), but_(but), index_(index_of(standing, but)) {
  for (const StandingFact& fact : standing.facts) {
    if (fact.root == but) continue;
    late_.note(placed(fact));
    note_begun(fact.said->fact);
  }
}

// Only of these anything can be known that a figure brought forward would contradict.
void CheckScene::note_begun(const logbook::Fact& fact) {
  if (const auto* forward = std::get_if<logbook::BringsForward>(&fact)) {
    begun_.insert(forward->thing);
  }
  if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) begun_.insert(fitted->thing);
}

void CheckScene::add(const Placed& placed) {
  index_.add(placed);
  late_.note(placed);
  note_begun(placed.said->fact);
  has_newest_totals_ = false;
  if (!adds_hours(placed.said->fact)) return;
  const auto aircraft = aircraft_flown(placed.said->fact);
  late_.add_hours(placed, *aircraft, index_.uses_of(*aircraft)->counted(placed));
}

void CheckScene::take_totals_from(const Standing& standing) {
  standing_ = &standing;
  has_newest_totals_ = true;
  histories_.reset();
  past_.reset();
}

const Histories& CheckScene::histories() {
  if (histories_ != nullptr) return *histories_;
  past_ = std::make_unique<Standing>(*standing_);
  std::erase_if(past_->facts, [&](const StandingFact& fact) {
    return fact.said->day > today_ || fact.root == but_;
  });
  histories_ = std::make_unique<Histories>(*past_, today_, Ambiguous::late);
  return *histories_;
}

bool CheckScene::needs_totals(const Placed& placed) const {
  const logbook::Fact& fact = placed.said->fact;
  if (placed.said->day > today_) return false;
  if (const auto* forward = std::get_if<logbook::BringsForward>(&fact)) {
    return begun_.contains(forward->thing) && states_totals(fact);
  }
  if (!adds_hours(fact)) return states_totals(fact);
  return late_.needs_loading() && late_.are_before_a_total(*aircraft_flown(fact), placed.said->day);
}

void CheckScene::check(const Placed& placed, Objections& objections) {
  index_.check(placed, Against::all, objections);
  if (placed.said->day > today_) return;
  if (adds_hours(placed.said->fact)) check_late(placed, objections);
  if (needs_totals(placed) && states_totals(placed.said->fact)) check_totals(placed, objections);
}

void CheckScene::check_late(const Placed& placed, Objections& objections) {
  const logbook::Aircraft aircraft = *aircraft_flown(placed.said->fact);
  const UseChecks* uses = index_.uses_of(aircraft);
  if (uses == nullptr || !late_.are_before_a_total(aircraft, placed.said->day)) return;
  if (late_.needs_loading()) late_.load(histories());
  late_.check(aircraft, placed.said->day, uses->counted(placed), objections);
}

void CheckScene::check_totals(const Placed& placed, Objections& objections) {
  const Histories& past = histories();
  if (std::holds_alternative<logbook::BringsForward>(placed.said->fact)) {
    return check_forward(placed, past, objections);
  }
  const Mark end{placed.said->day, end_of_day};
  const logbook::Thing subject = subject_of_work(placed.said->fact);
  const auto& things = past.things();
  if (!std::binary_search(things.begin(), things.end(), subject)) return;
  const auto aircraft = aircraft_at(past, subject, end);
  check_work(placed, {past, aircraft ? index_.uses_of(*aircraft) : nullptr}, objections);
}

}  // namespace reckon
