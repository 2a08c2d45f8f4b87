#include "reckon/check_chain.h"

#include <algorithm>

#include "reckon/entry_named.h"
#include "reckon/rules_in_force.h"

namespace reckon {

namespace {

using logbook::EntryId;

struct Named {
  const Chain* chain = nullptr;
  std::size_t link = 0;

  const logbook::Entry& entry() const { return *chain->links[link].entry; }
};

Named find_in_chains(const Standing& standing, const logbook::EntryName& name) {
  for (const Chain& chain : standing.chains) {
    for (std::size_t link = 0; link < chain.links.size(); ++link) {
      if (is_named(name, chain.links[link].entry->id)) return {&chain, link};
    }
  }
  return {};
}

bool is_strike(const logbook::Entry& entry) {
  return entry.said && std::holds_alternative<logbook::Struck>(entry.said->fact);
}

// A strike counts unless it is struck itself.
bool is_struck(const Chain& chain, std::size_t link) {
  for (std::size_t later = link + 1; later < chain.links.size(); ++later) {
    if (chain.links[later].target != link || !is_strike(*chain.links[later].entry)) continue;
    if (!is_struck(chain, later)) return true;
  }
  return false;
}

const StandingFact* standing_fact(const Standing& standing, const EntryId& root) {
  const auto found = std::find_if(standing.facts.begin(), standing.facts.end(),
                                  [&](const StandingFact& fact) { return fact.root == root; });
  return found == standing.facts.end() ? nullptr : &*found;
}

Objection with_entry(Objection objection, const EntryId& entry) {
  objection.entries = {entry};
  return objection;
}

// Whether two values say the same, whatever doubts they accept.
bool say_the_same(logbook::Said a, logbook::Said b) {
  a.although.clear();
  b.although.clear();
  return a == b;
}

void check_value(const logbook::Corrected& corrected, const StandingFact& fact,
                 Objections& objections) {
  const logbook::Said& instead = *corrected.instead;
  if (instead.fact.index() != fact.said->fact.index()) {
    objections.push_back(
        with_entry(refusal(CheckKind::correction_of_other_kind, "instead"), fact.root));
  } else if (say_the_same(instead, *fact.said)) {
    objections.push_back(
        with_entry(refusal(CheckKind::nothing_changes, "instead"), fact.chain.back()));
  }
}

}  // namespace

namespace {

// The entry that was named, and the newest of its chain.
Objection older_entry(const EntryId& named, const StandingFact& fact) {
  Objection objection = with_entry(refusal(CheckKind::correction_of_older_entry, "entry"), named);
  objection.entries.push_back(fact.chain.back());
  return objection;
}

Objection unknown_entry(const logbook::EntryName& name, const char* slot) {
  Objection objection = refusal(CheckKind::entry_unknown, slot);
  objection.names.push_back(name.writer + "-" + std::to_string(name.number));
  return objection;
}

}  // namespace

const StandingFact* check_correction(const logbook::Corrected& corrected, const Standing& standing,
                                     Objections& objections) {
  const Named named = find_in_chains(standing, corrected.entry);
  if (named.chain == nullptr) {
    objections.push_back(unknown_entry(corrected.entry, "entry"));
    return nullptr;
  }
  if (is_strike(named.entry())) {
    objections.push_back(
        with_entry(refusal(CheckKind::correction_of_other_kind, "entry"), named.entry().id));
    return nullptr;
  }
  const StandingFact* fact = standing_fact(standing, named.chain->root());
  if (fact == nullptr || is_struck(*named.chain, named.link)) {
    objections.push_back(with_entry(refusal(CheckKind::already_struck, "entry"), named.entry().id));
    return nullptr;
  }
  if (fact->chain.back() != named.entry().id) {
    objections.push_back(older_entry(named.entry().id, *fact));
    return nullptr;
  }
  check_value(corrected, *fact, objections);
  return fact;
}

namespace {

// What other facts say of a fact, so that they would hang in the air without it.
struct RestsOn {
  const StandingFact& base;
  const StandingFact& other;

