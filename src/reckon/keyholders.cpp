#include "reckon/keyholders.h"

#include <algorithm>

namespace reckon {

namespace {

Holding holding_of(const StandingFact& fact, const logbook::PersonHolds& person) {
  Holding holding{person.name, person.certificate, person.kind, fact.said->day,
                  fact.root,   fact.chain.back(),  {},          {},
                  {}};
  for (const logbook::PublicKey& key : person.keys) holding.keys.push_back({key, {}, {}});
  return holding;
}

// Shown is the earliest end; each of them is held against what was signed.
template <class Held>
void end_by(Held& held, const StandingFact& end) {
  held.ends.push_back({end.said->day, end.root});
  if (!held.ended || end.said->day < held.ended->day) held.ended = held.ends.back();
}

}  // namespace

Keyholders::Keyholders(const std::vector<StandingFact>& facts,
                       const std::vector<StandingFact>& all_ends, const Knowledge& knowledge)
    : knowledge_(knowledge) {
  for (const StandingFact& fact : facts) {
    if (const auto* person = as<logbook::PersonHolds>(fact)) {
      holdings_.push_back(holding_of(fact, *person));
    }
  }
  for (const StandingFact& end : all_ends) {
    const auto* person = as<logbook::PersonEnds>(end);
    const auto* key = as<logbook::KeyEnds>(end);
    for (Holding& holding : holdings_) {
      // Who takes part again says so anew, knowing of the end.
      const bool is_again =
          knowledge.knew(holding.entry, end.root) && end.said->day <= holding.since;
      if (person != nullptr && person->name == holding.name && !is_again) {
        end_by(holding, end);
      }
      // An ended key never signs again, in whoever's sentence it stands.
      for (KeyHeld& held : holding.keys) {
        if (key != nullptr && key->key == held.key) end_by(held, end);
      }
    }
  }
}

bool Keyholders::has_keys() const {
  return std::any_of(holdings_.begin(), holdings_.end(),
                     [](const Holding& holding) { return !holding.keys.empty(); });
}

bool Keyholders::is_after(const Signing& signing, const Ended& end) const {
  if (knowledge_.knew(signing.entry, end.entry) || end.day < signing.day) return true;
  return signing.day == end.day && !knowledge_.knew(end.entry, signing.entry);
}

bool Keyholders::is_after_one(const Signing& signing, const std::vector<Ended>& ends) const {
  return std::any_of(ends.begin(), ends.end(),
                     [&](const Ended& end) { return is_after(signing, end); });
}

Unsigned Keyholders::judge_holding(const Signing& signing, const Holding& holding) const {
  const logbook::Signed& fact = *signing.fact;
  const bool is_meant = holding.name == fact.by && fact.certificate == holding.certificate &&
                        fact.kind == holding.kind && holding.since <= signing.day &&
                        knowledge_.knew(signing.entry, holding.newest);
  if (!is_meant) return Unsigned::not_on_record;
  const auto key = std::find_if(holding.keys.begin(), holding.keys.end(), [&](const KeyHeld& held) {
    return signing.proved_with == std::optional(held.key);
  });
  if (key == holding.keys.end()) return Unsigned::not_on_record;
  if (is_after_one(signing, key->ends)) return Unsigned::key_ended;
  if (is_after_one(signing, holding.ends)) return Unsigned::person_ended;
  return Unsigned::nothing;
}

Unsigned Keyholders::judge(const Signing& signing) const {
  if (signing.fact->how == logbook::SignedHow::on_paper) {
    // A shop signs its own paper: it need not be on record, but nobody signs after the end.
    bool is_on_record = false;
    bool is_ended = true;
    for (const Holding& holding : holdings_) {
      if (holding.name != signing.fact->by) continue;
      is_on_record = true;
      if (!is_after_one(signing, holding.ends)) is_ended = false;
    }
    return is_on_record && is_ended ? Unsigned::person_ended : Unsigned::nothing;
  }
  if (!signing.proved_with) return Unsigned::not_proved;
  Unsigned why = Unsigned::not_on_record;
  for (const Holding& holding : holdings_) {
    const Unsigned one = judge_holding(signing, holding);
    if (one == Unsigned::nothing) return one;
    if (one != Unsigned::not_on_record) why = one;
  }
  return why;
}

}  // namespace reckon
