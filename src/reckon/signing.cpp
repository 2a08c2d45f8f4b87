#include "reckon/signing.h"

#include <algorithm>
#include <map>
#include <utility>

namespace reckon {

namespace {

using logbook::EntryId;
using logbook::SignedHow;
using logbook::WorkCounts;

// What says that something was signed, with the entry that says it in its newest words.
struct Saying {
  const StandingFact* fact = nullptr;
  const logbook::Signed* signed_ = nullptr;
  const logbook::Entry* entry = nullptr;
};

// Their entries lie in the chains; a record in which nobody signs is not searched.
std::vector<Saying> sayings_in(const std::vector<StandingFact>& facts,
                               const std::vector<Chain>& chains) {
  std::map<EntryId, Saying> by_newest;
  for (const StandingFact& fact : facts) {
    const auto* signed_ = std::get_if<logbook::Signed>(&fact.said->fact);
    if (signed_ != nullptr) by_newest[fact.chain.back()] = {&fact, signed_, nullptr};
  }
  std::vector<Saying> sayings;
  if (by_newest.empty()) return sayings;
  for (const Chain& chain : chains) {
    for (const Link& link : chain.links) {
      const auto found = by_newest.find(link.entry->id);
      if (found == by_newest.end()) continue;
      found->second.entry = link.entry;
      sayings.push_back(found->second);
    }
  }
  return sayings;
}

using FactsByEntry = std::map<EntryId, StandingFact*>;

// The facts that were signed, by each entry that is meant.
FactsByEntry signed_facts(const std::vector<Saying>& sayings, std::vector<StandingFact>& facts) {
  FactsByEntry by_entry;
  for (const Saying& saying : sayings) {
    for (const EntryId& id : saying.entry->frame.refers) by_entry.emplace(id, nullptr);
  }
  if (by_entry.empty()) return by_entry;
  for (StandingFact& fact : facts) {
    for (const EntryId& id : fact.chain) {
      const auto found = by_entry.find(id);
      if (found != by_entry.end()) found->second = &fact;
    }
  }
  return by_entry;
}

// A correction of a signature carries no signature of its own.
std::optional<logbook::PublicKey> prover(const StandingFact& fact, const logbook::Entry& entry) {
  return fact.chain.size() == 1 ? entry.proved_with : std::nullopt;
}

SignState state_of(const std::vector<SignatureOn>& signatures) {
  SignState state = SignState::recorded;
  for (const SignatureOn& signature : signatures) {
    if (signature.why_not != Unsigned::nothing) continue;
    const bool is_here = signature.fact->how == SignedHow::with_key;
    state = std::max(state, is_here ? SignState::signed_here : SignState::signed_on_paper);
  }
  return state;
}

// What the record says about which work counts, by day.
using Rules = std::vector<std::pair<quantity::Day, WorkCounts>>;

Rules rules_in(const std::vector<StandingFact>& facts) {
  Rules rules;
  for (const StandingFact& fact : facts) {
    const auto* counts = std::get_if<logbook::CountsWork>(&fact.said->fact);
    if (counts != nullptr) rules.emplace_back(fact.said->day, counts->when);
  }
  return rules;
}

int strictness(WorkCounts rule) {
  switch (rule) {
    case WorkCounts::when_recorded:
      return 0;
    case WorkCounts::when_signed:
      return 1;
    case WorkCounts::when_signed_here:
      return 2;
  }
  return 2;
}

// The rule of the newest day that is not after the work's; of two of one day the stricter.
WorkCounts rule_on(const Rules& rules, quantity::Day day) {
  WorkCounts rule = WorkCounts::when_recorded;
  std::optional<quantity::Day> since;
  for (const auto& [from, when] : rules) {
    if (day < from) break;
    if (since == from && strictness(when) <= strictness(rule)) continue;
    rule = when;
    since = from;
  }
  return rule;
}

bool is_enough(SignState state, WorkCounts rule) {
  switch (rule) {
    case WorkCounts::when_recorded:
      return true;
    case WorkCounts::when_signed:
      return state != SignState::recorded;
    case WorkCounts::when_signed_here:
      return state == SignState::signed_here;
  }
  return false;
}

void put_on(const Saying& saying, const SignatureOn& signature, const FactsByEntry& by_entry) {
  for (const EntryId& id : saying.entry->frame.refers) {
    StandingFact* fact = by_entry.at(id);
    if (fact == nullptr || fact == saying.fact) continue;
    SignatureOn here = signature;
    if (fact->chain.back() != id) here.why_not = Unsigned::changed_since;
    fact->signatures.push_back(here);
  }
}

void put_signatures(const Keyholders& holders, const std::vector<Saying>& sayings,
                    std::vector<StandingFact>& facts) {
  const FactsByEntry by_entry = signed_facts(sayings, facts);
  for (const Saying& saying : sayings) {
    const quantity::Day day = saying.fact->said->day;
    const Signing signing{saying.entry->id, day, saying.signed_,
                          prover(*saying.fact, *saying.entry)};
    put_on(saying, {saying.entry->id, saying.signed_, day, holders.judge(signing)}, by_entry);
  }
  for (const auto& [id, fact] : by_entry) {
    if (fact == nullptr) continue;
    std::stable_sort(fact->signatures.begin(), fact->signatures.end(),
                     [](const SignatureOn& a, const SignatureOn& b) { return a.day < b.day; });
    fact->sign_state = state_of(fact->signatures);
  }
}

}  // namespace

bool is_work_that_resets(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Done>(fact) ||
         std::holds_alternative<logbook::NextDue>(fact) ||
         std::holds_alternative<logbook::Overhauled>(fact);
}

bool wants_signature(const logbook::Fact& fact) {
  return is_work_that_resets(fact) || std::holds_alternative<logbook::Fitted>(fact) ||
         std::holds_alternative<logbook::Removed>(fact) ||
         std::holds_alternative<logbook::EngineEvent>(fact) ||
         std::holds_alternative<logbook::LookedInto>(fact) ||
         std::holds_alternative<logbook::Limit>(fact) ||
         std::holds_alternative<logbook::MixedLimit>(fact) ||
         std::holds_alternative<logbook::OnCondition>(fact) ||
         std::holds_alternative<logbook::SharesByFractions>(fact) ||
         std::holds_alternative<logbook::ShorterLimitStays>(fact) ||
         std::holds_alternative<logbook::Task>(fact) ||
         std::holds_alternative<logbook::TaskEnds>(fact);
}

bool is_end(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::PersonEnds>(fact) ||
         std::holds_alternative<logbook::KeyEnds>(fact);
}

Keyholders holders_now(const std::vector<StandingFact>& facts, const Knowledge& knowledge) {
  std::vector<StandingFact> ends;
  for (const StandingFact& fact : facts) {
    if (is_end(fact.said->fact)) ends.push_back(fact);
  }
  return {facts, ends, knowledge};
}

bool judge_signatures(std::vector<StandingFact>& facts, const std::vector<StandingFact>& all_ends,
                      const std::vector<Chain>& chains, const Knowledge& knowledge) {
  const Keyholders holders(facts, all_ends, knowledge);
  const std::vector<Saying> sayings = sayings_in(facts, chains);
  const Rules rules = rules_in(facts);
  put_signatures(holders, sayings, facts);
  for (StandingFact& fact : facts) {
    if (rules.empty() || !is_work_that_resets(fact.said->fact)) continue;
    fact.is_counted = is_enough(fact.sign_state, rule_on(rules, fact.said->day));
  }
  return holders.has_keys() || !sayings.empty() || !rules.empty();
}

}  // namespace reckon
