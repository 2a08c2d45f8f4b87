// reckon/checks_in_force.h: what an engine model's readings are held against on a day. Sentences
// add to each other, so that the strictest rules, until one is said instead of an older one.
#pragma once

#include <map>
#include <optional>
#include <variant>
#include <vector>

#include "reckon/entry_named.h"
#include "reckon/standing.h"

namespace reckon {

// From which day a definition no longer holds, since another was said instead of it.
class Replacements {
 public:
  explicit Replacements(const Standing& standing) {
    for (const StandingFact& fact : standing.facts) {
      if (!fact.said->instead_of) continue;
      const StandingFact* older = find_named(standing.facts, *fact.said->instead_of);
      if (older == nullptr || older == &fact) continue;
      if (older->said->fact.index() == fact.said->fact.index()) from_[older] = fact.said->day;
    }
  }

  std::optional<quantity::Day> from(const StandingFact& fact) const {
    const auto found = from_.find(&fact);
    return found == from_.end() ? std::nullopt : std::optional(found->second);
  }

 private:
  std::map<const StandingFact*, quantity::Day> from_;
};

// A rule of one kind with the entry that it stands in.
template <class Kind>
struct RuleOf {
  const StandingFact* fact = nullptr;
  const Kind* rule = nullptr;
  std::optional<quantity::Day> until;  // the day from which another stands instead
};

// All rules of one kind on record, by model and in the order of their days; gathered once.
template <class Kind>
class ChecksOnRecord {
 public:
  explicit ChecksOnRecord(const Standing& standing) {
    const Replacements replacements(standing);
    for (const StandingFact& fact : standing.facts) {
      const auto* rule = std::get_if<Kind>(&fact.said->fact);
      if (rule == nullptr) continue;
      rules_[rule->model.name].push_back({&fact, rule, replacements.from(fact)});
    }
  }

  // Those of the model that hold on the day, oldest first.
  std::vector<RuleOf<Kind>> in_force(const logbook::ModelName& model, quantity::Day day) const {
    std::vector<RuleOf<Kind>> rules;
    const auto found = rules_.find(model);
    if (found == rules_.end()) return rules;
    for (const RuleOf<Kind>& rule : found->second) {
      const bool is_replaced = rule.until && *rule.until <= day;
      if (rule.fact->said->day <= day && !is_replaced) rules.push_back(rule);
    }
    return rules;
  }

 private:
  std::map<logbook::ModelName, std::vector<RuleOf<Kind>>> rules_;
};

}  // namespace reckon
