#include "reckon/check_late.h"

#include <algorithm>

#include "reckon/check_hours.h"
#include "reckon/work.h"

namespace reckon {

void LateChecks::note(const Placed& placed) {
  const auto stated = work_in(placed.said->fact);
  if (!stated || !stated->airframe) return;
  is_loaded_ = false;
  const Day day = placed.said->day;
  const logbook::Thing subject = subject_of_work(placed.said->fact);
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&subject)) {
    Day& last = last_stated_.try_emplace(*aircraft, day).first->second;
    last = std::max(last, day);
    return;
  }
  last_on_thing_ = has_any_on_thing_ ? std::max(last_on_thing_, day) : day;
  has_any_on_thing_ = true;
}

bool LateChecks::are_before_a_total(const logbook::Aircraft& aircraft, Day day) const {
  if (has_any_on_thing_ && day < last_on_thing_) return true;
  const auto found = last_stated_.find(aircraft);
  return found != last_stated_.end() && day < found->second;
}

void LateChecks::load(const Histories& histories) {
  signed_.clear();
  for (const Statement& statement : histories.statements()) {
    const auto* aircraft = std::get_if<logbook::Aircraft>(&statement.thing);
    if (aircraft == nullptr || statement.clock != service_clock) continue;
    if (statement.reckoned.is_unknown()) continue;
    signed_[*aircraft].push_back({histories.mark_of(statement.entry).day, statement.entry,
                                  statement.stated, statement.reckoned});
  }
  is_loaded_ = true;
}

void LateChecks::add_hours(const Placed& placed, const logbook::Aircraft& aircraft,
                           quantity::ServiceHours hours) {
  const auto found = signed_.find(aircraft);
  if (!is_loaded_ || found == signed_.end()) return;
  for (Signed& total : found->second) {
    if (placed.said->day < total.day) total.reckoned = total.reckoned + Figure(hours);
  }
}

void LateChecks::check(const logbook::Aircraft& aircraft, Day day, quantity::ServiceHours hours,
                       Objections& objections) const {
  const auto found = signed_.find(aircraft);
  if (found == signed_.end()) return;
  std::vector<logbook::EntryId> entries;
  for (const Signed& total : found->second) {
    const Figure moved = total.reckoned + Figure(hours);
    if (day >= total.day || moved.compare(total.stated) <= 0) continue;
    if (agree_as_totals(total.stated, moved)) continue;
    if (entries.empty()) {
      objections.push_back(
          with_figures(doubt(CheckKind::stated_total_differs, "hours"), total.stated, moved));
      objections.back().day = total.day;
    }
    entries.push_back(total.entry);
  }
  if (!entries.empty()) objections.back().entries = entries;
}

}  // namespace reckon
