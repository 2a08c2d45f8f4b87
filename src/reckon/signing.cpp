#include "reckon/signing.h"

#include <algorithm>
#include <map>
#include <utility>

namespace reckon {

namespace {

using logbook::EntryId;
using logbook::SignedHow;
using logbook::WorkCounts;

std::map<EntryId, const logbook::Entry*> entries_in(const std::vector<Chain>& chains) {
  std::map<EntryId, const logbook::Entry*> entries;
  for (const Chain& chain : chains) {
    for (const Link& link : chain.links) entries.emplace(link.entry->id, link.entry);
  }
  return entries;
}

// The facts by each entry that made them.
std::map<EntryId, StandingFact*> facts_by_entry(std::vector<StandingFact>& facts) {
  std::map<EntryId, StandingFact*> by_entry;
  for (StandingFact& fact : facts) {
    for (const EntryId& id : fact.chain) by_entry.emplace(id, &fact);
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

// The rule of the newest day that is not after the work's; of two of one day the stricter.
WorkCounts rule_on(const std::vector<StandingFact>& facts, quantity::Day day) {
  WorkCounts rule = WorkCounts::when_recorded;
  std::optional<quantity::Day> since;
  const auto strictness = [](WorkCounts one) {
    return one == WorkCounts::when_recorded ? 0 : one == WorkCounts::when_signed ? 1 : 2;
  };
  for (const StandingFact& fact : facts) {
    const auto* counts = std::get_if<logbook::CountsWork>(&fact.said->fact);
    if (counts == nullptr || day < fact.said->day) continue;
    const bool is_stricter = strictness(rule) < strictness(counts->when);
    if (since == fact.said->day && !is_stricter) continue;
    rule = counts->when;
    since = fact.said->day;
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

void put_on(const StandingFact& signed_, const std::vector<EntryId>& refers,
            const SignatureOn& signature, const std::map<EntryId, StandingFact*>& by_entry) {
  for (const EntryId& id : refers) {
    const auto found = by_entry.find(id);
    if (found == by_entry.end() || found->second->root == signed_.root) continue;
    SignatureOn here = signature;
    if (found->second->chain.back() != id) here.why_not = Unsigned::changed_since;
    found->second->signatures.push_back(here);
  }
}

}  // namespace

bool is_work_that_resets(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Done>(fact) ||
         std::holds_alternative<logbook::Overhauled>(fact);
}

bool wants_signature(const logbook::Fact& fact) {
  return is_work_that_resets(fact) || std::holds_alternative<logbook::Fitted>(fact) ||
         std::holds_alternative<logbook::Removed>(fact) ||
         std::holds_alternative<logbook::EngineEvent>(fact) ||
         std::holds_alternative<logbook::LookedInto>(fact) ||
         std::holds_alternative<logbook::Limit>(fact) ||
         std::holds_alternative<logbook::OnCondition>(fact) ||
         std::holds_alternative<logbook::Task>(fact) ||
         std::holds_alternative<logbook::TaskEnds>(fact);
}

bool is_end(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::PersonEnds>(fact) ||
         std::holds_alternative<logbook::KeyEnds>(fact);
}

Keyholders holders_now(const Standing& standing) {
  std::vector<StandingFact> ends;
  for (const StandingFact& fact : standing.facts) {
    if (is_end(fact.said->fact)) ends.push_back(fact);
  }
  return {standing.facts, ends, standing.knowledge};
}

void judge_signatures(Standing& standing, const std::vector<StandingFact>& all_ends) {
  const Keyholders holders(standing.facts, all_ends, standing.knowledge);
  const auto entries = entries_in(standing.chains);
  const auto by_entry = facts_by_entry(standing.facts);
  standing.has_signing = holders.has_keys();
  for (const StandingFact& fact : standing.facts) {
    const auto* signed_ = std::get_if<logbook::Signed>(&fact.said->fact);
    if (std::holds_alternative<logbook::CountsWork>(fact.said->fact)) standing.has_signing = true;
    if (signed_ == nullptr) continue;
    standing.has_signing = true;
    const logbook::Entry& entry = *entries.at(fact.chain.back());
    const Signing signing{fact.root, fact.said->day, signed_, prover(fact, entry)};
    put_on(fact, entry.frame.refers,
           {fact.chain.back(), signed_, fact.said->day, holders.judge(signing)}, by_entry);
  }
  for (StandingFact& fact : standing.facts) {
    fact.sign_state = state_of(fact.signatures);
    if (!is_work_that_resets(fact.said->fact)) continue;
    fact.is_counted = is_enough(fact.sign_state, rule_on(standing.facts, fact.said->day));
  }
}

}  // namespace reckon
