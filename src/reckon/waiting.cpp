#include "reckon/waiting.h"

#include <algorithm>

#include "reckon/task_events.h"

namespace reckon {
namespace {

using logbook::Overhauled;

// Done, or stated as next due.
struct TaskWork {
  logbook::TaskClass class_;
  const logbook::TaskName& name;
  const logbook::Thing& thing;
};

std::optional<TaskWork> task_work(const logbook::Fact& fact) {
  if (const auto* done = std::get_if<logbook::Done>(&fact)) {
    return TaskWork{done->class_, done->name, done->thing};
  }
  if (const auto* next = std::get_if<logbook::NextDue>(&fact)) {
    return TaskWork{next->class_, next->name, next->thing};
  }
  return std::nullopt;
}

// Whether newer work of this kind leaves nothing of the older. A stated due point may be of one
// side only, so that it replaces nothing.
bool replaces(const logbook::Fact& newer, const logbook::Fact& older) {
  if (const std::optional<TaskWork> work = task_work(older)) {
    const auto* done = std::get_if<logbook::Done>(&newer);
    return done != nullptr && is_same_task(*done, *work) && done->thing == work->thing;
  }
  const auto* overhauled = std::get_if<Overhauled>(&older);
  const auto* again = std::get_if<Overhauled>(&newer);
  return overhauled != nullptr && again != nullptr && overhauled->thing == again->thing;
}

// Where each interval depends on the one before, older work moves today's due point too.
bool is_chained(const logbook::Fact& fact, const Standing& standing) {
  const std::optional<TaskWork> work = task_work(fact);
  if (!work) return false;
  return std::any_of(standing.facts.begin(), standing.facts.end(), [&](const StandingFact& other) {
    const auto* task = std::get_if<logbook::Task>(&other.said->fact);
    return task != nullptr && is_same_task(*work, *task) &&
           (task->excess_counts || task->next_from == logbook::NextFrom::due);
  });
}

bool would_move(const Item& item, const logbook::Fact& fact) {
  if (const std::optional<TaskWork> work = task_work(fact)) {
    return item.task != nullptr && work->thing == item.thing && is_same_task(*work, *item.task);
  }
  const auto* overhauled = std::get_if<Overhauled>(&fact);
  return overhauled != nullptr && overhauled->thing == item.thing &&
         std::any_of(item.sides.begin(), item.sides.end(),
                     [](const Side& side) { return side.since == logbook::Basis::overhaul; });
}

}  // namespace

bool waits(const StandingFact& work, const Histories& histories, const Standing& standing) {
  if (work.is_counted) return false;
  const logbook::Fact& what = work.said->fact;
  const bool is_overtaken =
      std::any_of(standing.facts.begin(), standing.facts.end(), [&](const StandingFact& other) {
        return other.is_counted && replaces(other.said->fact, what) &&
               histories.mark_of(work.root) < histories.mark_of(other.root);
      });
  return !is_overtaken || is_chained(what, standing);
}

std::vector<logbook::EntryId> waiting_for(const View& view, const Item& item) {
  std::vector<logbook::EntryId> entries;
  for (const StandingFact& fact : view.standing.facts) {
    if (fact.is_counted || !would_move(item, fact.said->fact)) continue;
    if (waits(fact, view.histories, view.standing)) entries.push_back(fact.chain.back());
  }
  return entries;
}

}  // namespace reckon
