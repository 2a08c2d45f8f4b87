// reckon/rules_in_force.h: which limits and tasks hold on the day, after what replaced and ended
// them. A replacing definition holds from its own day; before that day the standing facts do not
// have it, so the old one holds.
#pragma once

#include <optional>
#include <vector>

#include "reckon/histories.h"

namespace reckon {

struct LimitInForce {
  const StandingFact* fact = nullptr;
  const logbook::Limit* limit = nullptr;
};
struct MixedLimitInForce {
  const StandingFact* fact = nullptr;
  const logbook::MixedLimit* limit = nullptr;
};
// How a life is shared among models whose limits differ. disputed: two statements differ.
enum class Sharing { not_stated, by_fractions, shorter_stays, disputed };
struct StatedSharing {
  const logbook::Scope* scope = nullptr;
  Sharing how = Sharing::not_stated;
};
// Absent for facts that say nothing of it.
std::optional<StatedSharing> sharing_in(const logbook::Fact& fact);
struct SharingInForce {
  const StandingFact* fact = nullptr;
  StatedSharing stated;
};
struct ConditionInForce {
  const StandingFact* fact = nullptr;
  const logbook::OnCondition* on_condition = nullptr;
};
// A task with the definitions that it replaced: a due point that lies in the past was reckoned with
// the definition of its time.
struct TaskInForce {
  const StandingFact* fact = nullptr;
  const logbook::Task* task = nullptr;
  std::vector<const StandingFact*> revisions;  // oldest first; the last is fact
  // The definition that held on the day; the oldest for a day before it.
  const logbook::Task& on(Day day) const;
};
struct RulesInForce {
  std::vector<LimitInForce> limits;
  std::vector<MixedLimitInForce> mixed_limits;
  std::vector<ConditionInForce> conditions;
  std::vector<SharingInForce> sharings;
  std::vector<TaskInForce> tasks;
};
RulesInForce rules_in_force(const Standing& standing);

// Whether a newer definition may name an older one of this kind in "instead of entry": one of its
// own kind, or one limit, or one way of sharing lives, for another.
bool may_stand_instead(const logbook::Fact& newer, const logbook::Fact& older);

// Whether a rule laid upon scope reaches the thing.
bool reaches(const Histories& histories, const logbook::Scope& scope, const logbook::Thing& thing);

// A task's identity. "task" is the plain word for an inspection, service or storage step; a
// directive is meant only by its own word.
bool is_same_class(logbook::TaskClass a, logbook::TaskClass b);

}  // namespace reckon
