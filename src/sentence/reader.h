// sentence/reader.h: reading one sentence, first silently; explain.h says what was wrong.
#pragma once

#include <bitset>

#include "sentence/kinds/kinds.h"
#include "sentence/values.h"

namespace sentence {

// The clauses of one sentence that were read so far: which, and into what.
class Clauses {
 public:
  Clauses(const Kind& kind, void* fact, logbook::Said& said)
      : kind_(&kind), fact_(fact), said_(&said) {}

  // The clause at the cursor, up to its end. False, with the cursor where it was, if none is there.
  bool take(Cursor& cursor);
  // True if the clause last taken may stand once and has stood before.
  bool is_twice() const { return is_twice_; }
  // True if the kind needs at least one clause of its own and has none.
  bool needs_one() const { return kind_->needs_a_clause && own_.none(); }
  bool has(const Clause& clause) const;
  const Kind& kind() const { return *kind_; }
  void settle();
  // Puts the clauses taken in the place of those that the other holds.
  void amend(void* fact, logbook::Said& said) const;

 private:
  using Seen = std::bitset<32>;
  bool take_of(Cursor& cursor, std::span<const Clause> clauses, Seen& seen, void* owner);
  void take_note(const Clause& clause, std::size_t place, Seen& seen, const void* owner);

  const Kind* kind_;
  void* fact_;
  logbook::Said* said_;
  Seen own_;
  Seen common_;
  std::size_t next_ = 0;  // canonical text goes on after the clause last taken
  bool is_twice_ = false;
};

// Clauses parted by commas, up to the cursor's end; each that stands once only once.
bool read_clauses(Cursor& cursor, Clauses& clauses);

// The day, the time and the rest of a sentence, up to the cursor's end. False if it is none. A
// missing day is today, if that is known and day_may_miss.
enum class MissingDay { is_today, is_wrong };
bool read_sentence(Cursor& cursor, MissingDay missing, logbook::Said& said);

// The sentence inside another: it carries its day, and is no correction itself.
bool read_inner_sentence(Cursor& cursor, logbook::Said& said);

// A time of day after the day; true if there is none or it was read.
bool read_time(Cursor& cursor, logbook::Said& said);

}  // namespace sentence
