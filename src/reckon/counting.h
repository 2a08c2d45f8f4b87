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

  bool holds_on(Day day) const;
  // What the entry counts by all rules that hold on its day; one stated outright is taken as
  // stated. Rules without "instead of" add. Of several days in one entry, that day's rules count by
  // which it counts most.
  Amount counted(const Use& use, const logbook::Counter& counter, const Spot& spot) const;

 private:
  Amount counted_on(Day day, const Use& use, const logbook::Counter& counter,
                    const Spot& spot) const;
  std::vector<Day> turns_within(const Use& use) const;
};

class CountingRules {
 public:
  explicit CountingRules(const Standing& standing);

  // The rules for a counter of a thing: its own, its model's or part number's, else those of the
  // nearest host that has any. Null: none. way: the thing first, the aircraft last.
  const RuleSet* find(const std::vector<logbook::Thing>& way,
                      const logbook::Counter& counter) const;

 private:
  const RuleSet* of_thing(const logbook::Thing& thing, const logbook::Counter& counter) const;

  std::map<std::pair<logbook::Scope, logbook::Counter>, RuleSet> sets_;
  std::map<logbook::Aircraft, logbook::ModelName> models_;
};

}  // namespace reckon