  bool by_name() const {
    if (!other.said->instead_of) return false;
    return std::any_of(base.chain.begin(), base.chain.end(),
                       [&](const EntryId& id) { return is_named(*other.said->instead_of, id); });
  }
  bool by_removal() const {
    const auto* fitted = std::get_if<logbook::Fitted>(&base.said->fact);
    const auto* removed = std::get_if<logbook::Removed>(&other.said->fact);
    return fitted != nullptr && removed != nullptr && fitted->thing == removed->thing &&
           fitted->host == removed->host && fitted->place == removed->place &&
           base.said->day <= other.said->day;
  }
};

void check_referred(const StandingFact& base, const Standing& standing, Objections& objections) {
  Objection objection = doubt(CheckKind::referred_to, "entry");
  for (const StandingFact& other : standing.facts) {
    if (other.root == base.root) continue;
    const RestsOn rests{base, other};
    if (rests.by_name() || rests.by_removal()) objection.entries.push_back(other.chain.back());
  }
  if (!objection.entries.empty()) objections.push_back(objection);
}

}  // namespace

void check_strike(const logbook::Struck& struck, const Standing& standing, Objections& objections) {
  const Named named = find_in_chains(standing, struck.entry);
  if (named.chain == nullptr) {
    objections.push_back(unknown_entry(struck.entry, "entry"));
    return;
  }
  const StandingFact* fact = standing_fact(standing, named.chain->root());
  const bool is_undone = is_strike(named.entry());
  if (is_struck(*named.chain, named.link) || (fact == nullptr && !is_undone)) {
    objections.push_back(with_entry(refusal(CheckKind::already_struck, "entry"), named.entry().id));
    return;
  }
  if (named.link == 0 && fact != nullptr) check_referred(*fact, standing, objections);
}

void check_replacement(const logbook::Said& said, const Standing& standing,
                       Objections& objections) {
  if (!said.instead_of) return;
  const StandingFact* fact = find_named(standing.facts, *said.instead_of);
  if (fact == nullptr) {
    objections.push_back(unknown_entry(*said.instead_of, "instead_of"));
  } else if (!may_stand_instead(said.fact, fact->said->fact)) {
    objections.push_back(
        with_entry(refusal(CheckKind::correction_of_other_kind, "instead_of"), fact->root));
  }
}

void check_looked_into(const logbook::Said& said, const Standing& standing,
                       Objections& objections) {
  const auto* looked = std::get_if<logbook::LookedInto>(&said.fact);
  if (looked == nullptr) return;
  const StandingFact* fact = find_named(standing.facts, looked->entry);
  if (fact == nullptr) {
    objections.push_back(unknown_entry(looked->entry, "entry"));
  } else if (!std::holds_alternative<logbook::Started>(fact->said->fact) &&
             !std::holds_alternative<logbook::Exceeded>(fact->said->fact)) {
    objections.push_back(
        with_entry(refusal(CheckKind::nothing_to_look_into, "entry"), fact->chain.back()));
  } else if (!is_named(looked->entry, fact->chain.back())) {
    const auto named = std::find_if(fact->chain.begin(), fact->chain.end(),
                                    [&](const EntryId& id) { return is_named(looked->entry, id); });
    objections.push_back(older_entry(*named, *fact));
  } else if (said.day < fact->said->day) {
    objections.push_back(
        with_entry(refusal(CheckKind::looked_before, "entry"), fact->chain.back()));
    objections.back().day = fact->said->day;
  }
}

namespace {

bool is_one_chart(const logbook::ChartRow& a, const logbook::ChartRow& b) {
  return a.model == b.model && a.check == b.check && a.chart == b.chart;
}

bool contradict(const logbook::ChartRow& a, const logbook::ChartRow& b) {
  const bool is_one_line = a.altitude_feet == b.altitude_feet && a.outside_air == b.outside_air;
  for (const logbook::AllowedAt& one : a.allows) {
    for (const logbook::AllowedAt& other : b.allows) {
      if (one.torque.unit != other.torque.unit) return true;
      if (is_one_line && one.torque == other.torque && one.allowed != other.allowed) return true;
    }
  }
  return false;
}

}  // namespace

void check_chart(const logbook::Said& said, const Standing& standing,
                 const StandingFact* in_place_of, Objections& objections) {
  const auto* row = std::get_if<logbook::ChartRow>(&said.fact);
  if (row == nullptr) return;
  if (contradict(*row, *row)) {
    objections.push_back(refusal(CheckKind::chart_unlike_itself, "allows"));
  }
  const StandingFact* replaced =
      said.instead_of ? find_named(standing.facts, *said.instead_of) : nullptr;
  for (const StandingFact& fact : standing.facts) {
    const auto* other = std::get_if<logbook::ChartRow>(&fact.said->fact);
    if (other == nullptr || &fact == in_place_of || &fact == replaced) continue;
    if (!is_one_chart(*row, *other) || !contradict(*row, *other)) continue;
    objections.push_back(
        with_entry(refusal(CheckKind::chart_contradicted, "allows"), fact.chain.back()));
    return;
  }
}

}  // namespace reckon
