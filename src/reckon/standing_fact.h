// reckon/standing_fact.h: a fact as it stands, and a question that a person must decide, as values.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "logbook/entry.h"

namespace reckon {

// How an entry was signed. The best of its signatures that count says how.
enum class SignState { recorded, signed_on_paper, signed_here };

// Why a signature does not count.
enum class Unsigned {
  nothing,        // it counts
  not_proved,     // it fits no key on record for this person
  not_on_record,  // nobody of that name, certificate and key was on record when it was written
  key_ended,      // the key had ended
  person_ended,   // the person had ended
  changed_since,  // the entry was corrected after it was signed
};

struct SignatureOn {
  logbook::EntryId entry;  // that says it
  const logbook::Signed* fact = nullptr;
  quantity::Day day;
  Unsigned why_not = Unsigned::nothing;
};

struct StandingFact {
  logbook::EntryId root;                // the chain's first entry: its name in answers
  std::vector<logbook::EntryId> chain;  // root … newest, those that gave its value
  const logbook::Said* said = nullptr;  // what stands; points into the entries given
  std::int64_t written = 0;             // place among all entries by (writer, number)
  std::vector<SignatureOn>
      signatures;  // of its newest entry, by day; those of older ones do not count
  SignState sign_state = SignState::recorded;
  bool is_counted = true;  // false: work that the record counts only once it is signed
};

// What stands, if it is of this kind; null for all other kinds.
template <class Kind>
const Kind* as(const StandingFact& fact) {
  return std::get_if<Kind>(&fact.said->fact);
}

// One thing that a person must decide; it blocks a yes about the aircraft it touches (C5, C6 …).
struct Question {
  std::string name;    // short and stable: "4F7Q", from class and members
  std::string class_;  // "two corrections", "order within a day", "serial in two places" …
  std::vector<logbook::EntryId> entries;  // those that it is about
  std::vector<logbook::Thing> about;
  std::string figure;  // what it changes, canonical text ("1.4 h")
};

}  // namespace reckon
