#include "reckon/check_signed.h"

#include <algorithm>
#include <string>

#include "reckon/entry_named.h"
#include "reckon/keyholders.h"
#include "reckon/look_alike.h"
#include "reckon/signing.h"

namespace reckon {

namespace {

using logbook::EntryId;
using logbook::EntryName;

std::string text_of(const EntryName& name) {
  return name.writer + "-" + std::to_string(name.number);
}

Objection with_name(CheckKind kind, const char* slot, std::string name) {
  Objection objection = refusal(kind, slot);
  objection.names.push_back(std::move(name));
  return objection;
}

Objection with_entries(CheckKind kind, std::vector<EntryId> entries) {
  Objection objection = refusal(kind, "entry");
  objection.entries = std::move(entries);
  return objection;
}

// A strike, or an entry of a chain of which nothing stands.
Objection of_no_fact(const EntryName& name, const Standing& standing) {
  for (const Chain& chain : standing.chains) {
    for (const Link& link : chain.links) {
      if (!is_named(name, link.entry->id)) continue;
      const bool is_strike = said_in(*link.entry) == nullptr;
      return with_entries(is_strike ? CheckKind::nothing_to_sign : CheckKind::struck_to_sign,
                          {link.entry->id});
    }
  }
  return with_name(CheckKind::entry_unknown, "entry", text_of(name));
}

// What would be signed under this name stands, is the newest of its chain, and is no signature.
void check_target(const EntryName& name, quantity::Day day, const Standing& standing,
                  Objections& objections) {
  const StandingFact* fact = find_named(standing.facts, name);
  if (fact == nullptr) return objections.push_back(of_no_fact(name, standing));
  const EntryId& newest = fact->chain.back();
  if (std::holds_alternative<logbook::Signed>(fact->said->fact)) {
    objections.push_back(with_entries(CheckKind::nothing_to_sign, {newest}));
  } else if (!is_named(name, newest)) {
    const auto named = std::find_if(fact->chain.begin(), fact->chain.end(),
                                    [&](const EntryId& id) { return is_named(name, id); });
    objections.push_back(with_entries(CheckKind::signed_older_entry, {*named, newest}));
  } else if (day < fact->said->day) {
    objections.push_back(with_entries(CheckKind::looked_before, {newest}));
    objections.back().day = fact->said->day;
  }
}

// With a key, the certificate is on record for that person; nobody signs after the end.
void check_signer(const logbook::Signed& fact, const Standing& standing, Objections& objections) {
  const Keyholders holders = holders_now(standing.facts, standing.knowledge);
  bool is_known = false;
  bool holds = false;
  const Holding* ended = nullptr;
  for (const Holding& holding : holders.holdings()) {
    if (holding.name != fact.by) continue;
    is_known = true;
    if (fact.certificate && *fact.certificate != holding.certificate) continue;
    if (holding.ended) {
      ended = &holding;
    } else {
      holds = true;
    }
  }
  const bool is_with_key = fact.how == logbook::SignedHow::with_key;
  if (holds || (!is_known && !is_with_key)) return;
  if (ended == nullptr) {
    objections.push_back(with_name(CheckKind::signer_unknown, "by", fact.by.text));
    return;
  }
  objections.push_back(with_name(CheckKind::signer_ended, "by", fact.by.text));
  objections.back().entries.push_back(ended->ended->entry);
  objections.back().day = ended->ended->day;
}

void check_signed(const logbook::Said& said, const logbook::Signed& fact, const Standing& standing,
                  Objections& objections) {
  if (fact.how == logbook::SignedHow::with_key) {
    objections.push_back(with_name(CheckKind::signature_needs_key, "how", fact.by.text));
  }
  if (fact.through && !logbook::is_range(fact.entry, *fact.through)) {
    objections.push_back(with_name(CheckKind::no_range, "through", text_of(*fact.through)));
    return;
  }
  std::vector<EntryName> names = logbook::between(fact);
  names.insert(names.begin(), fact.entry);
  if (fact.through) names.push_back(*fact.through);
  names.insert(names.end(), fact.also.begin(), fact.also.end());
  for (const EntryName& name : names) check_target(name, said.day, standing, objections);
  check_signer(fact, standing, objections);
}

// A key belongs to one person.
void check_person(const logbook::PersonHolds& person, const Standing& standing,
                  Objections& objections) {
  const Keyholders holders = holders_now(standing.facts, standing.knowledge);
  for (const Holding& holding : holders.holdings()) {
    for (const KeyHeld& held : holding.keys) {
      const bool is_said = std::any_of(person.keys.begin(), person.keys.end(),
                                       [&](const auto& key) { return key == held.key; });
      if (!is_said) continue;
      if (held.ended) {
        objections.push_back(with_entries(CheckKind::key_has_ended, {held.ended->entry}));
      } else if (holding.name != person.name) {
        objections.push_back(with_name(CheckKind::key_of_another, "keys", holding.name.text));
        objections.back().entries.push_back(holding.entry);
      }
    }
  }
}

// What a signature hangs on: another wording would count backwards, for what was signed before.
bool says_who_signs(const logbook::Fact& fact) {
  const auto* person = std::get_if<logbook::PersonHolds>(&fact);
  return (person != nullptr && !person->keys.empty()) ||
         std::holds_alternative<logbook::Signed>(fact) ||
         std::holds_alternative<logbook::KeyEnds>(fact) ||
         std::holds_alternative<logbook::PersonEnds>(fact);
}

void check_person_end(const logbook::PersonEnds& end, const Standing& standing,
                      Objections& objections) {
  std::vector<std::string> people;
  for (const StandingFact& fact : standing.facts) {
    const auto* person = std::get_if<logbook::PersonHolds>(&fact.said->fact);
    if (person == nullptr) continue;
    if (person->name == end.name) return;
    people.push_back(person->name.text);
  }
  objections.push_back(with_name(CheckKind::no_such_thing, "name", end.name.text));
  for (std::string& near : nearest_three(end.name.text, people)) {
    objections.back().names.push_back(std::move(near));
  }
}

// A book holds one record.
void check_record_name(const logbook::CountsWork& rule, const Standing& standing,
                       Objections& objections) {
  for (const StandingFact& fact : standing.facts) {
    const auto* begins = std::get_if<logbook::RecordBegins>(&fact.said->fact);
    if (begins == nullptr || begins->name == rule.record) continue;
    objections.push_back(with_name(CheckKind::no_such_thing, "record", rule.record.text));
    objections.back().names.push_back(begins->name.text);
    return;
  }
}

void check_key_end(const logbook::KeyEnds& end, const Standing& standing, Objections& objections) {
  const Keyholders holders = holders_now(standing.facts, standing.knowledge);
  for (const Holding& holding : holders.holdings()) {
    if (holding.name != end.name) continue;
    for (const KeyHeld& held : holding.keys) {
      if (held.key == end.key) return;
    }
  }
  objections.push_back(with_name(CheckKind::no_such_key, "key", end.name.text));
}

}  // namespace

bool is_about_signing(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Signed>(fact) ||
         std::holds_alternative<logbook::PersonHolds>(fact) ||
         std::holds_alternative<logbook::PersonEnds>(fact) ||
         std::holds_alternative<logbook::KeyEnds>(fact) ||
         std::holds_alternative<logbook::CountsWork>(fact);
}

void check_signing(const logbook::Said& said, const Standing& standing, Objections& objections) {
  if (const auto* signed_ = std::get_if<logbook::Signed>(&said.fact)) {
    check_signed(said, *signed_, standing, objections);
  } else if (const auto* person = std::get_if<logbook::PersonHolds>(&said.fact)) {
    check_person(*person, standing, objections);
  } else if (const auto* end = std::get_if<logbook::KeyEnds>(&said.fact)) {
    check_key_end(*end, standing, objections);
  } else if (const auto* leaves = std::get_if<logbook::PersonEnds>(&said.fact)) {
    check_person_end(*leaves, standing, objections);
  } else if (const auto* rule = std::get_if<logbook::CountsWork>(&said.fact)) {
    check_record_name(*rule, standing, objections);
  }
}

void check_corrected_signing(const logbook::Said& instead, const StandingFact& old,
                             Objections& objections) {
  if (!says_who_signs(instead.fact) && !says_who_signs(old.said->fact)) return;
  objections.push_back(with_entries(CheckKind::signing_corrected, {old.chain.back()}));
}

}  // namespace reckon
