// reckon/keyholders.h: who holds which certificate and signs with which key, and when that ended.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "reckon/chains.h"
#include "reckon/knowledge.h"
#include "reckon/standing_fact.h"

namespace reckon {

// What ended, by which sentence.
struct Ended {
  quantity::Day day;
  logbook::EntryId entry;
};
struct KeyHeld {
  logbook::PublicKey key;
  std::optional<Ended> ended;  // by the earliest of its ends
  std::vector<Ended> ends;     // all: two bases may each say one
};
// One sentence: a person holds a certificate, maybe with keys.
struct Holding {
  logbook::PersonName name;
  std::string certificate;
  std::optional<std::string> kind;
  quantity::Day since;
  logbook::EntryId entry;   // that first said it
  logbook::EntryId newest;  // in its newest words: what was signed before knew other ones
  std::vector<KeyHeld> keys;
  std::optional<Ended> ended;  // with the person, by the earliest of its ends
  std::vector<Ended> ends;
};

// What a signature says of itself.
struct Signing {
  logbook::EntryId entry;
  quantity::Day day;
  const logbook::Signed* fact = nullptr;
  std::optional<logbook::PublicKey> proved_with;
};

class Keyholders {
 public:
  // Ends count whatever their day: what was written knowing of one is judged by it.
  Keyholders(const std::vector<StandingFact>& facts, const std::vector<StandingFact>& all_ends,
             const Knowledge& knowledge);

  const std::vector<Holding>& holdings() const& { return holdings_; }
  std::vector<Holding> holdings() && { return std::move(holdings_); }
  bool has_keys() const;
  // Whether a signature counts by itself, whatever it is on.
  Unsigned judge(const Signing& signing) const;

 private:
  Unsigned judge_holding(const Signing& signing, const Holding& holding) const;
  // Whether the end stands against what was written: it knew of it, or its day is later; on the
  // day of the end itself what the end's writer had seen is older.
  bool is_after(const Signing& signing, const Ended& end) const;
  bool is_after_one(const Signing& signing, const std::vector<Ended>& ends) const;

  const Knowledge& knowledge_;
  std::vector<Holding> holdings_;
};

}  // namespace reckon
