// Taking the clauses of one sentence, in whatever order they stand.
#include <array>

#include "sentence/reader.h"

namespace sentence {

void Clauses::take_note(const Clause& clause, std::size_t place, Seen& seen, const void* owner) {
  const bool is_repeated = clause.slot.member->presence == Presence::repeated && !is_list(clause);
  is_twice_ = is_repeated ? clause.slot.is_twice(owner) : seen[place];
  seen.set(place);
}

bool Clauses::take_of(Cursor& cursor, std::span<const Clause> clauses, Seen& seen, void* owner) {
  const std::size_t from = cursor.skip_blanks();
  for (std::size_t i = 0; i < clauses.size(); ++i) {
    const std::size_t place = (i + next_) % clauses.size();
    const Clause& clause = clauses[place];
    const bool may_stand = &seen == &own_ || takes_common(*kind_, clause);
    if (!may_stand || !clause.slot.take(cursor, clause, owner)) continue;
    take_note(clause, place, seen, owner);
    next_ = place;
    if (cursor.spans() != nullptr) {
      cursor.spans()->push_back(
          {clause.name, static_cast<std::uint16_t>(from), static_cast<std::uint16_t>(cursor.at())});
    }
    return true;
  }
  return false;
}

bool Clauses::take(Cursor& cursor) {
  if (!kind_->clauses.empty() && take_of(cursor, kind_->clauses, own_, fact_)) return true;
  return take_of(cursor, common_clauses(), common_, said_);
}

bool Clauses::has(const Clause& clause) const {
  for (std::size_t i = 0; i < kind_->clauses.size(); ++i) {
    if (&kind_->clauses[i] == &clause) return own_[i];
  }
  return false;
}

void Clauses::settle() {
  for (const Clause& clause : kind_->clauses) clause.slot.settle(fact_);
  for (const Clause& clause : common_clauses()) clause.slot.settle(said_);
}

void Clauses::amend(void* fact, logbook::Said& said) const {
  for (std::size_t i = 0; i < kind_->clauses.size(); ++i) {
    if (own_[i]) kind_->clauses[i].slot.amend(fact, fact_);
  }
  for (std::size_t i = 0; i < common_clauses().size(); ++i) {
    if (common_[i]) common_clauses()[i].slot.amend(&said, said_);
  }
}

}  // namespace sentence
