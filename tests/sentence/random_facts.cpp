#include "sentence/random_facts.h"

#include <cstdlib>

#include "sentence/sorts/inner.h"
#include "sentence/sorts/times.h"
#include "sentence/values.h"

namespace random_facts {
namespace {

using sentence::Clause;
using sentence::Kind;
using sentence::Option;
using sentence::PieceKind;
using sentence::Presence;
using sentence::Slot;
using sentence::Sort;

void fill_items(Dice& dice, const Slot& slot, void* member, std::int64_t count) {
  for (std::int64_t i = 0; i < count; ++i) fill(dice, *slot.sort, slot.member->add(member));
}

// The slots of a pattern; those in brackets may stay empty.
void fill_pattern(Dice& dice, const sentence::Pattern& pattern, std::span<const Slot> slots,
                  void* owner) {
  bool is_left_out = false;
  for (const auto& piece : pattern.pieces()) {
    if (piece.kind == PieceKind::open) is_left_out = dice.is_heads();
    if (piece.kind == PieceKind::close) is_left_out = false;
    if (piece.kind != PieceKind::slot || is_left_out) continue;
    const Slot& slot = slots[piece.slot];
    fill_items(dice, slot, slot.at(owner), piece.join.empty() ? 1 : dice.between(1, 3));
  }
}

void fill_repeated(Dice& dice, const Clause& clause, void* owner, std::int64_t count) {
  void* member = clause.slot.at(owner);
  for (std::int64_t i = 0; i < count; ++i) {
    fill_items(dice, clause.slot, member, 1);
    if (!is_list(clause) && clause.slot.is_twice(owner)) clause.slot.member->drop(member);
  }
  clause.slot.settle(owner);
}

void fill_clause(Dice& dice, const Clause& clause, void* owner) {
  switch (clause.slot.member->presence) {
    case Presence::flag:
      *static_cast<bool*>(clause.slot.at(owner)) = true;
      return;
    case Presence::repeated:
      return fill_repeated(dice, clause, owner, dice.between(1, 3));
    case Presence::required:
    case Presence::optional:
      return fill_items(dice, clause.slot, clause.slot.at(owner), 1);
  }
}

void fill_inner(Dice& dice, void* value) {
  const auto kinds = sentence::all_kinds();
  const std::int64_t last = static_cast<std::int64_t>(kinds.size()) - 3;  // no correction
  const auto index = static_cast<std::size_t>(dice.between(0, last));
  *static_cast<logbook::InnerSaid*>(value) = logbook::InnerSaid(said_of(dice, *kinds[index]));
}

void fill_any_leaf(Dice& dice, const Sort& sort, void* value) {
  const bool is_inner = &sort == &sentence::sort_of<logbook::InnerSaid>;
  return is_inner ? fill_inner(dice, value) : fill_leaf(dice, sort, value);
}

std::int64_t number_in(const char* variable, std::int64_t otherwise) {
  const char* text = std::getenv(variable);
  return text == nullptr ? otherwise : std::atoll(text);
}

}  // namespace

void fill(Dice& dice, const Sort& sort, void* value) {
  switch (sort.shape) {
    case sentence::Shape::leaf:
      return fill_any_leaf(dice, sort, value);
    case sentence::Shape::words: {
      const auto last = static_cast<std::int64_t>(sort.words.size()) - 1;
      return sort.set_number(value,
                             sort.words[static_cast<std::size_t>(dice.between(0, last))].value);
    }
    case sentence::Shape::choice:
      break;
  }
  const auto last = static_cast<std::int64_t>(sort.options.size()) - 1;
  const Option& option = sort.options[static_cast<std::size_t>(dice.between(0, last))];
  sort.reset(value);
  option.preset(value);
  fill_pattern(dice, option.pattern, option.slots, value);
}

logbook::Said said_of(Dice& dice, const Kind& kind) {
  logbook::Said said;
  fill_leaf(dice, sentence::sort_of<quantity::Day>, &said.day);
  if (dice.between(0, 4) == 0) {
    fill_leaf(dice, sentence::sort_of<quantity::ClockTime>, &said.time.emplace());
  }
  void* fact = kind.make(said.fact);
  fill_pattern(dice, kind.head, kind.head_slots, fact);
  const auto last = static_cast<std::int64_t>(kind.clauses.size()) - 1;
  const std::int64_t chosen = kind.needs_a_clause ? dice.between(0, last) : -1;
  for (std::int64_t i = 0; i <= last; ++i) {
    const Clause& clause = kind.clauses[static_cast<std::size_t>(i)];
    if (clause.is_needed || i == chosen || dice.between(0, 2) == 0) fill_clause(dice, clause, fact);
  }
  for (const Clause& clause : sentence::common_clauses()) {
    const bool is_said = takes_common(kind, clause) && dice.between(0, 9) == 0;
    if (is_said) fill_clause(dice, clause, &said);
  }
  return said;
}

std::uint64_t seed() { return static_cast<std::uint64_t>(number_in("TIMEWORN_SEED", 20260304)); }

std::int64_t facts(std::int64_t ordinary) { return number_in("TIMEWORN_FACTS", ordinary); }

}  // namespace random_facts
