#include "reckon/rules_in_force.h"

#include <algorithm>
#include <map>
#include <set>

#include "reckon/entry_named.h"

namespace reckon {
namespace {

using logbook::TaskClass;

// Null for facts that are no limit and no statement in the place of one.
const logbook::Scope* scope_of_limit(const logbook::Fact& fact) {
  if (const auto* limit = std::get_if<logbook::Limit>(&fact)) return &limit->scope;
  if (const auto* mixed = std::get_if<logbook::MixedLimit>(&fact)) return &mixed->scope;
  if (const auto* condition = std::get_if<logbook::OnCondition>(&fact)) return &condition->scope;
  return nullptr;
}

// Null for facts that do not say how a life is shared.
const logbook::Scope* scope_of_sharing(const logbook::Fact& fact) {
  if (const auto* by = std::get_if<logbook::SharesByFractions>(&fact)) return &by->scope;
  if (const auto* stays = std::get_if<logbook::ShorterLimitStays>(&fact)) return &stays->scope;
  return nullptr;
}

// What names another subject replaces nothing: both then hold, which is the careful side.
bool may_replace(const StandingFact& newer, const StandingFact& older) {
  for (const auto scope_of : {scope_of_limit, scope_of_sharing}) {
    const logbook::Scope* scope = scope_of(newer.said->fact);
    const logbook::Scope* old_scope = scope_of(older.said->fact);
    if (scope != nullptr && old_scope != nullptr) return *scope == *old_scope;
  }
  const auto* task = as<logbook::Task>(newer);
  const auto* old_task = as<logbook::Task>(older);
  if (task == nullptr || old_task == nullptr) return false;
  return task->name == old_task->name && task->scope == old_task->scope &&
         is_same_class(task->class_, old_task->class_);
}

using Replaced = std::map<const StandingFact*, const StandingFact*>;  // newer to older

Replaced replaced_by(const Standing& standing) {
  Replaced replaced;
  for (const StandingFact& fact : standing.facts) {
    if (!fact.said->instead_of) continue;
    const StandingFact* older = find_named(standing.facts, *fact.said->instead_of);
    if (older == nullptr || older == &fact || !may_replace(fact, *older)) continue;
    replaced[&fact] = older;
  }
  return replaced;
}

std::vector<const StandingFact*> revisions_of(const StandingFact* fact, const Replaced& replaced) {
  std::vector<const StandingFact*> revisions = {fact};
  for (auto found = replaced.find(fact); found != replaced.end();
       found = replaced.find(found->second)) {
    const bool is_circle =
        std::find(revisions.begin(), revisions.end(), found->second) != revisions.end();
    if (is_circle) break;
    revisions.insert(revisions.begin(), found->second);
  }
  return revisions;
}

// Facts stand in the order of their days, so an end reaches only what was declared before it.
void end_task(std::vector<TaskInForce>& tasks, const logbook::TaskEnds& ends) {
  std::erase_if(tasks, [&](const TaskInForce& declared) {
    return declared.task->name == ends.name && declared.task->scope == ends.scope &&
           is_same_class(declared.task->class_, ends.class_);
  });
}

}  // namespace

const logbook::Task& TaskInForce::on(Day day) const {
  const logbook::Task* held = as<logbook::Task>(*revisions.front());
  for (const StandingFact* revision : revisions) {
    if (revision->said->day <= day) held = as<logbook::Task>(*revision);
  }
  return *held;
}

std::optional<StatedSharing> sharing_in(const logbook::Fact& fact) {
  const logbook::Scope* scope = scope_of_sharing(fact);
  if (scope == nullptr) return std::nullopt;
  const bool is_by_fractions = std::holds_alternative<logbook::SharesByFractions>(fact);
  return StatedSharing{scope, is_by_fractions ? Sharing::by_fractions : Sharing::shorter_stays};
}

bool may_stand_instead(const logbook::Fact& newer, const logbook::Fact& older) {
  if (newer.index() == older.index()) return true;
  const bool are_limits = scope_of_limit(newer) != nullptr && scope_of_limit(older) != nullptr;
  const bool are_sharings =
      scope_of_sharing(newer) != nullptr && scope_of_sharing(older) != nullptr;
  return are_limits || are_sharings;
}

RulesInForce rules_in_force(const Standing& standing) {
  const Replaced replaced = replaced_by(standing);
  std::set<const StandingFact*> old;
  for (const auto& [newer, older] : replaced) old.insert(older);
  RulesInForce rules;
  for (const StandingFact& fact : standing.facts) {
    if (const auto* ends = as<logbook::TaskEnds>(fact)) end_task(rules.tasks, *ends);
    if (old.contains(&fact)) continue;
    if (const auto* limit = as<logbook::Limit>(fact)) rules.limits.push_back({&fact, limit});
    if (const auto* mixed = as<logbook::MixedLimit>(fact)) {
      rules.mixed_limits.push_back({&fact, mixed});
    }
    if (const auto stated = sharing_in(fact.said->fact)) {
      rules.sharings.push_back({&fact, *stated});
    }
    if (const auto* condition = as<logbook::OnCondition>(fact)) {
      rules.conditions.push_back({&fact, condition});
    }
    if (const auto* task = as<logbook::Task>(fact)) {
      rules.tasks.push_back({&fact, task, revisions_of(&fact, replaced)});
    }
  }
  return rules;
}

bool reaches(const Histories& histories, const logbook::Scope& scope, const logbook::Thing& thing) {
  if (const auto* model = std::get_if<logbook::Model>(&scope)) {
    return histories.model_of(thing) == model->name;
  }
  if (const auto* kind = std::get_if<logbook::PartKind>(&scope)) {
    const auto* part = std::get_if<logbook::Part>(&thing);
    return part != nullptr && part->number == kind->number;
  }
  return std::visit([&](const auto& subject) { return logbook::Scope{subject} == scope; }, thing);
}

bool is_same_class(TaskClass a, TaskClass b) {
  if (a == b) return true;
  if (a == TaskClass::directive || b == TaskClass::directive) return false;
  return a == TaskClass::task || b == TaskClass::task;
}

}  // namespace reckon
