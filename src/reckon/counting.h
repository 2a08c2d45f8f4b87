// reckon/counting.h: counting rules, which turn starts, flights and landings into cycles. A rule
// holds from its day, or from the earlier day that it says; one that replaces another ends it.
#pragma once

#include <map>
#include <optional>
#include <utility>
#include <vector>

#include "reckon/flown.h"
#include "reckon/standing.h"

namespace reckon {

// All rules laid upon one scope for one counter.
struct RuleSet {
  struct Rule {
    const logbook::CountingRule* rule = nullptr;
    Day from;
    std::optional<Day> until;  // the first day on which it holds no more
  };
  std::vector<Rule> rules;
};

// The rules that may count a thing's counter: those upon itself first, those upon the aircraft's
// model last. On each day the first of them count of which any holds on that day: a rule that is
// said for a part from its day on changes nothing before it.
class RulesOnTheWay {
 public:
  void add(const RuleSet& rules) { nearest_first_.push_back(&rules); }
  bool empty() const { return nearest_first_.empty(); }
  // All that count on the day together; empty: none does.
  std::vector<const logbook::CountingRule*> on(Day day) const;
  // What the entry counts by all rules that hold on its day; one stated outright is taken as
  // stated. Rules without "instead of" add. Of several days in one entry, that day's rules count by
  // which it counts most.
  Amount counted(const Use& use, const logbook::Counter& counter, const Spot& spot) const;
  auto operator<=>(const RulesOnTheWay&) const = default;

 private:
  Amount counted_on(Day day, const Use& use, const logbook::Counter& counter,
                    const Spot& spot) const;
  std::vector<Day> turns_within(const Use& use) const;

  std::vector<const RuleSet*> nearest_first_;
};

class CountingRules {
 public:
  explicit CountingRules(const Standing& standing);

  // The rules for a counter of a thing: its own, its model's or part number's, then those of its
  // hosts. way: the thing first, the aircraft last.
  RulesOnTheWay find(const std::vector<logbook::Thing>& way, const logbook::Counter& counter) const;

 private:
  std::vector<logbook::Scope> scopes_of(const logbook::Thing& thing) const;

  std::map<std::pair<logbook::Scope, logbook::Counter>, RuleSet> sets_;
  std::map<logbook::Aircraft, logbook::ModelName> models_;
};

}  // namespace reckon
